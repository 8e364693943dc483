/**
 * Winter stores of a hive, the shortfall from a target, and the syrup that fills it, as a least and a most. Bees turn sugar into stores
 * of about 82 % sugar. At best every gram arrives (efficiency 1); the rule of practice is about three quarters. Weighed stores are gross
 * weight minus the empty hive. They include bees, pollen and wax, so they are approximate. The caller passes the figures: weight of a
 * full frame, target, sugar in stores, efficiencies. Units: kg, L.
 */
import { ok, err, type Result } from '../result.ts';
import { mixSyrup, type Kitchen, type MixReason, type Recipe } from './mix.ts';

export type HiveStores =
  | { readonly grossKg: number; readonly emptyKg: number }
  | { readonly frames: readonly { readonly count: number; readonly honeyKgEach: number }[] };

export type FeedingFigures = {
  /** Share of sugar in ripe stores: 0.82. */
  readonly sugarShareOfStores: number;
  /** Share of the fed sugar that ends in the comb: 0.76 and 1. */
  readonly efficiencyLeast: number;
  readonly efficiencyMost: number;
};

export type WinterStores = {
  readonly storesKg: number;
  readonly shortKg: number;
  readonly sugarKgLeast: number;
  readonly sugarKgMost: number;
  readonly syrupLitresLeast: number;
  readonly syrupLitresMost: number;
};

export type StoresReason = MixReason | 'no-target' | 'impossible-weight' | 'empty-heavier-than-gross' | 'impossible-frames';

/** The available mixes, sugar first. */
export const storeMixes = {
  '1:1-weight': { sugarParts: 1, waterParts: 1, by: 'weight' },
  '3:2-weight': { sugarParts: 3, waterParts: 2, by: 'weight' },
  '2:1-weight': { sugarParts: 2, waterParts: 1, by: 'weight' },
  '2:1-volume': { sugarParts: 2, waterParts: 1, by: 'volume' },
  '1kg-630ml': { sugarParts: 1, waterParts: 0.63, by: 'kilograms-to-litres' },
} as const satisfies Record<string, Recipe>;
export type StoreMix = keyof typeof storeMixes;

const heaviestKg = 1000;

export function winterStores(
  asked: { hive: HiveStores; targetKg: number; mix: StoreMix; kitchen: Kitchen },
  figures: FeedingFigures,
): Result<WinterStores, StoresReason> {
  checkFigures(figures);
  if (!(asked.targetKg > 0 && asked.targetKg <= heaviestKg)) return err('no-target');
  const stores = storesIn(asked.hive);
  if (!stores.ok) return stores;
  const perKgSugar = mixSyrup(storeMixes[asked.mix], { of: 'sugar', amount: { kg: 1 } }, asked.kitchen);
  if (!perKgSugar.ok) return perKgSugar;
  const shortKg = Math.max(0, asked.targetKg - stores.value);
  const sugarKgLeast = (shortKg * figures.sugarShareOfStores) / figures.efficiencyMost;
  const sugarKgMost = (shortKg * figures.sugarShareOfStores) / figures.efficiencyLeast;
  return ok({
    storesKg: stores.value,
    shortKg,
    sugarKgLeast,
    sugarKgMost,
    syrupLitresLeast: sugarKgLeast * perKgSugar.value.syrupLitres,
    syrupLitresMost: sugarKgMost * perKgSugar.value.syrupLitres,
  });
}

function storesIn(hive: HiveStores): Result<number, StoresReason> {
  if ('frames' in hive) return storesInFrames(hive.frames);
  const { grossKg, emptyKg } = hive;
  const sound = (kg: number) => kg >= 0 && kg <= heaviestKg;
  if (!sound(grossKg) || !sound(emptyKg)) return err('impossible-weight');
  return grossKg < emptyKg ? err('empty-heavier-than-gross') : ok(grossKg - emptyKg);
}

/** Half frames are possible, so a count need not be whole. */
function storesInFrames(frames: readonly { count: number; honeyKgEach: number }[]): Result<number, StoresReason> {
  if (frames.some(({ count }) => !(count >= 0 && count <= 100))) return err('impossible-frames');
  return ok(frames.reduce((sum, { count, honeyKgEach }) => sum + count * honeyKgEach, 0));
}

function checkFigures({ sugarShareOfStores, efficiencyLeast, efficiencyMost }: FeedingFigures): void {
  const shares = [sugarShareOfStores, efficiencyLeast, efficiencyMost];
  if (shares.some((share) => !(share > 0 && share <= 1)) || efficiencyLeast > efficiencyMost) {
    throw new RangeError('winterStores: needs shares over 0 up to 1, the least efficiency first');
  }
}
