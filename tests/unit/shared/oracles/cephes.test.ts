import { createRequire } from 'node:module';
import { test } from 'vitest';
import { normalShareBelow } from '../../../../shared/numbers/normal.ts';
import { chanceOfAtMost, poissonLimits } from '../../../../shared/numbers/poisson.ts';
import { shareBelowT, tQuantile } from '../../../../shared/numbers/student-t.ts';
import { nearInPart } from '../../../near.ts';

/** An independent library: the Cephes mathematical library (S. L. Moshier), compiled. These are the types of the calls used here. */
type Cephes = {
  compiled: Promise<void>;
  /** The mean at which the chance of k or fewer is y. */
  pdtri: (k: number, y: number) => number;
  pdtr: (k: number, mean: number) => number;
  stdtri: (freedom: number, share: number) => number;
  stdtr: (freedom: number, t: number) => number;
  ndtr: (z: number) => number;
};

const require = createRequire(import.meta.url);

async function opened(): Promise<Cephes> {
  const cephes = require('cephes') as Cephes & { default?: Cephes };
  const library = cephes.default ?? cephes;
  await library.compiled;
  return library;
}

test('exact limits of a count invert the Poisson distribution', async () => {
  const cephes = await opened();
  for (const certainty of [0.9, 0.95, 0.99])
    for (const count of [0, 1, 2, 3, 9, 24, 72, 300, 1200]) {
      const tail = (1 - certainty) / 2;
      nearInPart(poissonLimits(count, certainty).high, cephes.pdtri(count, tail), 1e-9, `high of ${count}`);
      if (count > 0) nearInPart(poissonLimits(count, certainty).low, cephes.pdtri(count - 1, 1 - tail), 1e-9, `low of ${count}`);
      nearInPart(chanceOfAtMost(count, count + 1), cephes.pdtr(count, count + 1), 1e-9, `chance of ${count}`);
    }
});

test('Student t and the normal curve', async () => {
  const cephes = await opened();
  for (const freedom of [1, 2, 5, 7, 11, 31, 49, 200]) {
    for (const share of [0.6, 0.975, 0.995])
      nearInPart(tQuantile(share, freedom), cephes.stdtri(freedom, share), 1e-8, `t ${share}, ${freedom}`);
    for (const t of [-4, -1, 0.2, 2.5]) nearInPart(shareBelowT(t, freedom), cephes.stdtr(freedom, t), 1e-9, `share below ${t}, ${freedom}`);
  }
  for (const z of [-5, -1.96, 0, 0.3, 4]) nearInPart(normalShareBelow(z), cephes.ndtr(z), 1e-9, `share below ${z}`);
});
