/* Table of the usual mixes of sugar and water, for the calculator's page and the pocket card. */
import type { Syrup } from '../../../shared/feeding/mix.ts';
import { mix, type Mixed } from './model.ts';

const USUAL = [
  { words: '1 to 1 by weight', sugar: 1, water: 1, by: 'weight' },
  { words: '1 to 1 by volume', sugar: 1, water: 1, by: 'volume' },
  { words: '1 kg to 630 mL, as in Britain', sugar: 1, water: 0.63, by: 'kilograms-to-litres' },
  { words: '2 to 1 by volume', sugar: 2, water: 1, by: 'volume' },
  { words: '2 to 1 by weight', sugar: 2, water: 1, by: 'weight' },
] as const;

/** @throws Error for a mix that cannot be. */
export function made(mixed: Mixed): Syrup {
  const mixture = mix(mixed);
  if (!mixture.ok) throw new Error(`syrup: needs a mix that can be, got ${JSON.stringify(mixed)}`);
  return mixture.value;
}

/** The usual mixes, with the amount, the unit and the temperature of `as`. */
export const usualMixes = (as: Mixed): ({ words: string } & Syrup)[] =>
  USUAL.map(({ words, sugar, water, by }) => ({ words, ...made({ ...as, 'sugar-parts': sugar, 'water-parts': water, by }) }));
