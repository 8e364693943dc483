import type { SourcedRow } from '../rows.ts';

type Sample = { mites: number; bees: number };

const plain = { from: 'derived: 100 x mites / bees', basis: 'derived' } as const;

export const rates: SourcedRow<Sample, { per100: number; within: number }>[] = [
  { case: '9 in 300', given: { mites: 9, bees: 300 }, expect: { per100: 3, within: 0 }, ...plain },
  { case: '3 in 300', given: { mites: 3, bees: 300 }, expect: { per100: 1, within: 0 }, ...plain },
  { case: '10 in 200', given: { mites: 10, bees: 200 }, expect: { per100: 5, within: 0 }, ...plain },
  { case: '0 in 300', given: { mites: 0, bees: 300 }, expect: { per100: 0, within: 0 }, ...plain },
  { case: '29 in 1000', given: { mites: 29, bees: 1000 }, expect: { per100: 2.9, within: 0 }, ...plain },
  { case: '8 in 267', given: { mites: 8, bees: 267 }, expect: { per100: 2.9963, within: 5e-5 }, ...plain },
  { case: 'more mites than bees', given: { mites: 1200, bees: 280 }, expect: { per100: 428.5714, within: 5e-5 }, ...plain },
  {
    case: '43 in 310',
    given: { mites: 43, bees: 310 },
    expect: { per100: 13.871, within: 5e-4 },
    from: 'disputed: Dietemann et al. 2013, COLOSS BEEBOOK, Varroa, 4.2.3.1.2.1 prints 14.3, which is 43 in 300', basis: 'derived',
  },
];

const garwood = { from: 'exact two-sided limits after Garwood 1936, computed independently with an inverse gamma function', basis: 'recomputed' } as const;

/** Counts, 95 %. */
export const countLimits: SourcedRow<{ count: number }, { low: number; high: number; within: number }>[] = [
  { case: '0', given: { count: 0 }, expect: { low: 0, high: 3.6889, within: 5e-5 }, ...garwood },
  { case: '1', given: { count: 1 }, expect: { low: 0.0253, high: 5.5716, within: 5e-5 }, ...garwood },
  { case: '2', given: { count: 2 }, expect: { low: 0.2422, high: 7.2247, within: 5e-5 }, ...garwood },
  { case: '3', given: { count: 3 }, expect: { low: 0.6187, high: 8.7673, within: 5e-5 }, ...garwood },
  { case: '5', given: { count: 5 }, expect: { low: 1.6235, high: 11.6683, within: 5e-5 }, ...garwood },
  { case: '6', given: { count: 6 }, expect: { low: 2.2019, high: 13.0595, within: 5e-5 }, ...garwood },
  { case: '9', given: { count: 9 }, expect: { low: 4.1154, high: 17.0848, within: 5e-5 }, ...garwood },
  { case: '10', given: { count: 10 }, expect: { low: 4.7954, high: 18.3904, within: 5e-5 }, ...garwood },
  { case: '15', given: { count: 15 }, expect: { low: 8.3954, high: 24.7402, within: 5e-5 }, ...garwood },
  { case: '20', given: { count: 20 }, expect: { low: 12.2165, high: 30.8884, within: 5e-5 }, ...garwood },
  { case: '50', given: { count: 50 }, expect: { low: 37.111, high: 65.9188, within: 5e-5 }, ...garwood },
  { case: '100', given: { count: 100 }, expect: { low: 81.364, high: 121.6268, within: 5e-5 }, ...garwood },
];

/** Limits printed by others, with their confidence level. */
export const printedLimits: SourcedRow<{ count: number; certainty: number; exposure: number }, { low?: number; high: number; within: number }>[] = [
  {
    case: '23 events in 5.25 units',
    given: { count: 23, certainty: 0.95, exposure: 5.25 },
    expect: { low: 2.777148, high: 6.57358, within: 5e-6 },
    from: 'R package statpsych, help of ci.poisson', basis: 'published',
  },
  {
    case: '0 events, two-sided',
    given: { count: 0, certainty: 0.95, exposure: 1 },
    expect: { high: 3.689, within: 5e-4 },
    from: 'R package epitools, help of pois.exact', basis: 'published',
  },
  {
    case: '0 events, one-sided 95 % is two-sided 90 %: the rule of three',
    given: { count: 0, certainty: 0.9, exposure: 1 },
    expect: { high: 2.996, within: 5e-4 },
    from: 'R package epitools, help of pois.exact', basis: 'published',
  },
];

