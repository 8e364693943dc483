/**
 * Phases of a hive's year from its anchors. Each phase begins some days from an anchor and ends the day before the next, so that they
 * cover the year once. A club without anchors writes the phases as days, which are its own dated guess. The same rules, reversed, then
 * give the anchors. Unit: days of a common year.
 */
import { addMonthDays, dayOfCommonYear, type MonthDay } from '../days/month-day.ts';
import { ok, err, type Result } from '../result.ts';
import { anchorRules, type AnchorId, type Anchors } from './anchors.ts';
import { spanAround, type DaysSeen } from './observed-days.ts';
import { phases, type Phase } from './phases.ts';
import type { SeasonDays, Window } from './when.ts';

/** Queen cells are begun about ten days before a first swarm leaves. Dearth begins the day after the flow. */
export const phaseStarts: { readonly [phase in Phase]: { readonly anchor: AnchorId; readonly offsetDays: number } } = {
  'winter-rest': { anchor: 'cluster', offsetDays: 0 },
  'build-up': { anchor: 'first-pollen', offsetDays: 0 },
  swarming: { anchor: 'swarm', offsetDays: -10 },
  'main-flow': { anchor: 'main-flow-start', offsetDays: 0 },
  dearth: { anchor: 'main-flow-end', offsetDays: 1 },
  'fall-preparation': { anchor: 'fall-flow', offsetDays: 0 },
};

/** The anchors that follow from the written phases of a year. Their possible error is unknown. */
export function guessesFrom(starts: { readonly [phase in Phase]: MonthDay }): { [id in AnchorId]?: DaysSeen } {
  return Object.fromEntries(
    phases.map((phase) => [phaseStarts[phase].anchor, spanAround(addMonthDays(starts[phase], -phaseStarts[phase].offsetDays), 0)]),
  );
}

/** `text` names the phase that has no date, or that begins where the phase before it has not begun. */
export function seasonFrom(anchors: Anchors): Result<SeasonDays, 'no-date' | 'out-of-order'> {
  const missing = phases.find((phase) => !anchors[phaseStarts[phase].anchor]);
  if (missing) return err('no-date', { text: missing });
  const starts = phases.map((phase) => addMonthDays(anchors[phaseStarts[phase].anchor]!.expected, phaseStarts[phase].offsetDays));
  const lengths = starts.map(
    (start, index) => (dayOfCommonYear(starts[(index + 1) % phases.length]!) - dayOfCommonYear(start) + 365) % 365,
  );
  const wrong = lengths.reduce((sum, length) => sum + length, 0) === 365 ? lengths.indexOf(0) : lengths.indexOf(Math.max(...lengths));
  if (wrong >= 0) return err('out-of-order', { text: phases[(wrong + 1) % phases.length] ?? '' });
  return ok(daysOf(starts, anchors));
}

function daysOf(starts: readonly MonthDay[], anchors: Anchors): SeasonDays {
  const window = (index: number): Window => ({
    from: starts[index]!,
    to: addMonthDays(starts[(index + 1) % phases.length]!, -1),
  });
  const days = anchorRules.flatMap(({ id }) => (anchors[id] ? [[id, anchors[id].expected] as const] : []));
  return {
    phases: Object.fromEntries(phases.map((phase, index) => [phase, window(index)])) as Record<Phase, Window>,
    anchors: Object.fromEntries([...phases.map((phase, index) => [phase, starts[index]!] as const), ...days]),
  };
}
