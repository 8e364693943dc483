export const title = 'Know-how';
export const lead = 'Short answers first, then the reasons, then a sum to try.';
export const confidence = (sureness: string): string => `Confidence: ${sureness}.`;
/** By the subject of an article, in the order of the page. */
export const subjects = {
  packages: 'Beginning, and package bees',
  people: 'People, stings and neighbors',
  queens: 'Queens',
  brood: 'Brood and time',
  feeding: 'Feeding',
  mites: 'Mites',
  swarms: 'Swarms',
  flow: 'Flow and honey',
  fall: 'Fall',
  winter: 'Winter',
  law: 'The law, and moving bees',
  records: 'Records and learning',
  club: 'The club',
};
