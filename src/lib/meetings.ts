/* The time of a meeting in local time, and whether it is called off. */
import { formatClock, formatClocks, formatDayRange, formatDayWithWeekday } from './country.ts';
import type { Meeting } from '../schemas/meetings.ts';
import { dayAndReasonIn } from './published.ts';

/** "Saturday, May 16, 2026, 10 am to 12:30 pm". */
export function meetingTime(meeting: Pick<Meeting, 'day' | 'last-day' | 'start' | 'finish'>): string {
  const days = meeting['last-day'] ? formatDayRange(meeting.day, meeting['last-day']) : formatDayWithWeekday(meeting.day);
  if (!meeting.start) return days;
  return `${days}, ${meeting.finish ? formatClocks(meeting.start, meeting.finish) : formatClock(meeting.start)}`;
}

/** The day on which it was called off, and why; null for one that takes place. */
export const calledOffIn = ({ 'called-off': off }: Pick<Meeting, 'called-off'>): ReturnType<typeof dayAndReasonIn> | null =>
  off === undefined ? null : dayAndReasonIn(off);
