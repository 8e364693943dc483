/*
 * Club calendar club.ics: the club's meetings, to subscribe to (RFC 5545), and a file of each meeting alone. Times are local, with the
 * rules of the time zone in the file. All-day events end on the day after. In club.ics each event reminds once, at six on the evening
 * before. An event has the same UID in both files, and always keeps it. Its SEQUENCE is two for each dated
 * change in its entry, and one more where it is called off, so that it also rises when the meeting takes place after all.
 */
import * as text from './feeds.en.ts';
import { withPlainSpaces } from '../../shared/days/show-day.ts';
import { tongueOf } from '../../shared/country/language.ts';
import { languageHere, withClocks } from './country.ts';
import ical, { ICalAlarmType, ICalCalendarMethod, ICalEventStatus, type ICalCalendar } from 'ical-generator';
import { tzlib_get_ical_block } from 'timezones-ical-library';
import { addDays, type Day } from '../../shared/days/day.ts';
import { sinceEveningBefore } from '../../shared/days/evening-before.ts';
import type { Club } from '../schemas/club.ts';
import type { Meeting } from '../schemas/meetings.ts';
import type { Almanac } from './almanac.ts';
import { calledOffIn } from './meetings.ts';
import { WallClock } from './wall-clock.ts';

/** Seconds after which a calendar program should fetch the file again: a day. */
const ASK_AGAIN_AFTER = 24 * 60 * 60;

export type CalendarClub = Pick<Club, 'id' | 'name' | 'time-zone'>;
export type CalendarMeeting = Pick<
  Meeting,
  'title' | 'summary' | 'kind' | 'place' | 'address' | 'day' | 'last-day' | 'start' | 'finish' | 'bring'
> & {
  id: string;
  calledOffBy?: string | undefined;
  /** Why it does not take place. */
  calledOff?: string | undefined;
  /** How many dated changes its history holds. */
  changes: number;
};

/** The meetings as the calendar needs them. */
export const calendarMeetings = (meetings: Almanac['meetings']): CalendarMeeting[] =>
  meetings.map(({ id, data }) => ({
    ...data,
    id,
    calledOffBy: data['called-off-by'] && withPlainSpaces(withClocks(data['called-off-by'])),
    calledOff: calledOffIn(data)?.why,
    changes: data.history?.length ?? 0,
  }));

/** `root` is the address of the first page, where the site has one. */
export function clubCalendar(club: CalendarClub, meetings: readonly CalendarMeeting[], editionDay: Day, root: string | null): string {
  const calendar = emptyCalendar(club, { name: text.meetingsOf(club.name), ttl: ASK_AGAIN_AFTER });
  for (const meeting of meetings) addMeeting(calendar, meeting, { club, editionDay, root, reminds: true });
  return textOf(calendar);
}

/** A file to add by hand: it gives the calendar that takes it no name, and sets no alarm. */
export function meetingCalendar(club: CalendarClub, meeting: CalendarMeeting, editionDay: Day, root: string | null): string {
  const calendar = emptyCalendar(club);
  addMeeting(calendar, meeting, { club, editionDay, root, reminds: false });
  return textOf(calendar);
}

const emptyCalendar = (club: CalendarClub, named: { name?: string; ttl?: number } = {}): ICalCalendar =>
  ical({
    ...named,
    prodId: { company: club.id, product: 'almanac', language: tongueOf(languageHere()).toUpperCase() },
    method: ICalCalendarMethod.PUBLISH,
    timezone: { name: null, generator: zoneRules },
  });

const textOf = (calendar: ICalCalendar): string => `${calendar.toString().replace(/(\r\n)*$/, '')}\r\n`;

function addMeeting(
  calendar: ICalCalendar,
  meeting: CalendarMeeting,
  { club, editionDay, root, reminds }: { club: CalendarClub; editionDay: Day; root: string | null; reminds: boolean },
): void {
  const { start, end, allDay } = span(meeting);
  const off = meeting.calledOff !== undefined;
  const url = root && new URL(`meetings/${meeting.id}/`, root).href;
  calendar.createEvent({
    id: `${meeting.id}@${club.id}`,
    sequence: 2 * meeting.changes + Number(off),
    ...(off ? { status: ICalEventStatus.CANCELLED } : {}),
    stamp: new WallClock(editionDay, '00:00'),
    start,
    end,
    allDay,
    timezone: allDay ? null : club['time-zone'],
    // Some calendar programs show no status, so the title says it too.
    summary: off ? text.calledOff(meeting.title) : meeting.title,
    location: [meeting.place, meeting.address].filter(Boolean).join(', '),
    description: [
      off && text.calledOff(meeting.calledOff ?? ''),
      meeting.summary,
      !off && meeting.calledOffBy && text.calledOffBy(meeting.calledOffBy),
      meeting.bring && meeting.bring.length > 0 && text.bring(meeting.bring),
      url,
    ]
      .filter(Boolean)
      .join('\n'),
    categories: [{ name: meeting.kind }],
    alarms:
      reminds && !off
        ? [{ type: ICalAlarmType.display, trigger: sinceEveningBefore(allDay ? undefined : meeting.start), description: meeting.title }]
        : [],
    ...(url ? { url } : {}),
  });
}

/** All-day events where no hour is known, or where several days have no end time. */
function span({ day, 'last-day': lastDay, start, finish }: CalendarMeeting): { start: WallClock; end: WallClock | null; allDay: boolean } {
  if (!start || (lastDay && !finish))
    return { start: new WallClock(day, '00:00'), end: new WallClock(addDays(lastDay ?? day, 1), '00:00'), allDay: true };
  return { start: new WallClock(day, start), end: finish ? new WallClock(lastDay ?? day, finish) : null, allDay: false };
}

/** The rules of a time zone under the name that the events use, because the library returns the new name for an old one. */
function zoneRules(zone: string): string | null {
  const [rules] = tzlib_get_ical_block(zone) as [string?, string?];
  return rules ? rules.replace(/^TZID:.*$/m, `TZID:${zone}`).replace(/\r?\n/g, '\r\n') : null;
}
