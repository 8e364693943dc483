/* Days for tests. A text that is no valid day throws. */
import { parseDay, type Day } from '../shared/days/day.ts';
import { parseMonthDay, type MonthDay } from '../shared/days/month-day.ts';
import { unwrap } from '../shared/result.ts';

export const aDay = (text: string): Day => unwrap(parseDay(text));
export const aMonthDay = (text: string): MonthDay => unwrap(parseMonthDay(text));
