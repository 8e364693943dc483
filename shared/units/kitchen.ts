/**
 * Amounts as a person measures them: "about 7 cups", "about 4½ lb". The printed amount is never more than `kitchenShare` away from the exact
 * one, and the exact one is printed beside it. US measures: a gallon has 4 quarts or 16 cups, a cup 16 tablespoons, a pound 16 ounces (NIST
 * Handbook 44, appendix C). Litres and kilograms are rounded to what a jug and a kitchen scale show, which is common practice, no source.
 */
import { kilogramsToPounds } from './weight.ts';
import { litresToUsCups } from './volume.ts';

/** The printed amount lies within this share of the exact one. */
export const kitchenShare = 0.06;

type System = 'us' | 'metric';
/** `each` is the size in the smallest unit of the table; the printed number is a multiple of one of the steps, the coarsest that is near enough. */
type Unit = {
  readonly words: readonly [one: string, many: string];
  readonly each: number;
  readonly from: number;
  readonly steps: readonly number[];
};

/** In cups. */
const US_VOLUMES: readonly Unit[] = [
  { words: ['gallon', 'gallons'], each: 16, from: 0.97, steps: [1, 0.5, 0.25] },
  { words: ['half gallon', ''], each: 8, from: 0.97, steps: [] },
  { words: ['quart', 'quarts'], each: 4, from: 0.97, steps: [1, 0.5] },
  { words: ['cup', 'cups'], each: 1, from: 0.24, steps: [1, 0.5, 0.25] },
  { words: ['tablespoon', 'tablespoons'], each: 1 / 16, from: 0.47, steps: [1, 0.5, 0.25] },
];
/** In pounds. */
const US_WEIGHTS: readonly Unit[] = [
  { words: ['lb', 'lb'], each: 1, from: 0.97, steps: [1, 0.5, 0.25] },
  { words: ['oz', 'oz'], each: 1 / 16, from: 0.47, steps: [1, 0.5, 0.25] },
];
/** In litres. */
const METRIC_VOLUMES: readonly Unit[] = [
  { words: ['L', 'L'], each: 1, from: 0.97, steps: [1, 0.5, 0.1] },
  { words: ['mL', 'mL'], each: 0.001, from: 4.8, steps: [100, 50, 10, 5] },
];
/** In kilograms. */
const METRIC_WEIGHTS: readonly Unit[] = [
  { words: ['kg', 'kg'], each: 1, from: 0.97, steps: [1, 0.5, 0.1] },
  { words: ['g', 'g'], each: 0.001, from: 4.8, steps: [100, 50, 10, 5] },
];

/** "about 7 cups", or undefined for nothing and for less than a person measures. */
export function kitchenVolume(litres: number, system: System): string | undefined {
  return system === 'us' ? about(litresToUsCups(litres), US_VOLUMES) : about(litres, METRIC_VOLUMES);
}

export function kitchenWeight(kg: number, system: System): string | undefined {
  return system === 'us' ? about(kilogramsToPounds(kg), US_WEIGHTS) : about(kg, METRIC_WEIGHTS);
}

/** Cups of something that is weighed, such as sugar. */
export function kitchenCups(cups: number): string | undefined {
  return about(
    cups,
    US_VOLUMES.filter(({ each }) => each <= 1),
  );
}

/** "about 1½ to 2 gallons": both ends in the unit of the larger one where it fits the smaller, otherwise each in its own. */
export function kitchenVolumes(least: number, most: number, system: System): string | undefined {
  const [low, high] = [kitchenVolume(least, system), kitchenVolume(most, system)];
  if (!low || !high) return undefined;
  if (low === high) return low;
  const unit = high.replace(/^about (?:a |[\d½¼¾.,]+ )/, '');
  const [short] = /^about (?:a|[\d½¼¾.,]+)/.exec(low)!;
  const same = low.endsWith(unit) || low.endsWith(unit.replace(/s$/, ''));
  return same
    ? `${short.replace(/ a$/, ' 1')} to ${high.replace('about ', '').replace(/^a /, '1 ')}`
    : `${low} to ${high.replace('about ', '')}`;
}

function about(amount: number, units: readonly Unit[]): string | undefined {
  if (!(amount > 0)) return undefined;
  for (const { words, each, from, steps } of units) {
    const count = amount / each;
    if (count < from) continue;
    if (steps.length === 0) {
      if (Math.abs(count - 1) <= kitchenShare) return `about half a gallon`;
      continue;
    }
    const tried = steps.map((step) => Math.round(count / step) * step);
    const near = tried.find((value) => value > 0 && Math.abs(value - count) <= kitchenShare * count);
    if (near !== undefined) return `about ${counted(near, words)}`;
  }
  return undefined;
}

function counted(value: number, [one, many]: Unit['words']): string {
  const whole = Math.floor(value + 1e-9);
  const part = { 0.25: '¼', 0.5: '½', 0.75: '¾' }[Number((value - whole).toFixed(2))];
  const shown = part
    ? `${whole === 0 ? '' : whole}${part}`
    : Number(value.toFixed(1))
        .toString()
        .replace(/\B(?=(\d{3})+$)/g, ',');
  if (shown === '1' && one !== many) return `a ${one}`;
  return `${shown} ${value < 1 && one !== many ? one : many}`;
}
