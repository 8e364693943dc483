/**
 * A complete mite count: rate, limits and verdict of each colony and of the apiary, and one overall verdict. The overall verdict is the
 * worst of them, so that an average hides no colony. Unrounded values are compared with the level. Without a level there are rates and no
 * verdict. Units: mites per 100 bees, bees, weeks. Rules: rate.ts, verdict.ts, apiary-rate.ts, bees-to-settle.ts, weeks-to-level.ts.
 */
import { ok, err, type Result } from '../result.ts';
import { apiaryRate, type ApiaryRate } from './apiary-rate.ts';
import { beesToSettle } from './bees-to-settle.ts';
import { miteRate, type MiteRate, type MiteSample, type SampleReason } from './rate.ts';
import { isOnlyCorrected, verdictOf, worstVerdict, type Verdict } from './verdict.ts';
import { weeksToLevel, type Growth, type WeeksToLevel } from './weeks-to-level.ts';

export type MiteCountInput = {
  readonly samples: readonly MiteSample[];
  /** Absent where the club has no level for this part of the year. */
  readonly levelPer100?: number;
  /** At this rate the colony needs action at once. Absent where the club has no such level for this part of the year. */
  readonly atOncePer100?: number;
  readonly recoveryPercent?: number;
  readonly hasBrood: boolean;
  readonly growth: Growth;
  /** The largest sample that may be taken from one colony. */
  readonly mostBees: number;
};

type Judgement = {
  readonly verdict?: Verdict;
  /** True where only the correction for missed mites leads to the verdict. */
  readonly onlyCorrected: boolean;
};

export type ColonyResult = MiteSample &
  MiteRate &
  Judgement & {
    /** True where the count is at or over the level for action at once. */
    readonly atOnce: boolean;
    /** Only where this colony's own count is unsure. 'too-many' where it would take more bees than a colony should give. */
    readonly beesToSettle?: number | 'too-many';
  };

export type MiteCount = {
  readonly colonies: readonly ColonyResult[];
  /** Present from two colonies upward. */
  readonly apiary?: ApiaryRate & Judgement;
  readonly verdict?: Verdict;
  readonly coloniesToAct: readonly string[];
  /** The colonies among them that need action at once. */
  readonly coloniesAtOnce: readonly string[];
  /** Only where the verdict is unsure: the colony that needs the largest sample. */
  readonly toSettle?: { readonly label: string; readonly bees: number | 'too-many' };
  readonly weeks: WeeksToLevel;
};

export function judgeMiteCount(input: MiteCountInput): Result<MiteCount, SampleReason | 'no-samples'> {
  if (input.samples.length === 0) return err('no-samples');
  const colonies: ColonyResult[] = [];
  for (const [index, sample] of input.samples.entries()) {
    const rate = miteRate(sample, input.recoveryPercent);
    if (!rate.ok) return err(rate.reason, rate.reason === 'impossible-recovery' ? {} : { row: index + 1, text: sample.label });
    colonies.push(judgeColony(sample, rate.value, input));
  }
  return ok(sumUp(colonies, judgeApiary(input), input));
}

function judgeColony(sample: MiteSample, rate: MiteRate, input: MiteCountInput): ColonyResult {
  const result = {
    ...sample,
    ...rate,
    ...judge(rate, input.levelPer100),
    atOnce: input.atOncePer100 !== undefined && rate.per100 >= input.atOncePer100,
  };
  if (result.verdict !== 'unsure' || result.onlyCorrected || input.levelPer100 === undefined) return result;
  return { ...result, beesToSettle: beesToSettle(sample, input.levelPer100, input.mostBees) ?? 'too-many' };
}

function judgeApiary({ samples, recoveryPercent, levelPer100 }: MiteCountInput): (ApiaryRate & Judgement) | undefined {
  if (samples.length < 2) return undefined;
  const rate = apiaryRate(samples, recoveryPercent);
  return { ...rate, ...judge(rate, levelPer100) };
}

function judge(rate: MiteRate | ApiaryRate, levelPer100: number | undefined): Judgement {
  if (levelPer100 === undefined) return { onlyCorrected: false };
  return { verdict: verdictOf(rate, levelPer100), onlyCorrected: isOnlyCorrected(rate, levelPer100) };
}

function sumUp(colonies: ColonyResult[], apiary: MiteCount['apiary'], input: MiteCountInput): MiteCount {
  const verdicts = [...colonies, ...(apiary ? [apiary] : [])].flatMap(({ verdict }) => verdict ?? []);
  const verdict = verdicts.length > 0 ? worstVerdict(verdicts) : undefined;
  const toSettle = verdict === 'unsure' ? neediest(colonies) : undefined;
  return {
    colonies,
    ...(apiary ? { apiary } : {}),
    ...(verdict ? { verdict } : {}),
    coloniesToAct: colonies.filter((colony) => colony.verdict === 'act').map((colony) => colony.label),
    coloniesAtOnce: colonies.filter((colony) => colony.atOnce).map((colony) => colony.label),
    ...(toSettle ? { toSettle } : {}),
    weeks: weeksToLevel(highest(colonies), input.levelPer100, input.growth, input.hasBrood),
  };
}

function neediest(colonies: readonly ColonyResult[]): MiteCount['toSettle'] {
  const size = (bees: number | 'too-many') => (bees === 'too-many' ? Infinity : bees);
  return colonies
    .flatMap(({ label, beesToSettle: bees }) => (bees === undefined ? [] : { label, bees }))
    .reduce<MiteCount['toSettle']>((most, one) => (most && size(most.bees) >= size(one.bees) ? most : one), undefined);
}

function highest(colonies: readonly ColonyResult[]): { per100: number; highPer100: number } {
  return {
    per100: Math.max(...colonies.map((colony) => colony.per100)),
    highPer100: Math.max(...colonies.map((colony) => colony.highPer100)),
  };
}
