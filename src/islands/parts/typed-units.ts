/* Units that may be typed behind a number, in lower case, each with the sum to the unit of the label. */
import { unitWords } from '../../../shared/units/unit-names.ts';
import {
  imperialGallonsToLitres,
  imperialPintsToLitres,
  millilitresToLitres,
  usCupsToLitres,
  usGallonsToLitres,
  usQuartsToLitres,
} from '../../../shared/units/volume.ts';
import {
  gramsToKilograms,
  kilogramsToGrams,
  kilogramsToPounds,
  ouncesToKilograms,
  poundsToKilograms,
} from '../../../shared/units/weight.ts';

type Sums = Readonly<Record<string, (value: number) => number>>;

const same = (value: number): number => value;
const worded = (words: readonly string[], sum: (value: number) => number): Sums => Object.fromEntries(words.map((word) => [word, sum]));

export const inPounds: Sums = {
  ...worded(unitWords.lb, same),
  ...worded(unitWords.kg, kilogramsToPounds),
  ...worded(unitWords.oz, (ounces) => ounces / 16),
  ...worded(unitWords.g, (grams) => kilogramsToPounds(gramsToKilograms(grams))),
};

export const inGrams: Sums = {
  ...worded(unitWords.g, same),
  ...worded(unitWords.kg, kilogramsToGrams),
  ...worded(unitWords.lb, (pounds) => kilogramsToGrams(poundsToKilograms(pounds))),
  ...worded(unitWords.oz, (ounces) => kilogramsToGrams(ouncesToKilograms(ounces))),
};

export const inLitres: Sums = {
  ...worded(unitWords.L, same),
  ...worded(unitWords.mL, millilitresToLitres),
  ...worded(unitWords['us-gal'], usGallonsToLitres),
  ...worded(unitWords['us-qt'], usQuartsToLitres),
  ...worded(unitWords['us-cup'], usCupsToLitres),
  ...worded(unitWords['imp-gal'], imperialGallonsToLitres),
  ...worded(unitWords['imp-pt'], imperialPintsToLitres),
};

export const inPercent: Sums = { '%': same, percent: same, 'per cent': same };

export const inDays: Sums = {
  ...worded(['d', 'day', 'days'], same),
  ...worded(['h', 'hr', 'hrs', 'hour', 'hours'], (hours) => hours / 24),
  ...worded(['week', 'weeks'], (weeks) => weeks * 7),
};
