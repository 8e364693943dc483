/* Invented signs and troubles, with rankings worked by hand from the points that the signs page states. */
import type { Picked, Trouble } from '../../shared/signs/rank.ts';
import type { SourcedRow } from '../rows.ts';

/** Grave is reportable, mild passes by itself, pest is neither. */
export const troubles: readonly Trouble[] = [
  {
    id: 'grave', mustReport: true, harmless: false, phases: ['build-up', 'swarming'],
    shown: [
      { sign: 'thread', strength: 'strong', shows: 'often' },
      { sign: 'holes', strength: 'weak', shows: 'often' },
      { sign: 'bag', strength: 'fair', shows: 'never' },
    ],
  },
  {
    id: 'mild', mustReport: false, harmless: true,
    shown: [
      { sign: 'bag', strength: 'strong', shows: 'always' },
      { sign: 'holes', strength: 'weak', shows: 'sometimes' },
      { sign: 'thread', strength: 'strong', shows: 'never' },
    ],
  },
  {
    id: 'pest', mustReport: false, harmless: false, phases: ['dearth'],
    shown: [
      { sign: 'webs', strength: 'strong', shows: 'always' },
      { sign: 'holes', strength: 'fair', shows: 'seldom' },
      { sign: 'crumbs', strength: 'fair', shows: 'sometimes' },
    ],
  },
];

const from = { from: 'worked by hand', basis: 'rule' } as const;

type Expect = { points: Record<string, number>; order: string[]; fitLittle: string[]; outcome: string };

export const rankings: SourcedRow<Picked, Expect>[] = [
  { case: 'nothing picked names nothing', given: { there: [], notThere: [] }, expect: { points: {}, order: [], fitLittle: [], outcome: 'nothing-picked' }, ...from },
  { case: 'one strong sign, often shown: 3 x 3; never shown: -3 x 4, and nothing fits there', given: { there: ['thread'], notThere: [] }, expect: { points: { grave: 9 }, order: ['grave'], fitLittle: [], outcome: 'candidates' }, ...from },
  // grave 1x3 = 3, mild 1x2 = 2, pest 2x1 = 2.
  { case: 'a sign of three troubles: 3, 2 and 2, the first of a tie as listed', given: { there: ['holes'], notThere: [] }, expect: { points: { grave: 3, mild: 2, pest: 2 }, order: ['grave', 'mild', 'pest'], fitLittle: [], outcome: 'candidates' }, ...from },
  // grave 3 - 2x4 = -5; mild 2 + 3x4 = 14; pest 2 - 1 = 1.
  { case: 'what must be reported comes first though more speaks against it', given: { there: ['holes', 'bag'], notThere: [] }, expect: { points: { grave: -5, mild: 14, pest: 1 }, order: ['grave', 'mild', 'pest'], fitLittle: [], outcome: 'candidates' }, ...from },
  // bag: only against grave, so grave does not fit at all; mild 12; pest does not list it.
  { case: 'only a harmless one', given: { there: ['bag'], notThere: [] }, expect: { points: { mild: 12 }, order: ['mild'], fitLittle: [], outcome: 'only-harmless' }, ...from },
  { case: 'a sign that no trouble lists', given: { there: ['noise'], notThere: [] }, expect: { points: {}, order: [], fitLittle: [], outcome: 'no-match' }, ...from },
  // mild 2 - 6 (bag always shows); pest 2 - 6 (webs always); grave 3.
  { case: 'looked for and not there: 6 where it always shows', given: { there: ['holes'], notThere: ['bag', 'webs'] }, expect: { points: { grave: 3 }, order: ['grave'], fitLittle: ['mild', 'pest'], outcome: 'candidates' }, ...from },
  // grave 3 - 3 (thread often shows) = 0, and stays; mild 2: a sign that never shows there is expected to be absent.
  { case: 'looked for and not there: 3 where it often shows, nothing where it never does', given: { there: ['holes'], notThere: ['thread'] }, expect: { points: { grave: 0, mild: 2, pest: 2 }, order: ['grave', 'mild', 'pest'], fitLittle: [], outcome: 'candidates' }, ...from },
  // pest 12 - 1 (crumbs sometimes) - 1 (noise unlisted) = 10.
  { case: 'not there where it sometimes shows: 1; there and not listed: 1', given: { there: ['webs', 'noise'], notThere: ['crumbs'] }, expect: { points: { pest: 10 }, order: ['pest'], fitLittle: [], outcome: 'candidates' }, ...from },
  // grave 3 - 2; pest 2; mild has no season of its own.
  { case: 'another part of the year takes away 2', given: { there: ['holes'], notThere: [], phase: 'dearth' }, expect: { points: { grave: 1, mild: 2, pest: 2 }, order: ['grave', 'mild', 'pest'], fitLittle: [], outcome: 'candidates' }, ...from },
  // pest 2 - 2 = 0: fits little; grave 3 in its own season.
  { case: 'no points left: fits little', given: { there: ['holes'], notThere: [], phase: 'build-up' }, expect: { points: { grave: 3, mild: 2 }, order: ['grave', 'mild'], fitLittle: ['pest'], outcome: 'candidates' }, ...from },
  // pest 12 + 2x1 - 1 = 13 for webs and holes and bag; mild 12 + 2 - 1 = 13: equal, with as many fitting signs, so in list order.
  { case: 'a tie keeps the order of the list', given: { there: ['webs', 'holes', 'bag'], notThere: [] }, expect: { points: { grave: -6, mild: 13, pest: 13 }, order: ['grave', 'mild', 'pest'], fitLittle: [], outcome: 'candidates' }, ...from },
];
