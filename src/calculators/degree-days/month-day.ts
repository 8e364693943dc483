/* Form field kind for a day of every year: typed like any day, or `03-01` as in the address. */
import { dayOf } from '../../../shared/days/day.ts';
import { monthDayOf, parseMonthDay, type MonthDay } from '../../../shared/days/month-day.ts';
import { withPlainSpaces } from '../../../shared/days/show-day.ts';
import { readTypedDay } from '../../../shared/days/typed-day.ts';
import { formatMonthDay, monthDay as monthDayFrom } from '../../../shared/days/year-span.ts';
import { ok } from '../../../shared/result.ts';
import { languageHere } from '../../../shared/country/language-here.ts';
import type { Kind } from '../form/kind.ts';
import { noDayOfYear } from './text.en.ts';

const shown = (value: MonthDay): string => withPlainSpaces(formatMonthDay(value, languageHere()));

export const monthDay: Kind<MonthDay> = {
  read: (typed) => {
    const plain = parseMonthDay(typed);
    if (plain.ok) return plain;
    // Near a leap day, so that 29 February is valid.
    const read = readTypedDay(typed, languageHere(), dayOf(2000, 3, 1));
    return read.ok ? ok(monthDayOf(read.value)) : read;
  },
  readAddress: parseMonthDay,
  show: shown,
  write: (value) => value,
  says: (_refused, typed) => noDayOfYear(typed, shown(monthDayFrom(3, 1))),
};
