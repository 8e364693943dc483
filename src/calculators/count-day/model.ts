/*
 * The counts of one evening together: the spread over the colonies, the rate of all, and who is at or over the level that the club
 * follows. Arithmetic: shared/mites and shared/numbers. For the form and the worked example.
 */
import { apiaryRate, type ApiaryRate } from '../../../shared/mites/apiary-rate.ts';
import { levelFor, type Phase } from '../../../shared/mites/action-level.ts';
import { checkSample, ratePer100, type MiteSample, type SampleReason } from '../../../shared/mites/rate.ts';
import { formatAgainst, formatNumber } from '../../../shared/numbers/show-number.ts';
import { spreadOf, type Five } from '../../../shared/numbers/spread-of.ts';
import { err, ok, type Result } from '../../../shared/result.ts';
import type { Day } from '../../../shared/days/day.ts';

export const methods = ['wash', 'roll', 'gas'] as const;
export type Method = (typeof methods)[number];

export type Level = { readonly levelPer100: number; readonly phases: readonly Phase[]; readonly words: string };
export type CountDayFigures = { readonly levels: readonly Level[] };

export type Evening = {
  readonly counts: readonly MiteSample[];
  readonly date: Day;
  readonly district: string;
  readonly method: Method;
  readonly phase: Phase | undefined;
};

/** A sample has no share of found mites here. */
export type CountReason = Exclude<SampleReason, 'impossible-recovery'>;

export type Together = {
  readonly colonies: readonly { readonly label: string; readonly per100: number; readonly isOver: boolean }[];
  readonly spread: Five;
  readonly all: ApiaryRate;
  /** Undefined where the club follows none in this part of the year. */
  readonly level: Level | undefined;
  readonly over: number;
};

/** Unit: mites per 100 bees. An error has the row of the count, from 1. */
export function putTogether({ counts, phase }: Evening, { levels }: CountDayFigures): Result<Together, CountReason> {
  for (const [index, count] of counts.entries()) {
    const refused = checkSample(count);
    if (refused) return err(refused.reason as CountReason, { row: index + 1 });
  }
  const level = levelFor(levels, phase);
  const colonies = counts.map(({ label, mites, bees }, index) => {
    const per100 = ratePer100(mites, bees);
    return { label: label || String(index + 1), per100, isOver: level !== undefined && per100 >= level.levelPer100 };
  });
  return ok({
    colonies,
    spread: spreadOf(colonies.map(({ per100 }) => per100)),
    all: apiaryRate(counts),
    level,
    over: colonies.filter(({ isOver }) => isOver).length,
  });
}

/** A rate as it is shown, never rounded across the level. */
export const rateWords = (rate: number, { level }: Pick<Together, 'level'>): string =>
  level ? formatAgainst(rate, level.levelPer100, 1) : formatNumber(rate, { places: 1 });

/** Lowest, middle, highest. */
export const spreadWords = (together: Together): string =>
  [together.spread.lowest, together.spread.middle, together.spread.highest].map((rate) => rateWords(rate, together)).join(', ');

/** The file that `counts/` takes: no names and no places, as its columns want. */
export const countsFile = ({ counts, date, district, method }: Evening): string =>
  ['date,district,mites,bees,method', ...counts.map(({ mites, bees }) => [date, district, mites, bees, method].join(','))]
    .map((line) => `${line}\n`)
    .join('');
