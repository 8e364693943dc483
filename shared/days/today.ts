/**
 * The current day in a club's time zone, at an instant that the caller passes in. Only the caller reads the clock. No other file of
 * shared/ uses a Date. An unknown time zone throws.
 */
import { dayOf, type Day } from './make-day.ts';

export function todayIn(timeZone: string, now: Date): Day {
  const parts = new Intl.DateTimeFormat('en-US-u-ca-gregory-nu-latn', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).formatToParts(now);
  const part = (type: string) => parts.find((one) => one.type === type)?.value ?? '';
  const year = part('year');
  if (!(Number(year) >= 1900 && Number(year) <= 2199)) throw new RangeError('todayIn: needs an instant from 1900 to 2199');
  return dayOf(Number(year), Number(part('month')), Number(part('day')));
}
