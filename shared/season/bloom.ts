/**
 * Bloom dates of a plant at a place. They come from enough years of members' notes, or from the day on which a normal year reaches the
 * plant's sum of degree-days. A sum counts only with its own method, base and first day; a list that states no method gives no date.
 * Lists also differ in the stage of bloom: the date is that of the stage named with the sum.
 */
import { addMonthDays, type MonthDay } from '../days/month-day.ts';
import { ok, err, type Result } from '../result.ts';
import { inCelsius, type Climate, type Sum } from './climate.ts';
import { daysSeen, fewestYears, type DaysSeen } from './observed-days.ts';
import { dateReached, doubtInDays, seasonSums } from './season-sum.ts';

/** Days by which a date from normals may be off. Small sums are reached while warm days are still rare. */
export type UsualDoubt = { readonly days: number; readonly daysForSmallSums: number };

export type Plant = {
  readonly id: string;
  readonly sum: Sum | 'no-method' | null;
  /** For each year, the first day in bloom in members' notes, and the last where they wrote it down. */
  readonly seen: readonly { readonly first: MonthDay; readonly lastedDays: number | null }[];
};

export type Bloom = DaysSeen & {
  readonly from: 'observed' | 'degree-days';
  readonly years: number;
  /** The median of members' notes, or null where nobody wrote it down. */
  readonly lastsDays: number | null;
};

export type NoBloom = 'no-sum' | 'no-method' | 'no-normals' | 'no-spread' | 'no-doubt' | 'not-reached';

export function bloomOf(plant: Plant, climate: Climate | null, usual: UsualDoubt | null): Result<Bloom, NoBloom> {
  const lastsDays = middleOf(plant.seen.flatMap(({ lastedDays }) => lastedDays ?? []));
  const seen = daysSeen(
    plant.seen.map(({ first }) => first),
    usual?.days ?? 0,
  );
  if (seen) return ok({ ...seen, from: 'observed', years: plant.seen.length, lastsDays });
  const reached = daysReached(plant.sum, climate, usual);
  return reached.ok ? ok({ ...reached.value, from: 'degree-days', years: 0, lastsDays }) : reached;
}

function daysReached(sum: Plant['sum'], climate: Climate | null, usual: UsualDoubt | null): Result<DaysSeen, NoBloom> {
  if (sum === null) return err('no-sum');
  if (sum === 'no-method') return err('no-method');
  if (!climate) return err('no-normals');
  if (!climate.spread) return err('no-spread');
  if (!usual) return err('no-doubt');
  const inC = inCelsius(sum);
  const reached = dateReached(seasonSums(climate.normalsC, inC.rule, climate.spread.degreesC, inC.from), inC.sum, doubtOf(sum, usual));
  if (!reached.ok) return err(reached.reason);
  const { expected, earliest, latest } = reached.value;
  return ok({ middle: expected, earliest, latest });
}

const doubtOf = ({ sum, scale }: Sum, usual: UsualDoubt): number =>
  doubtInDays(sum, [], { ...usual, fewestYears: 5, smallSumsUnder: scale === 'F' ? 100 : 50 });

function middleOf(lengths: readonly number[]): number | null {
  if (lengths.length < fewestYears) return null;
  const sorted = [...lengths].sort((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)] ?? null;
}

/** From the first to the last flower where both are known. Otherwise the days within which the first flower is expected. */
export function inBloom(bloom: Bloom): { from: MonthDay; to: MonthDay } {
  return bloom.lastsDays === null
    ? { from: bloom.earliest, to: bloom.latest }
    : { from: bloom.middle, to: addMonthDays(bloom.middle, bloom.lastsDays) };
}
