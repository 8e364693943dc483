/**
 * Development times of a bee from egg to adult, in days since the egg was laid. No authority sets them, but cool brood is slower. Worker:
 * 3 + 6 + 12 = 21. Sources: the common table of the textbooks, whose printed figures differ by a day (hence the spans). A queen mates 6
 * to 10 days after she emerges: NSW Department of Primary Industries, Primefact 828 (2008). Her first eggs follow 2 to 3 days after
 * mating, 24 to 29 days from the egg (derived from a queen's usual 16 days). Unit: days.
 */
export type Caste = 'worker' | 'queen' | 'drone';

export type Span = { readonly least: number; readonly most: number };

export type Development = { readonly hatchesDays: number; readonly sealedDays: Span; readonly emergesDays: Span };

export const development: Readonly<Record<Caste, Development>> = {
  worker: { hatchesDays: 3, sealedDays: { least: 8, most: 9 }, emergesDays: { least: 21, most: 21 } },
  queen: { hatchesDays: 3, sealedDays: { least: 7.5, most: 8 }, emergesDays: { least: 15.5, most: 17 } },
  drone: { hatchesDays: 3, sealedDays: { least: 9.5, most: 10 }, emergesDays: { least: 24, most: 24 } },
};

export const queenAfterEmerging = {
  matesDays: { least: 6, most: 10 },
  /** Days from mating. */
  laysDays: { least: 2, most: 3 },
  /** Days from her own egg, for a queen with the usual 16 days of development. */
  matesFromEggDays: { least: 22, most: 26 },
  laysFromEggDays: { least: 24, most: 29 },
} as const;