/** Limits of one sample, mites per 100 bees. */
export const sampleLimits: SourcedRow<Sample, { low: number; high: number }>[] = [
  { case: '0 in 300', given: { mites: 0, bees: 300 }, expect: { low: 0, high: 1.23 }, ...garwood },
  { case: '3 in 300', given: { mites: 3, bees: 300 }, expect: { low: 0.21, high: 2.92 }, ...garwood },
  { case: '6 in 300', given: { mites: 6, bees: 300 }, expect: { low: 0.73, high: 4.35 }, ...garwood },
  { case: '9 in 300', given: { mites: 9, bees: 300 }, expect: { low: 1.37, high: 5.69 }, ...garwood },
  { case: '10 in 300', given: { mites: 10, bees: 300 }, expect: { low: 1.6, high: 6.13 }, ...garwood },
  { case: '72 in 2400', given: { mites: 72, bees: 2400 }, expect: { low: 2.35, high: 3.78 }, ...garwood },
];

export const corrected: SourcedRow<Sample & { recovery: number }, { per100: number }>[] = [
  {
    case: '9 in 300 at 92.9 %',
    given: { mites: 9, bees: 300, recovery: 92.9 },
    expect: { per100: 3.23 },
    from: 'derived with the recovery of Macedo, Wu & Ellis 2002, J. Apic. Res. 41', basis: 'derived',
  },
];

const searched = { from: 'derived: our own rule, the first number found by trying every one, limits after Garwood 1936', basis: 'rule' } as const;

export const settling: SourcedRow<Sample & { level: number; mostBees: number }, { bees: number | undefined }>[] = [
  { case: '0 in 300, level 1', given: { mites: 0, bees: 300, level: 1, mostBees: 3000 }, expect: { bees: 369 }, ...searched },
  { case: '4 in 300, level 3', given: { mites: 4, bees: 300, level: 3, mostBees: 3000 }, expect: { bees: 436 }, ...searched },
  { case: '5 in 300, level 3', given: { mites: 5, bees: 300, level: 3, mostBees: 3000 }, expect: { bees: 657 }, ...searched },
  { case: '8 in 300, level 3', given: { mites: 8, bees: 300, level: 3, mostBees: 3000 }, expect: { bees: undefined }, ...searched },
];

const beebook = { from: 'Pirk et al. 2013, COLOSS BEEBOOK, statistics, section 2.2', basis: 'published' } as const;

export const bees: SourcedRow<{ share: number; certainty: number }, { bees: number }>[] = [
  { case: '5 % infested, 95 % sure', given: { share: 5, certainty: 95 }, expect: { bees: 59 }, ...beebook },
  { case: '1 % infested, 99 % sure', given: { share: 1, certainty: 99 }, expect: { bees: 459 }, ...beebook },
  { case: '1 % infested, 95 % sure', given: { share: 1, certainty: 95 }, expect: { bees: 299 }, from: 'derived: ln 0.05 / ln 0.99 = 298.07', basis: 'derived' },
  { case: '50 % infested, 75 % sure: exactly 2', given: { share: 50, certainty: 75 }, expect: { bees: 2 }, from: 'derived: 0.5 x 0.5 = 0.25', basis: 'derived' },
  { case: '10 % infested, 99 % sure', given: { share: 10, certainty: 99 }, expect: { bees: 44 }, from: 'derived: ln 0.01 / ln 0.9 = 43.71', basis: 'derived' },
  { case: 'all infested', given: { share: 100, certainty: 99 }, expect: { bees: 1 }, from: 'derived: the first bee shows it', basis: 'derived' },
];

