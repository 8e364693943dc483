/* Formats the time of a meeting in local time. */
import { formatClock, formatClocks, formatDayRange, formatDayWithWeekday } from './country.ts';
import type { Meeting } from '../schemas/meetings.ts';

/** "Saturday, May 16, 2026, 10 am to 12:30 pm". */
export function meetingTime(meeting: Pick<Meeting, 'day' | 'last-day' | 'start' | 'finish'>): string {
  const days = meeting['last-day'] ? formatDayRange(meeting.day, meeting['last-day']) : formatDayWithWeekday(meeting.day);
  if (!meeting.start) return days;
  return `${days}, ${meeting.finish ? formatClocks(meeting.start, meeting.finish) : formatClock(meeting.start)}`;
}
