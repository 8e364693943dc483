import type { StoreMix } from '../../shared/feeding/stores.ts';
import type { SourcedRow } from '../rows.ts';

export const feedingFigures = { sugarShareOfStores: 0.82, efficiencyLeast: 0.76, efficiencyMost: 1 };

/**
 * Weight of honey in a full frame, in pounds. Deep and shallow: the course of the state beekeepers' association of Ohio (2015), slide 3,
 * where 10 deep frames of 6 lb make the 60 lb to leave, and two shallow frames count as one deep one. Medium: common practice in the US.
 */
export const framePounds = { deep: 6, medium: 4, shallow: 3 };

type Short = { shortKg: number; mix: StoreMix; efficiencyLeast: number };

export const syrupForShortfall: SourcedRow<Short, { least: number; most: number; unit: 'L' | 'us-gal'; within: number }>[] = [
  {
    case: '30 lb short, 2:1, with a rule of 78 %',
    given: { shortKg: 13.6077711, mix: '2:1-weight', efficiencyLeast: 7 / 9 },
    expect: { least: 3.33, most: 4.29, unit: 'us-gal', within: 0.01 },
    from: 'derived; the rule, 7 lb of stores from a US gallon of 2:1, is that of the Mid-Atlantic extension consortium (from memory)', basis: 'memory',
  },
  {
    case: '10 kg short, 3:2',
    given: { shortKg: 10, mix: '3:2-weight', efficiencyLeast: 0.76 },
    expect: { least: 10.6, most: 14, unit: 'L', within: 0.1 },
    from: 'Swiss bee health service, printed example: 14 L of 3:2 for 10 kg; the least derived', basis: 'published',
  },
];

const course = { from: "course of the state beekeepers' association of Ohio, 2015, lesson 8, slide 3", basis: 'published' } as const;

export const frames: SourcedRow<{ kind: keyof typeof framePounds; count: number }, { pounds: number; within: number }>[] = [
  { case: '10 deep', given: { kind: 'deep', count: 10 }, expect: { pounds: 60, within: 0.01 }, ...course },
  { case: '2 shallow', given: { kind: 'shallow', count: 2 }, expect: { pounds: 6, within: 0.01 }, from: `${course.from}: as one deep frame`, basis: 'derived' },
  { case: '10 medium', given: { kind: 'medium', count: 10 }, expect: { pounds: 40, within: 5 }, from: 'common practice in the US, 3.5 to 4.5 lb to a frame, no source', basis: 'memory' },
];

/** The shortfall of a hive of full frames from the 60 lb that the same course leaves as a minimum. */
export const shortOfTarget: SourcedRow<{ deep: number; medium: number }, { pounds: number; short: number }>[] = [
  { case: '9 deep', given: { deep: 9, medium: 0 }, expect: { pounds: 54, short: 6 }, ...course, basis: 'derived' },
  { case: '10 deep', given: { deep: 10, medium: 0 }, expect: { pounds: 60, short: 0 }, ...course, basis: 'derived' },
  { case: '5 deep and 4 medium', given: { deep: 5, medium: 4 }, expect: { pounds: 46, short: 14 }, from: `${course.from}; the medium frame by common practice, no source`, basis: 'memory' },
];

const recipe = { from: 'derived from the CRC sucrose densities; the names of the mixes as sources use them', basis: 'derived' } as const;

/** Per cent of sugar by weight in each available mix, at 20 C, with 200 g to the cup. */
export const mixBrix: SourcedRow<{ mix: StoreMix }, { brix: number }>[] = [
  { case: '1:1 by weight', given: { mix: '1:1-weight' }, expect: { brix: 50 }, ...recipe },
  { case: '3:2 by weight', given: { mix: '3:2-weight' }, expect: { brix: 60 }, ...recipe },
  { case: '2:1 by weight', given: { mix: '2:1-weight' }, expect: { brix: 66.67 }, ...recipe },
  { case: '2:1 by volume', given: { mix: '2:1-volume' }, expect: { brix: 62.88 }, ...recipe },
  { case: '1 kg to 630 mL', given: { mix: '1kg-630ml' }, expect: { brix: 61.39 }, ...recipe },
];
