/* Words for a day that cannot be read. `what` as in "Write the day of the install." */
export const write = (what: string, such: string): string => `Write ${what}, such as ${such}.`;
export const wrongWeekday = (found: string): string => `“${found}”: that date is not on that weekday.`;
export const notInCalendar = (found: string): string => `“${found}” is not in the calendar.`;
export const yearOutOfRange = (found: string): string => `“${found}”: write a year from 1900 to 2199.`;
export const notADate = (found: string, such: string): string => `“${found}” is not a date. Write it like ${such}.`;
