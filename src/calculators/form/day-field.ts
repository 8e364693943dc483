/*
 * Form field for one day, typed in words or as 2026-04-18. `[data-read-as]` shows it in full with its weekday. The button
 * `[data-today-for]` enters the current day in the club's time zone.
 */
import { parseDay, type Day } from '../../../shared/days/day.ts';
import { formatDay, formatDayWithWeekday } from '../../../shared/days/show-day.ts';
import { todayIn } from '../../../shared/days/today.ts';
import { readTypedDay } from '../../../shared/days/typed-day.ts';
import type { Refused } from '../../../shared/result.ts';
import { boxOf, type Field } from './field.ts';
import { optional, type Kind } from './kind.ts';
import { single } from './single.ts';

/** `what` as in "Write the day of the install." */
export function day(what: string): Field<Day> {
  return dayField(dayKind(what));
}

export function optionalDay(what: string): Field<Day | undefined> {
  return dayField(optional(dayKind(what)));
}

function dayField<Value extends Day | undefined>(kind: Kind<Value>): Field<Value> {
  const field = single(kind);
  return {
    ...field,
    read: (form, name) => {
      const reading = field.read(form, name);
      form.querySelector(`[data-read-as="${name}"]`)!.textContent =
        'value' in reading && reading.value ? formatDayWithWeekday(reading.value) : '';
      return reading;
    },
    wake: (form, name, changed) => {
      form.querySelector(`[data-today-for="${name}"]`)?.addEventListener('click', () => {
        boxOf(form, name).value = formatDay(todayIn(document.documentElement.dataset.zone!, new Date()));
        changed();
      });
      form.addEventListener('reset', () => form.querySelector(`[data-read-as="${name}"]`)!.replaceChildren());
    },
  };
}

function dayKind(what: string): Kind<Day> {
  return {
    read: readTypedDay,
    readAddress: parseDay,
    show: formatDay,
    write: (value) => value,
    says: (refused, typed) => dayWords(refused, typed, what),
  };
}

function dayWords({ reason }: Refused<string>, typed: string, what: string): string {
  const found = `“${typed}”`;
  switch (reason) {
    case 'empty':
      return `Write ${what}, such as 18 April 2026.`;
    case 'slash-date':
      return `${found} is one day in one country and another day in the next. Write the month in letters, such as 18 April 2026.`;
    case 'no-year':
      return `${found} has no year. Write it like 18 April 2026.`;
    case 'short-year':
      return `${found}: write the year in four figures.`;
    case 'wrong-weekday':
      return `${found}: that date is not on that weekday.`;
    case 'impossible-date':
      return `${found} is not in the calendar.`;
    case 'year-out-of-range':
      return `${found}: write a year from 1900 to 2199.`;
    default:
      return `${found} is not a date. Write it like 18 April 2026.`;
  }
}
