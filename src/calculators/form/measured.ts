/* Form field for one number with an optional unit. `[data-read-as]` shows the parsed value in both systems, the form's own first. */
import type { Field } from './field.ts';
import type { Kind } from './kind.ts';
import type { System } from './measures.ts';
import { single } from './single.ts';
import { systemOf } from './units.ts';

export function measured<Value extends number | undefined>(
  kind: Kind<Value>,
  words: (value: number, units: System) => string,
): Field<Value> {
  const field = single(kind);
  const readingOf = (form: HTMLFormElement, name: string) => form.querySelector(`[data-read-as="${name}"]`)!;
  return {
    ...field,
    read: (form, name) => {
      const reading = field.read(form, name);
      readingOf(form, name).textContent = 'value' in reading && reading.value !== undefined ? words(reading.value, systemOf(form)) : '';
      return reading;
    },
    wake: (form, name) => {
      form.addEventListener('reset', () => readingOf(form, name).replaceChildren());
    },
  };
}
