/* Table of the usual mixes of sugar and water, for the calculator's page and the pocket card. */
import type { Syrup } from '../../../shared/feeding/mix.ts';
import { mix, type Mixed } from './model.ts';
import { mixNames } from './text.en.ts';

const USUAL = [
  { name: '1:1-weight', sugar: 1, water: 1, by: 'weight' },
  { name: '1:1-volume', sugar: 1, water: 1, by: 'volume' },
  { name: '1kg-630ml', sugar: 1, water: 0.63, by: 'kilograms-to-litres' },
  { name: '2:1-volume', sugar: 2, water: 1, by: 'volume' },
  { name: '2:1-weight', sugar: 2, water: 1, by: 'weight' },
] as const;

/** @throws Error for a mix that cannot be. */
export function made(mixed: Mixed): Syrup {
  const mixture = mix(mixed);
  if (!mixture.ok) throw new Error(`syrup: needs a mix that can be, got ${JSON.stringify(mixed)}`);
  return mixture.value;
}

/** The usual mixes, with the amount, the unit and the temperature of `as`. */
export const usualMixes = (as: Mixed): ({ words: string } & Syrup)[] =>
  USUAL.map(({ name, sugar, water, by }) => ({
    words: mixNames[name],
    ...made({ ...as, 'sugar-parts': sugar, 'water-parts': water, by }),
  }));
