/* Sampling plan with the club's own figures, for the form, the worked example and the table. */
import { missedChance, samplingPlan, type SamplingReason } from '../../../shared/mites/sampling-plan.ts';
import { ok, err, type Result } from '../../../shared/result.ts';

export type Asked = { readonly share: number; readonly certainty: number; readonly colonies: number | undefined };

export type SamplingFigures = {
  readonly coloniesLeast: number | null;
  readonly coloniesMost: number | null;
  /** Bees in the usual sample. */
  readonly usualBees: number;
  /** The largest sample that a colony should give. */
  readonly mostBees: number;
};

export type Plan = {
  readonly beesNeeded: number;
  readonly missedPercent: number;
  /** Undefined where the size of the apiary is unknown, or the club has no figure. */
  readonly coloniesLeast: number | undefined;
  readonly coloniesMost: number | undefined;
  /** How often samples of other sizes miss. */
  readonly others: readonly { readonly bees: number; readonly missedPercent: number }[];
};

/** Below this share even all the bees of a colony would not show it. */
export const rarestPercent = 0.01;

export function planSampling({ share, certainty, colonies }: Asked, figures: SamplingFigures): Result<Plan, SamplingReason | 'too-rare'> {
  if (share > 0 && share < rarestPercent) return err('too-rare');
  const { coloniesLeast: least, coloniesMost: most } = figures;
  const planned = samplingPlan(
    { sharePercent: share, certaintyPercent: certainty, ...(colonies === undefined ? {} : { colonies }) },
    { coloniesLeast: least ?? 0, coloniesMost: most ?? 0 },
  );
  if (!planned.ok) return planned;
  const { beesNeeded, missedChancePercent, coloniesLeast, coloniesMost } = planned.value;
  return ok({
    beesNeeded,
    missedPercent: missedChancePercent,
    coloniesLeast: least === null ? undefined : coloniesLeast,
    coloniesMost: most === null ? undefined : coloniesMost,
    others: [...new Set([0.25, 0.5, 0.75, 1, 1.5].map((part) => Math.max(1, Math.round(beesNeeded * part))))].map((bees) => ({
      bees,
      missedPercent: missedChance(share, bees),
    })),
  });
}
