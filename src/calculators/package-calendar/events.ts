/* Rows of the table of dates of the package calendar, each with the number of its source. */
import type { DayPair } from '../../../shared/packages/calendar.ts';
import type { Plan } from './model.ts';
import { events, type EventName } from './text.en.ts';

type Marks = Record<'cage' | 'look' | 'seal' | 'worker' | 'survival' | 'mites', number | undefined>;
export type PackageEvent = { name: EventName; what: string; why: string; note: number | undefined; days: Partial<DayPair> | undefined };

export function packageEvents(plan: Plan, { cage, look, seal, worker, survival, mites }: Marks): PackageEvent[] {
  const rows: [EventName, number | undefined, Partial<DayPair> | undefined][] = [
    ['queen-look', cage, plan.queenLook],
    ['egg-look', look, plan.eggLook],
    ['capped', seal, plan.capped],
    ['first-bees', worker, plan.firstBees],
    ['low-point', survival, plan.curve?.lowPoint],
    ['back-to-start', undefined, plan.curve?.backToStart],
    ['first-mite-count', mites, plan.firstMiteCount],
  ];
  return rows.map(([name, note, days]) => ({ name, ...events[name], note, days }));
}
