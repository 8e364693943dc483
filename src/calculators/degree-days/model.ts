/* Degree-days of entered days, or of a normal year where the club has normals. The form and the worked example both use it. */
import { addMonthDays, dayOfCommonYear, type MonthDay } from '../../../shared/days/month-day.ts';
import { formatNumber, withoutZeros } from '../../../shared/numbers/show-number.ts';
import { ok, err, type Result } from '../../../shared/result.ts';
import { degreeDayMethods, type DayTemperatures, type DegreeDayMethod, type DegreeDayRule } from '../../../shared/season/degree-day.ts';
import { checkRule, sumGivenDays, type GivenDaysReason } from '../../../shared/season/given-days.ts';
import { dateReached, doubtInDays, seasonSums, totalOf } from '../../../shared/season/season-sum.ts';
import {
  celsiusDifferenceToFahrenheit,
  celsiusToFahrenheit,
  fahrenheitDifferenceToCelsius,
  fahrenheitToCelsius,
} from '../../../shared/units/temperature.ts';

export type Scale = 'F' | 'C';

export type Asked = {
  /** Absent: the club's normals. */
  readonly days: readonly DayTemperatures[];
  readonly base: number;
  readonly cap: number | undefined;
  readonly scale: Scale;
  readonly method: DegreeDayMethod | undefined;
  readonly spread: number | undefined;
  readonly from: MonthDay | undefined;
  readonly sum: number | undefined;
};

export type Plant = {
  readonly id: string;
  readonly name: string;
  readonly sum: number;
  readonly scale: Scale;
  readonly base: number;
  readonly cap?: number;
  readonly from: MonthDay;
  readonly method: DegreeDayMethod | 'not stated';
  readonly stage: string;
  readonly place: string;
  readonly fromMemory: boolean;
  readonly note: number;
  readonly observed: readonly number[];
};

export type Normals = {
  readonly maxima: readonly number[];
  readonly minima: readonly number[];
  readonly scale: Scale;
  readonly spread: number;
};

export type DegreeDayFigures = {
  readonly normals: Normals | null;
  readonly doubt: { readonly days: number; readonly daysForSmallSums: number } | null;
  readonly plants: readonly Plant[];
  /** The first day of a sum where the member enters none. */
  readonly from: MonthDay;
};

/** A window, or the reason why there is none. */
export type Reached =
  { readonly earliest: MonthDay; readonly latest: MonthDay } | 'no-figure' | 'no-sum' | 'not-reached' | 'no-cap' | 'given-days';

export type Sums = {
  readonly of: 'given-days' | 'normals';
  readonly rule: DegreeDayRule;
  readonly spread: number;
  readonly total?: number;
  readonly eachDay?: readonly number[];
  /** The entered day, counted from 1, at whose end the sum is reached. */
  readonly reachedOnDay?: number;
  readonly reached: Reached;
  readonly plants: readonly { readonly plant: Plant; readonly reached: Reached }[];
};

export type AskedReason = GivenDaysReason | 'no-method' | 'cap-without-use' | 'no-sum';

export function planDegreeDays(asked: Asked, figures: DegreeDayFigures): Result<Sums, AskedReason> {
  const { days, base, cap, sum } = asked;
  if (asked.method === undefined && days.length > 0) return err('no-method');
  const method = asked.method ?? 'simple';
  if (cap !== undefined && method !== 'sine' && method !== 'modified') return err('cap-without-use');
  if (sum !== undefined && !(sum > 0)) return err('no-sum');
  const rule: DegreeDayRule = { method, base, ...(cap === undefined ? {} : { cap }) };
  const plants = figures.plants.map((plant) => ({ plant, reached: bloomOf(plant, figures) }));
  return days.length > 0 ? ofGivenDays(asked, rule, plants) : ofNormals(asked, rule, figures, plants);
}

function ofGivenDays({ days, spread = 0, sum }: Asked, rule: DegreeDayRule, plants: Sums['plants']): Result<Sums, AskedReason> {
  const found = sumGivenDays(days, rule, spread);
  if (!found.ok) return found;
  const running = runningSums(found.value.eachDay);
  const reachedOn = sum === undefined ? -1 : running.findIndex((so) => so >= sum);
  return ok({
    of: 'given-days',
    rule,
    spread,
    ...found.value,
    ...(reachedOn < 0 ? {} : { reachedOnDay: reachedOn + 1 }),
    reached: 'given-days',
    plants,
  });
}

