/* Form field kind for a day of every year: `1 March`, or `03-01` as in the address. */
import { formatMonthDay, monthDayOf, parseMonthDay, type MonthDay } from '../../../shared/days/month-day.ts';
import { readTypedDay } from '../../../shared/days/typed-day.ts';
import { ok } from '../../../shared/result.ts';
import type { Kind } from '../form/kind.ts';

export const monthDay: Kind<MonthDay> = {
  read: (typed) => {
    const plain = parseMonthDay(typed);
    if (plain.ok) return plain;
    // Uses a leap year, so that 29 February is valid.
    const read = readTypedDay(`${typed} 2000`);
    return read.ok ? ok(monthDayOf(read.value)) : read;
  },
  readAddress: parseMonthDay,
  show: formatMonthDay,
  write: (value) => value,
  says: (_refused, typed) => `“${typed}” is not a day of the year. Write it like 1 March.`,
};
