/* Syrup mix from the values of the form, computed by shared/feeding, for the form, the worked example and the table. */
import { mixSyrup, type Amount, type MixReason, type Recipe, type Syrup } from '../../../shared/feeding/mix.ts';
import type { Result } from '../../../shared/result.ts';
import {
  imperialGallonsToLitres, imperialPintsToLitres, millilitresToLitres, usCupsToLitres, usGallonsToLitres, usQuartsToLitres,
} from '../../../shared/units/volume.ts'; // prettier-ignore
import { gramsToKilograms, ouncesToKilograms, poundsToKilograms } from '../../../shared/units/weight.ts';
import type { System } from '../form/measures.ts';

export type Mixed = {
  readonly 'sugar-parts': number;
  readonly 'water-parts': number;
  readonly by: Recipe['by'];
  readonly know: 'sugar' | 'water' | 'syrup';
  readonly amount: number;
  readonly unit: AmountUnit;
  readonly temperature: number;
  readonly 'sugar-per-cup': number;
};

export type SyrupFigures = { readonly units: System };

const toAmount = {
  kg: (value) => ({ kg: value }),
  g: (value) => ({ kg: gramsToKilograms(value) }),
  lb: (value) => ({ kg: poundsToKilograms(value) }),
  oz: (value) => ({ kg: ouncesToKilograms(value) }),
  L: (value) => ({ litres: value }),
  mL: (value) => ({ litres: millilitresToLitres(value) }),
  'us-gal': (value) => ({ litres: usGallonsToLitres(value) }),
  'us-qt': (value) => ({ litres: usQuartsToLitres(value) }),
  'us-cup': (value) => ({ litres: usCupsToLitres(value) }),
  'imp-gal': (value) => ({ litres: imperialGallonsToLitres(value) }),
  'imp-pt': (value) => ({ litres: imperialPintsToLitres(value) }),
} as const satisfies Record<string, (value: number) => Amount>;

export type AmountUnit = keyof typeof toAmount;
export const amountUnits = Object.keys(toAmount) as AmountUnit[];

export function mix(mixed: Mixed): Result<Syrup, MixReason> {
  return mixSyrup(
    { sugarParts: mixed['sugar-parts'], waterParts: mixed['water-parts'], by: mixed.by },
    { of: mixed.know, amount: toAmount[mixed.unit](mixed.amount) },
    { temperatureC: mixed.temperature, sugarGramsPerUsCup: mixed['sugar-per-cup'] },
  );
}
