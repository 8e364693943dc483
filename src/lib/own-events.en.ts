/* Words for the reader's own day, from which the steps of a checklist are counted. */
import type { ownEvents } from '../../shared/season/phases.ts';

export type OwnEvent = (typeof ownEvents)[number];

/** `asks` is the label of the date box. `since` says the day back, "installed April 18", with `{day}` for the day. */
export const OWN_EVENTS: Readonly<Record<OwnEvent, { asks: string; since: string }>> = {
  installing: { asks: 'The day you installed them', since: 'installed {day}' },
  caging: { asks: 'The day you caged the queen', since: 'queen caged {day}' },
  treating: { asks: 'The day the treatment began', since: 'treated from {day}' },
  hiving: { asks: 'The day you hived them', since: 'hived {day}' },
  splitting: { asks: 'The day of the split or the swarm', since: 'split {day}' },
  requeening: { asks: 'The day the new queen went in, in her cage', since: 'new queen in {day}' },
};

/** "day 3 to day 5 after installing" */
export const ownDays = (from: number, to: number, event: string): string =>
  from === to ? `day ${from} after ${event}` : `day ${from} to day ${to} after ${event}`;
