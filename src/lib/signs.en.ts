/** Where a sign is seen. */
export const places = {
  entrance: 'At the entrance',
  smell: 'Smell',
  brood: 'In the brood',
  adults: 'On the bees',
  comb: 'On combs, in stores and boxes',
  season: 'When, and in how many hives',
};
/** How often a sign shows, and how strongly it points: one word for a cell of a table or the middle of a sentence. */
export const shows = { always: 'always', often: 'often', sometimes: 'sometimes', seldom: 'seldom', never: 'never' };
export const strengths = { strong: 'strong', fair: 'fair', weak: 'weak' };

const points = { strong: 'Strongly', fair: 'Somewhat', weak: 'Weakly' };
/** "Strongly: American foulbrood, sacbrood." */
export const pointsTo = (strength: keyof typeof points): string => `${points[strength]}: {troubles}.`;
