/* Package order from the values of the form, computed by shared/packages, for the form, the worked example and the table, and how its numbers are shown. */
import type { Result } from '../../../shared/result.ts';
import { packageOrder, type OrderLine, type OrderReason, type PackageOrder } from '../../../shared/packages/order.ts';
import { formatNumber } from '../../../shared/numbers/show-number.ts';
import { poundsToKilograms } from '../../../shared/units/weight.ts';
import { weightWords, type System } from '../form/measures.ts';

export type Ordered = {
  readonly lines: readonly OrderLine[];
  readonly allowance: number | undefined;
  readonly hours: number | undefined;
  readonly 'bees-per-pound': number;
  readonly 'spare-queens': number;
  readonly 'cage-lb': number | undefined;
  readonly 'can-lb': number | undefined;
  readonly 'syrup-l-each': number | undefined;
};

export type OrderFigures = { readonly units: System; /** Lines of a pick-up sheet. */ readonly members: number };

export const longestHours = 240;

export function reckon(ordered: Ordered): Result<PackageOrder, OrderReason | 'impossible-hours'> {
  const { lines, allowance, hours, 'cage-lb': cage, 'can-lb': can, 'syrup-l-each': syrup } = ordered;
  if (hours !== undefined && !(hours >= 0 && hours <= longestHours)) return { ok: false, reason: 'impossible-hours' };
  return packageOrder(lines, {
    beesPerPound: ordered['bees-per-pound'],
    spareQueens: ordered['spare-queens'],
    ...(allowance === undefined ? {} : { allowancePercent: allowance }),
    ...(cage === undefined ? {} : { cagePounds: cage }),
    ...(can === undefined ? {} : { canPounds: can }),
    ...(syrup === undefined ? {} : { syrupLitresEach: syrup }),
  });
}

export const whole = (value: number): string => formatNumber(value, { places: 0 });
/** Pounds as a number in the form's units. */
export const inUnits = (pounds: number, units: System): number => (units === 'us' ? pounds : poundsToKilograms(pounds));
export const weightOf = (pounds: number, units: System): string => weightWords(poundsToKilograms(pounds), units);
