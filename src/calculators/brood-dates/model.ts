/* What was seen in a hive on one day, and the stages whose dates follow from it. */
import type { BroodDates, Seen } from '../../../shared/brood/dates.ts';
import type { Caste } from '../../../shared/brood/development.ts';
import type { Day } from '../../../shared/days/day.ts';

export type Look = { readonly caste: Caste; readonly seen: Seen; readonly date: Day };

export const castes: readonly Caste[] = ['worker', 'queen', 'drone'];
export const sights: readonly Seen[] = ['egg', 'open', 'sealed', 'emerging', 'caged'];

/** In the order of development. Only a queen has the last two. */
export const stages = ['laid', 'sealed', 'emerges', 'mates', 'lays'] as const;
export type Stage = (typeof stages)[number];
export type Event = Stage | 'broodless-worker' | 'broodless-drone';

/** The next event that is to come. Where all of them are past, undefined. */
export function nextEvent(dates: BroodDates, today: Day): { what: Event; on: Day } | undefined {
  const events: { what: Event; on: Day | undefined }[] = [
    ...stages.map((what) => ({ what, on: dates[what]?.earliest })),
    { what: 'broodless-worker', on: dates.broodlessWorker },
    { what: 'broodless-drone', on: dates.broodlessDrone },
  ];
  return events
    .flatMap(({ what, on }) => (on !== undefined && on >= today ? [{ what, on }] : []))
    .sort((a, b) => (a.on < b.on ? -1 : 1))[0];
}
