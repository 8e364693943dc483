/* Form field for one day, typed as people type days. The address holds 2026-04-18. */
import { parseDay, type Day } from '../../../shared/days/day.ts';
import { answerDayButton, showDayBack } from './day-box.ts';
import { boxOf, type Field } from './field.ts';
import { optional, type Kind } from './kind.ts';
import { single } from './single.ts';
import { boxDay, dayFaultWords, readDay } from './typed-day.ts';

/** `what` as in "Write the day of the install." */
export function day(what: string): Field<Day> {
  return dayField(dayKind(what));
}

export function optionalDay(what: string): Field<Day | undefined> {
  return dayField(optional(dayKind(what)));
}

function dayField<Value extends Day | undefined>(kind: Kind<Value>): Field<Value> {
  const field = single(kind);
  const show = (form: HTMLFormElement, name: string): void => showDayBack(boxOf(form, name) as HTMLInputElement);
  return {
    ...field,
    fill: (form, name, text) => {
      const fault = field.fill(form, name, text);
      show(form, name);
      return fault;
    },
    wake: (form, name) => {
      const box = boxOf(form, name);
      box.addEventListener('input', () => show(form, name));
      box.closest('.day-field')!.addEventListener('click', ({ target }) => {
        const button = (target as Element).closest('button');
        if (button) answerDayButton(button);
      });
      // The boxes are empty only after the event.
      form.addEventListener('reset', () => setTimeout(() => show(form, name)));
      show(form, name);
    },
  };
}

function dayKind(what: string): Kind<Day> {
  return {
    read: readDay,
    readAddress: parseDay,
    show: boxDay,
    write: (value) => value,
    says: ({ reason }, typed) => dayFaultWords(reason, typed, what),
  };
}
