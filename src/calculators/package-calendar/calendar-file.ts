/*
 * Calendar file (iCalendar) of a package's dates as all-day events, which end on the day after the last. An event keeps its UID while the
 * package has the same install day, so that a second download corrects the first. The file loads at the press of the button, because the
 * iCalendar writer is larger than the page's own script.
 */
import ical, { ICalAlarmType } from 'ical-generator';
import { tongueOf, type Language } from '../../../shared/country/language.ts';
import { addDays, type Day } from '../../../shared/days/day.ts';
import { sinceEveningBefore } from '../../../shared/days/evening-before.ts';
import { formatDay, withPlainSpaces } from '../../../shared/days/show-day.ts';
import type { DayPair } from '../../../shared/packages/calendar.ts';
import { calendarName, eventName } from './text.en.ts';

export type Dated = { readonly name: string; readonly what: string; readonly why: string; readonly days: DayPair };
export type About = {
  readonly installed: Day;
  readonly language: Language;
  readonly club: string;
  readonly edition: Day;
  readonly address: string;
};

export function writeCalendar(dated: readonly Dated[], { installed, language, club, edition, address }: About): string {
  const installedWords = withPlainSpaces(formatDay(installed, language));
  const calendar = ical({
    name: calendarName(installedWords),
    prodId: { company: club, product: 'almanac', language: tongueOf(language).toUpperCase() },
  });
  for (const { name, what, why, days } of dated) {
    const summary = eventName(what, installedWords);
    calendar.createEvent({
      id: `package-${installed}-${name}@${club}`,
      stamp: midnight(edition),
      start: midnight(days.earliest),
      end: midnight(addDays(days.latest, 1)),
      allDay: true,
      summary,
      description: `${why}\n${address}`,
      url: address,
      alarms: [{ type: ICalAlarmType.display, trigger: sinceEveningBefore(), description: summary }],
    });
  }
  return calendar.toString();
}

/** The iCalendar writer reads whole days in UTC. */
function midnight(day: Day): Date {
  return new Date(`${day}T00:00:00Z`);
}
