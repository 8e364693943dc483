/**
 * The action level of a club that applies to a mite count. Each level covers the parts of the year that its row names. The strictest
 * level counts where several cover the part of the year, or where no part is chosen yet. A part of the year without a row has no level
 * and no verdict.
 */
import type { Phase } from '../season/phases.ts';

export { phases, type Phase } from '../season/phases.ts';

export type ActionLevel = { readonly levelPer100: number; readonly phases: readonly Phase[] };

export function levelFor<Level extends ActionLevel>(levels: readonly Level[], phase?: Phase): Level | undefined {
  const covering = phase === undefined ? levels : levels.filter((level) => level.phases.includes(phase));
  return covering.reduce<Level | undefined>(
    (strictest, level) => (strictest && strictest.levelPer100 <= level.levelPer100 ? strictest : level),
    undefined,
  );
}
