/*
 * Mite count with the club's own figures, for the form, the worked example and the table. A colony without a name is named by its place
 * in the list.
 */
import type { Result } from '../../../shared/result.ts';
import { levelFor, type Phase } from '../../../shared/mites/action-level.ts';
import { judgeMiteCount, type MiteCount } from '../../../shared/mites/mite-count.ts';
import type { MiteSample, SampleReason } from '../../../shared/mites/rate.ts';
import type { Verdict } from '../../../shared/mites/verdict.ts';
import type { Growth } from '../../../shared/mites/weeks-to-level.ts';
import { formatAgainst, formatNumber } from '../../../shared/numbers/show-number.ts';

export type Method = 'wash' | 'roll' | 'gas';
export const methods: readonly Method[] = ['wash', 'roll', 'gas'];

export type Level = {
  readonly levelPer100: number;
  readonly phases: readonly Phase[];
  /** Who set the level, where, when, and with what method. */
  readonly words: string;
  /** Undefined where the source does not say, or used another counting method. */
  readonly method: Method | undefined;
};

export type MiteFigures = {
  readonly levels: readonly Level[];
  /** Levels that call for action at once. */
  readonly atOnceLevels: readonly Level[];
  readonly growth: Growth | null;
  /** The largest sample that may be taken. */
  readonly mostBees: number;
  /** Fewer colonies than this show an apiary poorly. */
  readonly fewestColonies: number | null;
};

export type Counted = {
  readonly samples: readonly MiteSample[];
  readonly method: Method;
  readonly phase: Phase | undefined;
  readonly recovery: number;
};
export type Judgement = { readonly count: MiteCount; readonly level: Level | undefined; readonly atOnce: Level | undefined };

export function judgeCount(
  { samples, phase, recovery }: Counted,
  { levels, atOnceLevels, growth, mostBees }: MiteFigures,
): Result<Judgement, SampleReason | 'no-samples'> {
  const level = levelFor(levels, phase);
  const atOnce = level && levelFor(atOnceLevels, phase);
  const count = judgeMiteCount({
    samples: samples.map((sample, row) => ({ ...sample, label: sample.label || String(row + 1) })),
    ...(level ? { levelPer100: level.levelPer100 } : {}),
    ...(atOnce ? { atOncePer100: atOnce.levelPer100 } : {}),
    recoveryPercent: recovery,
    hasBrood: phase !== 'winter-rest',
    // Without a figure no number of weeks is shown.
    growth: growth ?? { slowestPerDay: 1, fastestPerDay: 1 },
    mostBees,
  });
  return count.ok ? { ok: true, value: { count: count.value, level, atOnce } } : count;
}

/** The level of gravity of each verdict. */
export const verdictSteps: Readonly<Record<Verdict, string>> = { below: 'settled', unsure: 'watch', act: 'act' };

/** The levels that a rate is compared with. Rounding never carries it across one of them. */
export type Lines = Pick<Judgement, 'level' | 'atOnce'>;

export function rateWords(per100: number, { level, atOnce }: Lines): string {
  if (!level) return formatNumber(per100, { places: 1 });
  const nearer = atOnce && Math.abs(per100 - atOnce.levelPer100) < Math.abs(per100 - level.levelPer100) ? atOnce : level;
  return formatAgainst(per100, nearer.levelPer100, 1);
}

/** True where only the correction for missed mites makes the verdict unsure. */
export const onlyCorrected = ({ colonies, apiary }: MiteCount): boolean =>
  [...colonies, ...(apiary ? [apiary] : [])].every((one) => one.verdict !== 'unsure' || one.onlyCorrected);
