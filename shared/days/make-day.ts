/**
 * The branded type Day, ISO text such as `2026-04-18`, and its one constructor. The file leaves out the sums of day.ts, so that the
 * script of every page stays small.
 */
declare const dayMark: unique symbol;
export type Day = string & { readonly [dayMark]: true };

/** The one constructor. It takes three numbers that are known to be a day of the calendar. */
export function dayOf(year: number, month: number, date: number): Day {
  const two = (number: number) => String(number).padStart(2, '0');
  return `${String(year).padStart(4, '0')}-${two(month)}-${two(date)}` as Day;
}