export function runningSums(eachDay: readonly number[]): number[] {
  let sum = 0;
  return eachDay.map((one) => (sum += one));
}

/** A sum as it is shown: whole from a hundred. */
export const sumText = (value: number): string => {
  const isLarge = Math.abs(value) >= 100;
  return isLarge ? formatNumber(value, { places: 0 }) : withoutZeros(formatNumber(value, { places: 2 }));
};

/** The days of a sum, the first six of many. */
export const shownDays = (eachDay: readonly number[]): string =>
  eachDay.length > 8 ? `${eachDay.slice(0, 6).map(sumText).join(' + ')} + …` : eachDay.map(sumText).join(' + ');

/** The first day that counts, or the first. */
export const countedAt = (eachDay: readonly number[]): number =>
  Math.max(
    0,
    eachDay.findIndex((one) => one > 0),
  );

function ofNormals(
  { scale, spread, from, sum }: Asked,
  rule: DegreeDayRule,
  figures: DegreeDayFigures,
  plants: Sums['plants'],
): Result<Sums, AskedReason> {
  const held = figures.normals && inScale(figures.normals, scale);
  const width = spread ?? held?.spread ?? 0;
  const wrong = checkRule(rule, width);
  if (wrong) return wrong;
  if (!held) return ok({ of: 'normals', rule, spread: width, reached: 'no-figure', plants });
  const start = from ?? figures.from;
  const total = totalOf(seasonSums({ maxByMonth: held.maxima, minByMonth: held.minima }, rule, width, start));
  return ok({
    of: 'normals',
    rule,
    spread: width,
    total,
    reached: windowOf(held, [rule], width, start, { sum, scale, observed: [] }, figures),
    plants,
  });
}

/** A bloom row without a method may come from any method that needs no cap. Its window contains the dates of all of them. */
function bloomOf(plant: Plant, figures: DegreeDayFigures): Reached {
  if (!figures.normals) return 'no-figure';
  if (plant.method === 'modified' && plant.cap === undefined) return 'no-cap';
  const stated = degreeDayMethods.find((method) => method === plant.method);
  const methods = stated ? [stated] : degreeDayMethods.filter((method) => method !== 'modified');
  const held = inScale(figures.normals, plant.scale);
  return windowOf(held, methods.map((method) => ({ method, base: plant.base, ...(plant.cap === undefined ? {} : { cap: plant.cap }) })), held.spread, plant.from, plant, figures); // prettier-ignore
}

function windowOf(
  held: Normals,
  rules: readonly DegreeDayRule[],
  spread: number,
  from: MonthDay,
  { sum, scale, observed }: { sum: number | undefined; scale: Scale; observed: readonly number[] },
  { doubt }: DegreeDayFigures,
): Reached {
  if (sum === undefined) return 'no-sum';
  if (!doubt) return 'no-figure';
  const days = rules.flatMap((rule) => {
    const reached = dateReached(seasonSums({ maxByMonth: held.maxima, minByMonth: held.minima }, rule, spread, from), sum, 0);
    return reached.ok ? [(dayOfCommonYear(reached.value.expected) - dayOfCommonYear(from) + 365) % 365] : [];
  });
  if (days.length === 0) return 'not-reached';
  const off = Math.ceil(doubtInDays(sum, observed, { fewestYears: 5, ...doubt, smallSumsUnder: scale === 'F' ? 100 : 50 }));
  return { earliest: addMonthDays(from, Math.min(...days) - off), latest: addMonthDays(from, Math.max(...days) + off) };
}

function inScale(normals: Normals, scale: Scale): Normals {
  if (normals.scale === scale) return normals;
  const [turn, turnSpread] =
    scale === 'F' ? [celsiusToFahrenheit, celsiusDifferenceToFahrenheit] : [fahrenheitToCelsius, fahrenheitDifferenceToCelsius];
  return { ...normals, scale, maxima: normals.maxima.map(turn), minima: normals.minima.map(turn), spread: turnSpread(normals.spread) };
}
