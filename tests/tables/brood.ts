import type { Caste } from '../../shared/brood/development.ts';
import type { Seen } from '../../shared/brood/dates.ts';
import type { SourcedRow } from '../rows.ts';

const textbook = { from: 'derived from the common table: worker egg 3, sealed 8-9, adult 21; queen 7.5-8, 15.5-17; drone 9.5-10, 24 days', basis: 'memory' } as const;
const mating = { from: 'derived: queen mates 6-10 days after emerging (NSW Primefact 828, 2008), lays 2-3 days later, day 24-29 from the egg', basis: 'derived' } as const;

/** Days from the observation, as earliest and latest. */
export const looks: SourcedRow<{ caste: Caste; seen: Seen }, Record<string, [number, number]>>[] = [
  { case: 'worker egg', given: { caste: 'worker', seen: 'egg' }, expect: { laid: [-3, 0], sealed: [5, 9], emerges: [18, 21] }, ...textbook },
  { case: 'worker, open', given: { caste: 'worker', seen: 'open' }, expect: { laid: [-9, -3], sealed: [0, 6], emerges: [12, 18] }, ...textbook },
  { case: 'worker, sealed', given: { caste: 'worker', seen: 'sealed' }, expect: { laid: [-21, -8], sealed: [-13, 0], emerges: [0, 13] }, ...textbook },
  { case: 'worker, emerging', given: { caste: 'worker', seen: 'emerging' }, expect: { laid: [-21, -21], sealed: [-13, -12], emerges: [0, 0] }, ...textbook },
  { case: 'worker, laying stopped', given: { caste: 'worker', seen: 'caged' }, expect: { laid: [0, 0], sealed: [8, 9], emerges: [21, 21] }, ...textbook },
  { case: 'drone egg', given: { caste: 'drone', seen: 'egg' }, expect: { laid: [-3, 0], sealed: [6, 10], emerges: [21, 24] }, ...textbook },
  { case: 'drone, sealed', given: { caste: 'drone', seen: 'sealed' }, expect: { laid: [-24, -9], emerges: [0, 15] }, ...textbook },
  { case: 'queen egg', given: { caste: 'queen', seen: 'egg' }, expect: { laid: [-3, 0], sealed: [4, 8], emerges: [12, 17], mates: [19, 26], lays: [21, 29] }, ...mating },
  { case: 'queen, emerging', given: { caste: 'queen', seen: 'emerging' }, expect: { emerges: [0, 0], mates: [6, 10], lays: [8, 13] }, ...mating },
  { case: 'queen, last egg', given: { caste: 'queen', seen: 'caged' }, expect: { sealed: [7, 8], emerges: [15, 17], mates: [22, 26], lays: [24, 29] }, ...mating },
];
