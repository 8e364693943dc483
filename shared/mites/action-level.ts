/**
 * Which of a club's action levels a count is judged by. A level covers the parts of the year its row names; where several cover the
 * part asked for, or none is asked for yet, the strictest counts. A part of the year that no row covers has no level, and no verdict.
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
