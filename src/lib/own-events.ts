/* Words for the reader's own day, from which the steps of a checklist are counted. */
import type { ownEvents } from '../../shared/season/phases.ts';

export type OwnEvent = (typeof ownEvents)[number];

/** `asks` is the label of the date box, `since` the words before the day: "installed April 18". */
export const OWN_EVENTS: Readonly<Record<OwnEvent, { asks: string; since: string }>> = {
  installing: { asks: 'The day you installed them', since: 'installed' },
  caging: { asks: 'The day you caged the queen', since: 'queen caged' },
  treating: { asks: 'The day the treatment began', since: 'treated from' },
  hiving: { asks: 'The day you hived them', since: 'hived' },
  splitting: { asks: 'The day of the split or the swarm', since: 'split' },
  requeening: { asks: 'The day the new queen went in, in her cage', since: 'new queen in' },
};
