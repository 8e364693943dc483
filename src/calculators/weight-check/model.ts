/* Weights compared with one of three rules of law, for the form, the worked example and the table. */
import type { Result } from '../../../shared/result.ts';
import { checkWeights, type WeightCheck, type WeightReason } from '../../../shared/packages/weight-check.ts';
import type { Tolerance, WeightRule } from '../../../shared/packages/weight-rule.ts';
import type { System } from '../form/measures.ts';

export const ruleNames = ['eu', 'ca', 'us'] as const;
export type RuleName = (typeof ruleNames)[number];

export type HeldRule = {
  readonly rule: Omit<WeightRule, 'tolerances'> & { readonly tolerances: readonly (Tolerance & { readonly fromMemory?: boolean })[] };
  /** The law, with year and place. */
  readonly from: string;
  readonly sampleFromMemory: boolean;
};

export type WeightFigures = { readonly units: System; readonly rules: Readonly<Record<RuleName, HeldRule | null>> };

export type Weighed = {
  readonly rule: RuleName;
  readonly 'label-g': number;
  readonly lot: number;
  readonly 'weights-g': readonly number[];
};

export type Judgement = {
  readonly check: WeightCheck;
  /** Null where the club has no such rule. Mean and spread alone are then still useful. */
  readonly held: HeldRule | null;
  readonly toleranceFromMemory: boolean;
};

/** For the arithmetic alone. */
const noRule: WeightRule = { lots: [{ from: 1, to: Number.MAX_SAFE_INTEGER, weigh: 1, mean: 'plain' }], tolerances: [], certainty: 0.5 };

export function judgeWeights(weighed: Weighed, { rules }: WeightFigures): Result<Judgement, WeightReason> {
  const held = rules[weighed.rule];
  const labelG = weighed['label-g'];
  const check = checkWeights({ labelG, lot: weighed.lot, weightsG: weighed['weights-g'] }, held?.rule ?? noRule);
  if (!check.ok) return check;
  const row = held?.rule.tolerances.find(({ fromG, belowG }) => fromG <= labelG && labelG < belowG);
  return { ok: true, value: { check: check.value, held, toleranceFromMemory: row?.fromMemory === true } };
}

/** Places in the list, from 1, of weights so far from the label that they may belong to another column. */
export function farOff({ 'label-g': labelG, 'weights-g': weights }: Weighed): readonly number[] {
  return weights.flatMap((weight, at) => (weight < labelG / 2 || weight > labelG * 2 ? [at + 1] : []));
}
