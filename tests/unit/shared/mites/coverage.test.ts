import { apiaryRate } from '../../../../shared/mites/apiary-rate.ts';
import { near } from '../../../near.ts';
import { rows } from '../../../rows.ts';
import { coverage } from '../../../tables/mites.ts';

/** Random yards from a fixed seed: how often does the range contain the rate they were made with? */
const runs = 10_000;
const truePer100 = 3;

rows('share of ranges that hold the truth', coverage, ({ colonies, clumping }, { share }) => {
  const chance = seeded(colonies * 1000 + Math.round((clumping ?? 0) * 10));
  let held = 0;
  for (let run = 0; run < runs; run += 1) {
    const samples = Array.from({ length: colonies }, () => {
      const bees = Math.max(50, Math.round(300 + 30 * normal(chance)));
      const clumped = clumping === undefined ? 1 : gamma(clumping, chance) / clumping;
      return { bees, mites: poisson((truePer100 / 100) * bees * clumped, chance) };
    });
    const { lowPer100 = 0, highPer100 = 0 } = apiaryRate(samples);
    if (lowPer100 <= truePer100 && truePer100 <= highPer100) held += 1;
  }
  near(held / runs, share, 0.015);
});

/** A small generator of uniform random numbers with 32 bits of state, after the published mulberry32. */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

function normal(chance: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
}

/** Marsaglia & Tsang 2000. For a shape under 1, from the shape one higher. */
function gamma(shape: number, chance: () => number): number {
  if (shape < 1) return gamma(shape + 1, chance) * (1 - chance()) ** (1 / shape);
  const size = shape - 1 / 3;
  for (;;) {
    const x = normal(chance);
    const cube = (1 + x / Math.sqrt(9 * size)) ** 3;
    if (cube > 0 && Math.log(1 - chance()) < x ** 2 / 2 + size * (1 - cube + Math.log(cube))) return size * cube;
  }
}

/** Knuth's product of uniform numbers, in steps so that the exponential does not underflow. */
function poisson(mean: number, chance: () => number): number {
  if (mean > 30) return poisson(mean / 2, chance) + poisson(mean / 2, chance);
  let [count, product] = [0, chance()];
  for (const end = Math.exp(-mean); product > end; product *= chance()) count += 1;
  return count;
}
