/*
 * Cases that were worked out by hand from published figures, apart from this program. The test gives each to the calculator with the
 * demo club's own figures, so that a changed figure is noticed here.
 */
import type { Caste } from '../../shared/brood/development.ts';
import type { Seen } from '../../shared/brood/dates.ts';
import type { Phase } from '../../shared/season/phases.ts';
import type { SourcedRow } from '../rows.ts';
import { sampleErrors } from './weights.ts';

const garwood = { from: 'derived: chi-square quantiles, halved (exact limits of Garwood 1936)', basis: 'derived' } as const;

type Count = { mites: number; bees: number; phase: Phase; recovery?: number };
type CountFound = { per100: number; low?: number; high?: number; corrected?: number; verdict: 'below' | 'unsure' | 'act' } | { refused: string };

/** Per 100 bees, good to 0.01. The verdicts are by the levels that the club follows: tests/tables/mites.ts has their sources. */
export const counts: SourcedRow<Count, CountFound>[] = [
  { case: '0 in 300: 3.689 / 300', given: { mites: 0, bees: 300, phase: 'dearth' }, expect: { per100: 0, low: 0, high: 1.23, verdict: 'below' }, ...garwood },
  { case: '9 in 300: 8.231 / 2 and 34.170 / 2', given: { mites: 9, bees: 300, phase: 'dearth' }, expect: { per100: 3, low: 1.37, high: 5.7, verdict: 'act' }, ...garwood },
  { case: '6 in 300: 2.20 and 13.06', given: { mites: 6, bees: 300, phase: 'build-up' }, expect: { per100: 2, low: 0.73, high: 4.35, verdict: 'act' }, ...garwood },
  { case: '320 in 300: over 100 is possible', given: { mites: 320, bees: 300, phase: 'dearth' }, expect: { per100: 106.67, verdict: 'act' }, from: 'derived: 100 x 320 / 300', basis: 'derived' },
  { case: '8 in a roll of 300 at 92.9 %: 2.667 / 0.929', given: { mites: 8, bees: 300, phase: 'dearth', recovery: 92.9 }, expect: { per100: 2.67, corrected: 2.87, verdict: 'act' }, from: 'derived with the recovery of Macedo, Wu & Ellis 2002', basis: 'derived' },
  { case: '9 in 0', given: { mites: 9, bees: 0, phase: 'dearth' }, expect: { refused: 'no-bees' }, from: 'our rule: nothing is divided by 0', basis: 'rule' },
  { case: '-1 in 300', given: { mites: -1, bees: 300, phase: 'dearth' }, expect: { refused: 'mites-negative' }, from: 'our rule: a count is not under 0', basis: 'rule' },
];

export const samples: SourcedRow<{ share: number; certainty: number }, { bees: number }>[] = [
  { case: '1 %, 95 % sure: ln 0.05 / ln 0.99 = 298.07', given: { share: 1, certainty: 95 }, expect: { bees: 299 }, from: 'derived from Pirk et al. 2013, COLOSS BEEBOOK, statistics, section 2.2', basis: 'derived' },
];

const syrup = { from: 'derived: 66.67 degrees Brix weigh 1.327 kg a liter at 20 C, a US gallon of water 8.345 lb', basis: 'derived' } as const;
type SyrupMade = { sugar: number; water: number; by: 'weight' | 'volume'; know: 'sugar' | 'syrup'; amount: number; unit: 'lb' | 'us-gal' };

