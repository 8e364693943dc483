/* Calendar file (iCalendar, RFC 5545) of a hive's remaining steps as all-day events, which end on the day after the last. Loaded on a press. */
import ical, { ICalAlarmType } from 'ical-generator';
import { languageHere } from '../../../shared/country/language-here.ts';
import { tongueOf } from '../../../shared/country/language.ts';
import { addDays, type Day } from '../../../shared/days/day.ts';
import { sinceEveningBefore } from '../../../shared/days/evening-before.ts';

export type DatedStep = {
  readonly id: string;
  readonly words: string;
  readonly why: string;
  /** Its address. */
  readonly url: string;
  readonly from: Day;
  readonly to: Day;
};
export type StepsCalendar = {
  readonly club: string;
  readonly list: string;
  readonly title: string;
  /** What the UIDs name the hive. It stays the same in each file. */
  readonly run: string;
  readonly hive: string;
  readonly steps: readonly DatedStep[];
  readonly stamp: Day;
};

/** A step keeps its UID in its hive, so that a second download corrects the first. Each reminds once, at six on the evening before. */
export function stepsCalendar({ club, list, title, run, hive, steps, stamp }: StepsCalendar): string {
  const calendar = ical({
    name: `${title}, ${hive}`,
    prodId: { company: club, product: 'almanac', language: tongueOf(languageHere()).toUpperCase() },
  });
  for (const { id, words, why, url, from, to } of steps) {
    const summary = `${words} (${hive})`;
    calendar.createEvent({
      id: `${list}-${run}-${id}@${club}`.replace(/\s+/g, '-'),
      stamp: midnight(stamp),
      start: midnight(from),
      end: midnight(addDays(to, 1)),
      allDay: true,
      summary,
      description: [why, url].filter(Boolean).join('\n'),
      url,
      alarms: [{ type: ICalAlarmType.display, trigger: sinceEveningBefore(), description: summary }],
    });
  }
  return calendar.toString();
}

/** The iCalendar writer reads whole days in UTC. */
const midnight = (day: Day): Date => new Date(`${day}T00:00:00Z`);
