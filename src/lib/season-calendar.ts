/*
 * Season calendar season-DISTRICT.ics: the tasks of one district, to subscribe to (RFC 5545). Each task is one all-day event, which ends
 * on the day after its last, in the twelve months from the edition's day. Its UID contains the list, the district and the year in which
 * it begins, so that next year's is another event. The events mark nobody as busy, and each reminds once, on the evening before.
 */
import * as text from './feeds.en.ts';
import ical, { ICalAlarmType, ICalCalendarMethod, ICalEventTransparency } from 'ical-generator';
import { languageHere } from '../../shared/country/language-here.ts';
import { tongueOf } from '../../shared/country/language.ts';
import { addDays, type Day } from '../../shared/days/day.ts';
import { sinceEveningBefore } from '../../shared/days/evening-before.ts';
import { nextOccurrence } from '../../shared/days/occurrence.ts';
import type { CalendarClub } from './club-calendar.ts';
import type { SeasonTasks } from './season-tasks.ts';
import { WallClock } from './wall-clock.ts';

const ASK_AGAIN_AFTER = 24 * 60 * 60;

/** `root` is the address of the first page, where the site has one. */
export function seasonCalendar(club: CalendarClub, { district, name, tasks }: SeasonTasks, editionDay: Day, root: string | null): string {
  const calendar = ical({
    name: text.seasonTitle(club.name, name),
    prodId: { company: club.id, product: 'almanac', language: tongueOf(languageHere()).toUpperCase() },
    method: ICalCalendarMethod.PUBLISH,
    ttl: ASK_AGAIN_AFTER,
  });
  for (const task of tasks) {
    const { first, last } = nextOccurrence(task.from, task.to, editionDay);
    const url = root && new URL(`lists/${task.list}/`, root).href;
    calendar.createEvent({
      id: `${task.list}.${district}.${first.slice(0, 4)}@${club.id}`,
      sequence: task.changes,
      stamp: new WallClock(editionDay, '00:00'),
      start: new WallClock(first, '00:00'),
      end: new WallClock(addDays(last, 1), '00:00'),
      allDay: true,
      transparency: ICalEventTransparency.TRANSPARENT,
      summary: task.title,
      description: [sentence(task.why), task.basis && sentence(text.daysFrom(name, task.basis)), url].filter(Boolean).join('\n'),
      alarms: [{ type: ICalAlarmType.display, trigger: sinceEveningBefore(), description: task.title }],
      ...(url ? { url } : {}),
    });
  }
  return `${calendar.toString().replace(/(\r\n)*$/, '')}\r\n`;
}

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1).replace(/\.?$/, '.');
