export const subjects = {
  mites: 'Mites and counting',
  treatments: 'Treatments',
  diseases: 'Diseases and pests',
  packages: 'Package bees',
  bees: 'Bees, brood and queens',
  feeding: 'Feeding and stores',
  season: 'Season and weather',
  people: 'People, law and safety',
  weights: 'Checking weights',
  other: 'Other figures',
};
export const inPhases = (phases: readonly string[]): string => phases.map((phase) => `in ${phase}`).join(' and ');
/** After "In force". */
export const from = (day: string): string => `from ${day}`;
export const fromTo = (first: string, last: string): string => `${first} to ${last}`;