/** Kitchen at 20 C, 200 g of sugar to the cup. */
export const syrups: SourcedRow<SyrupMade, Partial<Record<'brix' | 'kgPerLitre' | 'gallons' | 'sugarPounds' | 'waterQuarts', number>> | { state: string }>[] = [
  { case: '25 lb of sugar, 2:1 by weight: 37.5 / (1.327 x 8.345)', given: { sugar: 2, water: 1, by: 'weight', know: 'sugar', amount: 25, unit: 'lb' }, expect: { gallons: 3.39 }, ...syrup },
  { case: 'a US gallon of 2:1 by weight', given: { sugar: 2, water: 1, by: 'weight', know: 'syrup', amount: 1, unit: 'us-gal' }, expect: { brix: 66.67, kgPerLitre: 1.327, sugarPounds: 7.38, waterQuarts: 1.77 }, ...syrup },
  { case: '1:1 by cups: 200 / (200 + 236.2)', given: { sugar: 1, water: 1, by: 'volume', know: 'syrup', amount: 1, unit: 'us-gal' }, expect: { brix: 45.85 }, from: 'derived: a US cup of water weighs 236.2 g at 20 C', basis: 'derived' },
  { case: '3:1 by weight is 75 %', given: { sugar: 3, water: 1, by: 'weight', know: 'syrup', amount: 1, unit: 'us-gal' }, expect: { state: 'cannot-all-dissolve' }, from: 'derived: over the 67 % that water takes up at 20 C', basis: 'derived' },
];

const sixPounds = { from: "derived: the course of the state beekeepers' association of Ohio (2015) counts a deep frame as 6 lb, and 60 lb as the target", basis: 'derived' } as const;

/** Pounds, against the club's own target. */
export const hives: SourcedRow<{ deep: number; medium: number }, { stores: number; short: number }>[] = [
  { case: '5 deep and 4 medium', given: { deep: 5, medium: 4 }, expect: { stores: 46, short: 14 }, from: 'the medium frame of 4 lb is common practice, no source', basis: 'memory' },
  { case: '9 deep', given: { deep: 9, medium: 0 }, expect: { stores: 54, short: 6 }, ...sixPounds },
];

const textbook = { from: 'from the common table of brood times: worker 21 days, queen 15.5 to 17, drone 24; sealed on day 8 to 9, 7.5 to 8, 9.5 to 10', basis: 'memory' } as const;

/** The first new bees of a package installed on 20 April. */
export const packages: SourcedRow<{ queen: 'candy' | 'released'; comb: 'drawn' | 'foundation' }, { firstBees: [string, string] }>[] = [
  { case: 'candy, foundation: out 22 to 27 April, 3 to 8 days to the first egg, 21 days', given: { queen: 'candy', comb: 'foundation' }, expect: { firstBees: ['2026-05-16', '2026-05-26'] }, ...textbook },
  { case: 'released, drawn comb: 1 to 3 days to the first egg, 21 days', given: { queen: 'released', comb: 'drawn' }, expect: { firstBees: ['2026-05-12', '2026-05-14'] }, ...textbook },
];

type Dates = Partial<Record<'lays' | 'emerges', [string, string]> & Record<'broodlessWorker' | 'broodlessDrone', string>>;

export const broods: SourcedRow<{ caste: Caste; seen: Seen; on: string }, Dates>[] = [
  { case: 'a queen cell sealed on 18 May', given: { caste: 'queen', seen: 'sealed', on: '2026-05-18' }, expect: { emerges: ['2026-05-18', '2026-05-28'], lays: ['2026-05-26', '2026-06-09'] }, ...textbook },
  { case: 'a queen caged on 15 July: 21 and 24 days', given: { caste: 'worker', seen: 'caged', on: '2026-07-15' }, expect: { broodlessWorker: '2026-08-05', broodlessDrone: '2026-08-08' }, ...textbook },
  { case: 'a drone cell sealed on 18 May: 24 - 9.5', given: { caste: 'drone', seen: 'sealed', on: '2026-05-18' }, expect: { emerges: ['2026-05-18', '2026-06-02'] }, ...textbook },
];

/** 12 of 48 jars of 454 g, by the law of the United States. */
export const jars: SourcedRow<{ weights: number[] }, { mean: number; deviation: number; limit: number; toleranceG: number }>[] = [
  { case: '0.635 x 2.939 = 1.867; 0.044 lb is 20.0 g', given: { weights: sampleErrors.map((error) => 454 + error) }, expect: { mean: -1.5, deviation: 2.939, limit: 1.867, toleranceG: 20 }, from: 'the factor is of NIST Handbook 133, the allowed variation from memory', basis: 'memory' },
];