export const missed: SourcedRow<{ share: number; bees: number }, { percent: number }>[] = [
  {
    case: '20 bees at 5 %: 64.15 % seen, so 35.85 % missed',
    given: { share: 5, bees: 20 },
    expect: { percent: 35.85 },
    from: 'disputed: Pirk et al. 2013, COLOSS BEEBOOK, statistics 2.2 prints 65 % seen; 1 - 0.95^20 is 64.15 %', basis: 'derived',
  },
  { case: '300 bees at 1 %', given: { share: 1, bees: 300 }, expect: { percent: 4.9 }, from: 'derived: 0.99^300', basis: 'derived' },
];

const eight = { from: 'minimum of 8 colonies: Lee et al. 2010, J. Econ. Entomol. 103:1039-1050; all under 10, else 10: Australian national varroa programme', basis: 'published' } as const;

export const coloniesToSample: SourcedRow<{ colonies: number }, { least: number; most: number }>[] = [
  { case: '1', given: { colonies: 1 }, expect: { least: 1, most: 1 }, ...eight, basis: 'derived' },
  { case: '8', given: { colonies: 8 }, expect: { least: 8, most: 8 }, ...eight, basis: 'derived' },
  { case: '9', given: { colonies: 9 }, expect: { least: 8, most: 9 }, ...eight, basis: 'derived' },
  { case: '10', given: { colonies: 10 }, expect: { least: 8, most: 10 }, ...eight },
  { case: '60', given: { colonies: 60 }, expect: { least: 8, most: 10 }, ...eight },
];

export const board: SourcedRow<{ mites: number; days: number }, { perDay: number }>[] = [
  { case: '20 in 5 days', given: { mites: 20, days: 5 }, expect: { perDay: 4 }, from: 'derived', basis: 'derived' },
  { case: '9 in 3 days', given: { mites: 9, days: 3 }, expect: { perDay: 3 }, from: 'derived', basis: 'derived' },
  { case: '0 in 2 days', given: { mites: 0, days: 2 }, expect: { perDay: 0 }, from: 'derived', basis: 'derived' },
];

export const yard: SourcedRow<{ mites: number[]; bees: number[] }, { per100: number; error: number; low: number; high: number; exactLow: number; exactHigh: number }>[] = [
  {
    case: 'eight colonies, 25 mites in 2,532 bees',
    given: { mites: [4, 1, 4, 0, 0, 0, 13, 3], bees: [296, 288, 301, 324, 335, 318, 342, 328] },
    expect: { per100: 0.9874, error: 0.4801, low: 0.313, high: 3.118, exactLow: 0.639, exactHigh: 1.458 },
    from: 'computed independently from the open data of Aurell, Bruckner, Steury & Williams 2025, doi 10.5281/zenodo.15733143 (CC BY 4.0)', basis: 'recomputed',
  },
];

/** Share of 95 % ranges that contain the truth: counts gamma-Poisson, 300 bees with 10 % spread, 3 per 100. k none is plain Poisson. */
const simulated = { from: 'independent simulation of 10,000 runs, good to 0.01', basis: 'recomputed' } as const;

export const coverage: SourcedRow<{ colonies: number; clumping: number | undefined }, { share: number }>[] = [
  { case: '8 colonies, no clumping', given: { colonies: 8, clumping: undefined }, expect: { share: 0.952 }, ...simulated },
  { case: '8 colonies, k 2', given: { colonies: 8, clumping: 2 }, expect: { share: 0.943 }, ...simulated },
  { case: '8 colonies, k 1', given: { colonies: 8, clumping: 1 }, expect: { share: 0.935 }, ...simulated },
  { case: '8 colonies, k 0.6', given: { colonies: 8, clumping: 0.6 }, expect: { share: 0.92 }, ...simulated },
  { case: '24 colonies, no clumping', given: { colonies: 24, clumping: undefined }, expect: { share: 0.953 }, ...simulated },
  { case: '24 colonies, k 2', given: { colonies: 24, clumping: 2 }, expect: { share: 0.945 }, ...simulated },
  { case: '24 colonies, k 1', given: { colonies: 24, clumping: 1 }, expect: { share: 0.939 }, ...simulated },
  { case: '24 colonies, k 0.6', given: { colonies: 24, clumping: 0.6 }, expect: { share: 0.931 }, ...simulated },
];

