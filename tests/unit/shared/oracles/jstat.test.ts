import { createRequire } from 'node:module';
import { test } from 'vitest';
import { normalDensity, normalShareBelow } from '../../../../shared/numbers/normal.ts';
import { chanceOfAtMost, poissonLimits } from '../../../../shared/numbers/poisson.ts';
import { shareBelowT, tQuantile } from '../../../../shared/numbers/student-t.ts';
import { nearInPart } from '../../../near.ts';

/** A general statistics library as an independent check. It has no types of its own. */
type Distribution = {
  inv: (share: number, ...shape: number[]) => number;
  cdf: (x: number, ...shape: number[]) => number;
  pdf: (x: number, ...shape: number[]) => number;
};
const { jStat } = createRequire(import.meta.url)('jstat') as {
  jStat: Record<'chisquare' | 'studentt' | 'normal' | 'poisson', Distribution>;
};

test('exact limits are the chi-square quantiles', () => {
  for (const certainty of [0.9, 0.95, 0.99])
    for (const count of [0, 1, 2, 3, 7, 12, 25, 60, 150, 400]) {
      const { low, high } = poissonLimits(count, certainty);
      nearInPart(high, jStat.chisquare.inv((1 + certainty) / 2, 2 * count + 2) / 2, 1e-6, `high of ${count}`);
      if (count > 0) nearInPart(low, jStat.chisquare.inv((1 - certainty) / 2, 2 * count) / 2, 1e-6, `low of ${count}`);
    }
});

test('the summed distribution is the same', () => {
  for (const mean of [0.1, 1, 5, 30])
    for (const count of [0, 1, 4, 20, 40])
      nearInPart(chanceOfAtMost(count, mean), jStat.poisson.cdf(count, mean), 1e-9, `${count} of ${mean}`);
});

test('Student t, share and quantile', () => {
  for (const freedom of [1, 2, 3, 4, 7, 11, 23, 30, 49, 120]) {
    for (const share of [0.6, 0.9, 0.975, 0.995])
      nearInPart(tQuantile(share, freedom), jStat.studentt.inv(share, freedom), 1e-6, `t ${share}, ${freedom}`);
    for (const t of [-3, -0.5, 0, 1.3, 4])
      nearInPart(shareBelowT(t, freedom), jStat.studentt.cdf(t, freedom), 1e-7, `share below ${t}, ${freedom}`);
  }
});

test('the normal curve, share and height', () => {
  for (const z of [-6, -3, -1.96, -0.1, 0, 0.7, 2.5, 5])
    nearInPart(normalShareBelow(z), jStat.normal.cdf(z, 0, 1), 1e-6, `share below ${z}`);
  for (const z of [-3, -0.4, 0, 1.1]) nearInPart(normalDensity(z), jStat.normal.pdf(z, 0, 1), 1e-12, `height at ${z}`);
});
