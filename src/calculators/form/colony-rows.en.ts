export const colony = 'Colony';
/** Each as in "Write how many mites were counted." */
export const mitesCounted = 'how many mites were counted';
export const beesInSample = 'how many bees were in the sample';

export const noMites = 'Write how many mites were counted.';
export const noBees = 'A sample of 0 bees has no rate. Write how many bees were in it.';
export const wholeBees = 'Write whole bees.';
export const wholeMites = 'Write whole mites.';
export const mitesUnderZero = 'Mites cannot be under 0.';
export const tooMany = (mites: string, bees: string): string => `More than ${mites} mites or ${bees} bees is not one sample.`;

/** Fields of every form that takes counts of colonies. */
export const methodAsked = 'how the mites were counted';
export const fields = {
  method: 'How the mites were counted',
  phase: 'Part of the year',
  phaseHint: 'Set from today’s date. You can change it.',
  notChosen: 'Not chosen',
};
export const methodChoices = { wash: 'Wash', roll: 'Sugar roll', gas: 'Carbon dioxide' };