/** The two ends of growth: doubling and tripling times in the sources, as a share per day. */
export const growth = { slowestPerDay: 0.015, fastestPerDay: 0.036 };

export const weeks: SourcedRow<{ rate: number; high: number; level: number }, { soonest: number; latest: number }>[] = [
  { case: '1 (0.2 to 2.9) to 3', given: { rate: 1, high: 2.92, level: 3 }, expect: { soonest: 0, latest: 11 }, from: 'derived: ln 3 / 0.015 / 7 = 10.46', basis: 'derived' },
  { case: '0.33 (to 1.86) to 3', given: { rate: 1 / 3, high: 1.857, level: 3 }, expect: { soonest: 1, latest: 21 }, from: 'derived: ln(3/1.857)/0.036/7 = 1.90; ln 9/0.015/7 = 20.93', basis: 'derived' },
  { case: 'the limit at the level', given: { rate: 1, high: 3, level: 3 }, expect: { soonest: 0, latest: 11 }, from: 'derived', basis: 'derived' },
];

const spring = { from: 'Manitoba, treatment recommendations 2021, as reprinted: under 1 in 100 in spring build-up', basis: 'derived' } as const;
const fall = { from: 'University of Montreal, faculty of veterinary medicine, as quoted on 21 May 2021: 2 in 100 in fall, many deaths beyond it', basis: 'derived' } as const;
const lost = { from: 'Cornell, survey of New York, as reported on 29 June 2017: over 3 in 100 a colony likely dies within one or two years', basis: 'derived' } as const;
const limits = 'upper limit after Garwood 1936';

/** The demo club's answers for a wash, by phase: `atOnce` is action without delay, `bees` the sample that would settle it. */
export const verdicts: SourcedRow<
  Sample & { phase: 'winter-rest' | 'build-up' | 'swarming' | 'main-flow' | 'dearth' | 'fall-preparation' },
  { verdict: 'below' | 'unsure' | 'act' | undefined; atOnce?: true; bees?: number | 'too-many' }
