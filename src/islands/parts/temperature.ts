/*
 * A box for a temperature, in the scale that the form is labelled with: `data-units` on an element around the box, `us` or `metric`.
 * A bare number is read in that scale, and either scale may be typed behind it. The value and the address are always in C.
 */
import { celsiusToFahrenheit, fahrenheitToCelsius } from '../../../shared/units/temperature.ts';
import { unitWords } from '../../../shared/units/unit-names.ts';
import { boxOf, type Field } from './field.ts';
import { number, type Kind } from './kind.ts';
import { measured } from './measured.ts';
import { temperatureWords, type System } from './measures.ts';
import { boxNumber } from './units.ts';

const same = (value: number): number => value;
const worded = (words: readonly string[], sum: (value: number) => number) => Object.fromEntries(words.map((word) => [word, sum]));
/** Two places hold a tenth of a degree Fahrenheit there and back, and keep an address short. */
const held = (celsius: number): number => Number(celsius.toFixed(2));

function celsius(what: string): Kind<number> {
  return number(what, { ...worded(unitWords.C, same), ...worded(unitWords.F, (value) => held(fahrenheitToCelsius(value))) });
}

function fahrenheit(what: string): Kind<number> {
  const kind = number(what, { ...worded(unitWords.F, same), ...worded(unitWords.C, celsiusToFahrenheit) });
  return {
    ...kind,
    read: (typed, units) => {
      const read = kind.read(typed, units);
      return read.ok ? { ...read, value: held(fahrenheitToCelsius(read.value)) } : read;
    },
    show: (value) => boxNumber(Number(celsiusToFahrenheit(value).toFixed(1))),
  };
}

/** `what` names the temperature in each scale, as in "Write how warm the warmest day gets, such as 82." */
export function temperature<Value extends number | undefined>(
  what: Readonly<Record<System, string>>,
  as: (kind: Kind<number>) => Kind<Value>,
): Field<Value> {
  const fields = {
    us: measured(as(fahrenheit(what.us)), (value) => temperatureWords(value, 'us')),
    metric: measured(as(celsius(what.metric)), (value) => temperatureWords(value, 'metric')),
  };
  const fieldOf = (form: HTMLFormElement, name: string): Field<Value> =>
    boxOf(form, name).closest<HTMLElement>('[data-units]')?.dataset.units === 'us' ? fields.us : fields.metric;
  return {
    read: (form, name) => fieldOf(form, name).read(form, name),
    fill: (form, name, text) => fieldOf(form, name).fill(form, name, text),
    wake: (form, name, changed) => fieldOf(form, name).wake?.(form, name, changed),
  };
}
