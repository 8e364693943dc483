/**
 * Sugar, water and syrup of a mix, from any one of the three. Masses add but volumes do not, so the volume of syrup comes from its
 * density. A recipe has parts by weight, parts by volume, or kilograms of sugar to litres of water. Sugar by the cup is accurate to about
 * 5 %. For white granulated sugar and plain water at one temperature. Does not hold where some sugar stays undissolved. Units: kg, L,
 * Brix (per cent of sugar by weight), C, g of sugar in a US cup. Density: density.ts.
 */
import { ok, err, type Result, type Refused } from '../result.ts';
import { gramsToKilograms } from '../units/weight.ts';
import { usCupsToLitres } from '../units/volume.ts';
import { coldestC, syrupKgPerLitre, thickestBrix, warmestC, waterKgPerLitre } from './density.ts';
import { grainsBelow, type Graining } from './solubility.ts';

/** Sugar comes first: 2 and 1 are a strong syrup. */
export type Recipe = {
  readonly sugarParts: number;
  readonly waterParts: number;
  readonly by: 'weight' | 'volume' | 'kilograms-to-litres';
};

export type Kitchen = { readonly temperatureC: number; readonly sugarGramsPerUsCup: number };

export type Amount = { readonly kg: number } | { readonly litres: number };
export type Known = { readonly of: 'sugar' | 'water' | 'syrup'; readonly amount: Amount };

export type Syrup = {
  readonly sugarKg: number;
  readonly waterKg: number;
  readonly waterLitres: number;
  readonly syrupKg: number;
  readonly syrupLitres: number;
  readonly brix: number;
  readonly kgPerLitre: number;
  readonly sugarKgPerLitre: number;
  readonly graining: Graining;
};

export type MixReason = 'no-sugar' | 'no-water' | 'no-amount' | 'too-much' | 'temperature-out-of-range' | 'impossible-cup' | 'too-thick';

/** Solid sugar without any air has 1.588 kg/L, which is 376 g a cup. */
const heaviestCupGrams = 376;
const mostOfAnything = 1e6;

export function mixSyrup(recipe: Recipe, known: Known, kitchen: Kitchen): Result<Syrup, MixReason> {
  const wrong = checkRecipe(recipe, kitchen) ?? checkAmount(known.amount);
  if (wrong) return wrong;
  const brix = brixOf(recipe, kitchen);
  if (brix > thickestBrix) return err('too-thick');
  const kgPerLitre = syrupKgPerLitre(brix, kitchen.temperatureC);
  const syrupKg = syrupKgFrom(known, brix, kgPerLitre, kitchen);
  const sugarKg = (syrupKg * brix) / 100;
  const waterKg = syrupKg * (1 - brix / 100);
  return ok({
    sugarKg,
    waterKg,
    waterLitres: waterKg / waterKgPerLitre(kitchen.temperatureC),
    syrupKg,
    syrupLitres: syrupKg / kgPerLitre,
    brix,
    kgPerLitre,
    sugarKgPerLitre: (kgPerLitre * brix) / 100,
    graining: grainsBelow(brix),
  });
}

/** Per cent of sugar by weight. The recipe must be valid for `mixSyrup`. */
export function brixOf({ sugarParts, waterParts, by }: Recipe, kitchen: Kitchen): number {
  const sugar = sugarParts * (by === 'volume' ? looseSugarKgPerLitre(kitchen) : 1);
  const water = waterParts * (by === 'weight' ? 1 : waterKgPerLitre(kitchen.temperatureC));
  return (100 * sugar) / (sugar + water);
}

function syrupKgFrom({ of, amount }: Known, brix: number, kgPerLitre: number, kitchen: Kitchen): number {
  const perLitre = { sugar: looseSugarKgPerLitre(kitchen), water: waterKgPerLitre(kitchen.temperatureC), syrup: kgPerLitre };
  const kg = 'kg' in amount ? amount.kg : amount.litres * perLitre[of];
  const share = { sugar: brix / 100, water: 1 - brix / 100, syrup: 1 };
  return kg / share[of];
}

function looseSugarKgPerLitre(kitchen: Kitchen): number {
  return gramsToKilograms(kitchen.sugarGramsPerUsCup) / usCupsToLitres(1);
}

export function checkRecipe(recipe: Recipe, kitchen: Kitchen): Refused<MixReason> | undefined {
  if (!(recipe.sugarParts > 0)) return err('no-sugar');
  if (!(recipe.waterParts > 0)) return err('no-water');
  if (recipe.sugarParts > mostOfAnything || recipe.waterParts > mostOfAnything) return err('too-much');
  const { temperatureC, sugarGramsPerUsCup } = kitchen;
  if (!(temperatureC >= coldestC && temperatureC <= warmestC)) return err('temperature-out-of-range');
  return sugarGramsPerUsCup > 0 && sugarGramsPerUsCup <= heaviestCupGrams ? undefined : err('impossible-cup');
}

function checkAmount(amount: Amount): Refused<MixReason> | undefined {
  const size = 'kg' in amount ? amount.kg : amount.litres;
  if (!(size > 0)) return err('no-amount');
  return size > mostOfAnything ? err('too-much') : undefined;
}