>[] = [
  { case: '3 in 300 on 14 April', given: { mites: 3, bees: 300, phase: 'build-up' }, expect: { verdict: 'act' }, ...spring },
  { case: '6 in 300 in April', given: { mites: 6, bees: 300, phase: 'build-up' }, expect: { verdict: 'act' }, ...spring },
  { case: '0 in 300 in April', given: { mites: 0, bees: 300, phase: 'build-up' }, expect: { verdict: 'unsure', bees: 369 }, from: `${spring.from}; ${limits} 1.23`, basis: 'derived' },
  { case: '1 in 300 in May', given: { mites: 1, bees: 300, phase: 'swarming' }, expect: { verdict: 'unsure', bees: 'too-many' }, from: `${spring.from}; ${limits} 1.86`, basis: 'derived' },
  { case: '1 in 600 in May', given: { mites: 1, bees: 600, phase: 'swarming' }, expect: { verdict: 'below' }, from: `${spring.from}; ${limits} 0.93`, basis: 'derived' },
  { case: '3 in 300 in May', given: { mites: 3, bees: 300, phase: 'swarming' }, expect: { verdict: 'act' }, ...spring },
  { case: '3 in 300 in June', given: { mites: 3, bees: 300, phase: 'main-flow' }, expect: { verdict: 'act' }, from: `${spring.from}, kept by the club until the main flow ends`, basis: 'derived' },
  { case: '9 in 300 in June', given: { mites: 9, bees: 300, phase: 'main-flow' }, expect: { verdict: 'act' }, ...spring },
  { case: '1 in 300 in July', given: { mites: 1, bees: 300, phase: 'dearth' }, expect: { verdict: 'below' }, from: `${fall.from}; ${limits} 1.86`, basis: 'derived' },
  { case: '2 in 300 in July', given: { mites: 2, bees: 300, phase: 'dearth' }, expect: { verdict: 'unsure', bees: 439 }, from: `${fall.from}; ${limits} 2.41`, basis: 'derived' },
  { case: '3 in 300 in August', given: { mites: 3, bees: 300, phase: 'dearth' }, expect: { verdict: 'unsure', bees: 'too-many' }, from: `${fall.from}; ${limits} 2.92`, basis: 'derived' },
  { case: '6 in 300 in August', given: { mites: 6, bees: 300, phase: 'dearth' }, expect: { verdict: 'act' }, ...fall },
  { case: '8 in 300 in August', given: { mites: 8, bees: 300, phase: 'dearth' }, expect: { verdict: 'act' }, ...fall },
  { case: '9 in 300 in August', given: { mites: 9, bees: 300, phase: 'dearth' }, expect: { verdict: 'act', atOnce: true }, ...lost },
  { case: '0 in 300 in September', given: { mites: 0, bees: 300, phase: 'fall-preparation' }, expect: { verdict: 'below' }, from: `${fall.from}; ${limits} 1.23`, basis: 'derived' },
  { case: '6 in 300 in September', given: { mites: 6, bees: 300, phase: 'fall-preparation' }, expect: { verdict: 'act' }, ...fall },
  { case: '30 in 300 in September', given: { mites: 30, bees: 300, phase: 'fall-preparation' }, expect: { verdict: 'act', atOnce: true }, ...lost },
  { case: '6 in 300 in December', given: { mites: 6, bees: 300, phase: 'winter-rest' }, expect: { verdict: undefined }, from: 'our rule: in winter rest no hive is opened to count, so no level is followed', basis: 'rule' },
];

const doubling = { from: 'derived: ln 2 / r', basis: 'derived' } as const;
export const doublingDays: SourcedRow<{ perDay: number }, { days: number }>[] = [
  { case: 'slowest', given: { perDay: 0.015 }, expect: { days: 46 }, ...doubling },
  { case: 'fastest', given: { perDay: 0.036 }, expect: { days: 19 }, ...doubling },
];

const tTable = { from: 'Student t, upper points: Abramowitz & Stegun 1964, table 26.10', basis: 'published' } as const;
export const tPoints: SourcedRow<{ share: number; freedom: number }, { t: number }>[] = [
  { case: '0.975, 1', given: { share: 0.975, freedom: 1 }, expect: { t: 12.706 }, ...tTable },
  { case: '0.975, 2', given: { share: 0.975, freedom: 2 }, expect: { t: 4.303 }, ...tTable },
  { case: '0.975, 3', given: { share: 0.975, freedom: 3 }, expect: { t: 3.182 }, ...tTable },
  { case: '0.975, 7', given: { share: 0.975, freedom: 7 }, expect: { t: 2.365 }, ...tTable },
  { case: '0.975, 11', given: { share: 0.975, freedom: 11 }, expect: { t: 2.201 }, ...tTable },
  { case: '0.975, 30', given: { share: 0.975, freedom: 30 }, expect: { t: 2.042 }, ...tTable },
  { case: '0.995, 1', given: { share: 0.995, freedom: 1 }, expect: { t: 63.657 }, from: 'Canada, SOR/2018-108, schedule 5, table of t', basis: 'published' },
  { case: '0.995, 2', given: { share: 0.995, freedom: 2 }, expect: { t: 9.925 }, from: 'Canada, SOR/2018-108, schedule 5, table of t', basis: 'published' },
  { case: '0.995, 3', given: { share: 0.995, freedom: 3 }, expect: { t: 5.841 }, from: 'Canada, SOR/2018-108, schedule 5, table of t', basis: 'published' },
  { case: '0.995, 29', given: { share: 0.995, freedom: 29 }, expect: { t: 2.756 }, ...tTable },
];
