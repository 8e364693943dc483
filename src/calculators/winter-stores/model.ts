/* Winter stores of a hive with the club's own figures, for the form, the worked example and the table. */
import type { MonthDay } from '../../../shared/days/month-day.ts';
import {
  storeMixes,
  winterStores,
  type FeedingFigures,
  type HiveStores,
  type StoreMix,
  type StoresReason,
} from '../../../shared/feeding/stores.ts';
import { plainDecimal } from '../../../shared/numbers/show-number.ts';
import { kilogramsToPounds } from '../../../shared/units/weight.ts';
import { ok, err, type Result } from '../../../shared/result.ts';
import type { System } from '../form/measures.ts';

export type Frame = 'deep' | 'medium' | 'shallow';
export const frames: readonly Frame[] = ['deep', 'medium', 'shallow'];
export const mixes: readonly StoreMix[] = ['1:1-weight', '3:2-weight', '2:1-weight', '2:1-volume', '1kg-630ml'];

export type Hive = {
  readonly 'gross-kg': number | undefined;
  readonly 'empty-kg': number | undefined;
  readonly 'target-kg': number;
  readonly mix: StoreMix;
} & { readonly [Kind in Frame]: number | undefined };

export type StoresFigures = {
  readonly units: System;
  readonly frameKg: { readonly [Kind in Frame]: number | null };
  readonly feeding: FeedingFigures | null;
  readonly sugarPerCup: number;
  /** For each district, the main one first. Empty where the club has no climate and no dates for it. */
  readonly feedBy: readonly { readonly district: string; readonly day: MonthDay; readonly words: string }[];
};

export type Stores = {
  readonly from: 'weights' | 'frames';
  /** Missing where the club has no honey figure for a counted frame. */
  readonly storesKg?: number;
  readonly shortKg?: number;
  readonly feed?: {
    readonly sugarKgLeast: number;
    readonly sugarKgMost: number;
    readonly syrupLitresLeast: number;
    readonly syrupLitresMost: number;
  };
};

export type HiveReason = StoresReason | 'nothing-given' | 'both-ways' | 'no-gross' | 'no-empty';

export function planStores(hive: Hive, { frameKg, feeding, sugarPerCup }: StoresFigures): Result<Stores, HiveReason> {
  const weighed = hive['gross-kg'] !== undefined || hive['empty-kg'] !== undefined;
  const counted = frames.filter((kind) => hive[kind] !== undefined);
  if (weighed && counted.some((kind) => hive[kind] !== 0)) return err('both-ways');
  if (!weighed && counted.length === 0) return err('nothing-given');
  const lacking = !weighed && counted.some((kind) => hive[kind] !== 0 && frameKg[kind] === null);
  const stores = weighed
    ? byWeights(hive)
    : ok<HiveStores>({ frames: counted.map((kind) => ({ count: hive[kind]!, honeyKgEach: frameKg[kind] ?? 0 })) });
  if (!stores.ok) return stores;
  const found = winterStores(
    { hive: stores.value, targetKg: hive['target-kg'], mix: hive.mix, kitchen: { temperatureC: 20, sugarGramsPerUsCup: sugarPerCup } },
    feeding ?? { sugarShareOfStores: 1, efficiencyLeast: 1, efficiencyMost: 1 },
  );
  if (!found.ok) return found;
  const { storesKg, shortKg, ...feed } = found.value;
  return ok({ from: weighed ? 'weights' : 'frames', ...(lacking ? {} : { storesKg, shortKg, ...(feeding ? { feed } : {}) }) });
}

function byWeights({ 'gross-kg': grossKg, 'empty-kg': emptyKg }: Hive): Result<HiveStores, 'no-gross' | 'no-empty'> {
  if (grossKg === undefined) return err('no-gross');
  return emptyKg === undefined ? err('no-empty') : ok({ grossKg, emptyKg });
}

/** The syrup page with this sugar in its form. */
export function syrupAddress(mix: StoreMix, sugarKg: number, units: System): string {
  const { sugarParts, waterParts, by } = storeMixes[mix];
  const amount = Number((units === 'us' ? kilogramsToPounds(sugarKg) : sugarKg).toFixed(2));
  return `sugar-parts=${sugarParts}&water-parts=${waterParts}&by=${by === 'volume' ? by : 'weight'}&know=sugar&amount=${plainDecimal(amount)}&unit=${units === 'us' ? 'lb' : 'kg'}`;
}
