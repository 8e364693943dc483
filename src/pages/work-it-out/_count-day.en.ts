export const saveFile = 'Save for the club’s counts (CSV)';

export const background = [
  'Each colony: mites, divided by bees, times 100.',
  'The middle half lies between the first and the third quarter of the colonies. Values between two colonies are interpolated.',
  'All together: all mites over all bees. The likely range allows for mites that clump in some colonies.',
];
export const clubLevels = 'The club’s levels: {levels}.';

export const limits = [
  'Nothing leaves this device by itself. Copy the link, show its code, or hand on the file.',
  'To bring a phone’s counts to the wall, open its link on the computer of the projector, or type them there.',
  'The file has no names and no places, only the day, the district and the numbers.',
  'The middle of an evening hides the worst colony. Each colony over the level is named above.',
  'Those who count are not all members.',
];
