/* Formats the time of a meeting in local time. */
import { formatDayRange, formatDayWithWeekday } from '../../shared/days/show-day.ts';
import type { Meeting } from '../schemas/meetings.ts';

/** "Saturday 16 May 2026, 10:00 to 12:30". */
export function meetingTime(meeting: Pick<Meeting, 'day' | 'last-day' | 'start' | 'finish'>): string {
  const days = meeting['last-day'] ? formatDayRange(meeting.day, meeting['last-day']) : formatDayWithWeekday(meeting.day);
  if (!meeting.start) return days;
  return `${days}, ${meeting.start}${meeting.finish ? ` to ${meeting.finish}` : ''}`;
}