export const doublings: SourcedRow<{ perDay: 'slowest' | 'fastest' }, { days: number }>[] = [
  { case: 'ln 2 / 0.015', given: { perDay: 'slowest' }, expect: { days: 46.2 }, from: 'derived: ln 2 / r', basis: 'derived' },
  { case: 'ln 2 / 0.036', given: { perDay: 'fastest' }, expect: { days: 19.3 }, from: 'derived: ln 2 / r', basis: 'derived' },
];

const osha = { from: 'US Occupational Safety and Health Administration, 29 CFR 1910.1000, table Z-1', basis: 'published' } as const;
const niosh = { from: 'US National Institute for Occupational Safety and Health, pocket guide to chemical hazards', basis: 'published' } as const;
const freezing = { from: 'Charriere and Imdorf 1999, Protection of honey combs from wax moth damage', basis: 'published' } as const;

/** Values of the row that the club follows, or of the named row. */
export const held: SourcedRow<{ figure: string; row?: string }, { unit: string; least: number; most: number }>[] = [
  { case: 'worker, egg to bee', given: { figure: 'worker-days' }, expect: { unit: 'days', least: 21, most: 21 }, ...textbook },
  { case: 'queen, egg to bee', given: { figure: 'queen-days' }, expect: { unit: 'days', least: 16, most: 16 }, ...textbook },
  { case: 'drone, egg to bee', given: { figure: 'drone-days' }, expect: { unit: 'days', least: 24, most: 24 }, ...textbook },
  { case: 'worker, capped', given: { figure: 'capped-day-worker' }, expect: { unit: 'days', least: 8, most: 9 }, ...textbook },
  { case: 'queen, capped', given: { figure: 'capped-day-queen' }, expect: { unit: 'days', least: 7.5, most: 8 }, ...textbook },
  { case: 'drone, capped', given: { figure: 'capped-day-drone' }, expect: { unit: 'days', least: 9.5, most: 10 }, ...textbook },
  { case: 'wax moth at -7 C', given: { figure: 'wax-moth-freeze-hours', row: 'longest' }, expect: { unit: 'hours', least: 4.5, most: 4.5 }, ...freezing },
  { case: 'wax moth at -12 C', given: { figure: 'wax-moth-freeze-hours', row: 'middle' }, expect: { unit: 'hours', least: 3, most: 3 }, ...freezing },
  { case: 'wax moth at -15 C', given: { figure: 'wax-moth-freeze-hours', row: 'coldest' }, expect: { unit: 'hours', least: 2, most: 2 }, ...freezing },
  { case: 'bee space', given: { figure: 'bee-space' }, expect: { unit: 'mm', least: 6, most: 9 }, from: 'common practice, no source', basis: 'memory' },
  { case: 'water in honey', given: { figure: 'honey-moisture-most' }, expect: { unit: 'percent', least: 18.6, most: 18.6 }, from: 'US Department of Agriculture, standards for grades of extracted honey, A and B', basis: 'published' },
  { case: 'lifting', given: { figure: 'lift-limit' }, expect: { unit: 'lb', least: 51, most: 51 }, from: 'US National Institute for Occupational Safety and Health, revised lifting equation, load constant', basis: 'published' },
  { case: 'oxalic acid, 8 hours', given: { figure: 'oxalic-air-limit' }, expect: { unit: 'mg-per-m3', least: 1, most: 1 }, ...osha },
  { case: 'oxalic acid, 15 minutes', given: { figure: 'oxalic-air-short' }, expect: { unit: 'mg-per-m3', least: 2, most: 2 }, ...niosh },
  { case: 'oxalic acid, danger to life', given: { figure: 'oxalic-air-idlh' }, expect: { unit: 'mg-per-m3', least: 500, most: 500 }, ...niosh },
  { case: 'formic acid, 8 hours', given: { figure: 'formic-air-limit' }, expect: { unit: 'ppm', least: 5, most: 5 }, ...osha },
  { case: 'formic acid, 15 minutes', given: { figure: 'formic-air-short' }, expect: { unit: 'ppm', least: 10, most: 10 }, from: 'American Conference of Governmental Industrial Hygienists, threshold limit values', basis: 'published' },
  { case: 'formic acid, danger to life', given: { figure: 'formic-air-idlh' }, expect: { unit: 'ppm', least: 30, most: 30 }, ...niosh },
];
