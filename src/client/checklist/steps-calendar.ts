/* Calendar file (iCalendar) of the remaining dated steps as all-day events, which end on the day after the last. Loaded on a press. */
import ical from 'ical-generator';
import { addDays, type Day } from '../../../shared/days/day.ts';

export type DatedStep = { readonly id: string; readonly title: string; readonly from: Day; readonly to: Day };
export type StepsCalendar = {
  readonly club: string;
  readonly list: string;
  readonly run: string;
  readonly steps: readonly DatedStep[];
  readonly stamp: Day;
};

/** A step keeps its UID in its run, so that a second download corrects the first. */
export function stepsCalendar({ club, list, run, steps, stamp }: StepsCalendar): string {
  const calendar = ical({ name: run || list, prodId: { company: club, product: 'almanac', language: 'EN' } });
  for (const { id, title, from, to } of steps) {
    calendar.createEvent({
      id: `${list}-${run}-${id}@${club}`.replace(/\s+/g, '-'),
      stamp: midnight(stamp),
      start: midnight(from),
      end: midnight(addDays(to, 1)),
      allDay: true,
      summary: run ? `${title} (${run})` : title,
    });
  }
  return calendar.toString();
}

/** The iCalendar writer reads whole days in UTC. */
const midnight = (day: Day): Date => new Date(`${day}T00:00:00Z`);
