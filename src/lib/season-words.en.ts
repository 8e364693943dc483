import type { Basis } from '../../shared/season/anchors.ts';
import type { NoBloom } from '../../shared/season/bloom.ts';

const days = (count: number): string => (count === 1 ? '1 day' : `${count} days`);

/** How a day is known, in the middle of a sentence. `plant` and `main` are names: of the plant, and of the district that others follow. */
export const basis = {
  observed: (years: number): string => `from ${years} years of members’ dates`,
  bloomSeen: (years: number, plant: string): string => `from ${years} years of members’ notes on ${plant}`,
  published: 'from the published date that half of all years pass',
  printed: 'from a published date',
  'degree-days': 'from monthly normals by degree-days',
  temperature: 'from monthly normals',
  guess: 'a guess',
  later: (count: number, main: string, there: string): string => `${days(count)} later than in ${main}, there ${there}`,
  earlier: (count: number, main: string, there: string): string => `${days(count)} earlier than in ${main}, there ${there}`,
} satisfies Partial<Record<Basis['kind'], unknown>> & Record<string, unknown>;

export const bases = (each: readonly string[]): string => each.join(' and ');
export const withDoubt = (basis: string, count: number): string => `${basis}, about ${days(count)} either way`;

/** Why a plant has no date here. */
export const noBloom: Record<NoBloom, string> = {
  'no-sum': 'No sum was found, and nobody here has three years of notes.',
  'no-method': 'No date: the list does not say how it counts.',
  'no-normals': 'No date: this club has not given its monthly normals.',
  'no-spread': 'No date: it is not known how much days differ from year to year here.',
  'no-doubt': 'No date: this club holds no figure for how far such a date may be off.',
  'not-reached': 'Its sum is not reached in a normal year here.',
};
