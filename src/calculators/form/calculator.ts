/*
 * Custom element of a calculator around its form. It reads the form fields each time and keeps no result. It calculates on load, on
 * return to the page and at "Calculate". From then on it calculates at every change, so that no old answer remains under new numbers.
 * The values are in the address after `#`. An address without `=` is a fragment of the page and is ignored. The form uses the club's
 * units, or those that the reader chose at its top. The address always uses fixed units. Markup: components/Calculator, with parts named
 * by `data-part` and buttons by `data-action`.
 */
import { readAddress, writeAddress, type Address } from '../../../shared/address/address.ts';
import { listFaults, markFaults, unmark } from './faults.ts';
import type { FormError, Field } from './field.ts';
import type { System } from './measures.ts';
import * as remembered from './remembered.ts';

export type Calculator<Values, Figures> = {
  /** By the names in the address, in their order. */
  readonly fields: { readonly [Name in keyof Values]: Field<Values[Name]> };
  /** Fills the outputs and returns the headline, or the fields that cannot be right together. */
  readonly work: (values: Values, place: Place<Figures>) => string | readonly FormError[];
};

export type Place<Figures> = {
  readonly form: HTMLFormElement;
  /** The container of the outputs. */
  readonly result: HTMLElement;
  /** The club's own figures from the page. `units` are the units of the form. */
  readonly figures: Figures;
};

export function defineCalculator<Values, Figures>(tag: string, calculator: Calculator<Values, Figures>): void {
  customElements.define(
    tag,
    class extends HTMLElement {
      connectedCallback(): void {
        wake(this, calculator);
      }
    },
  );
}

function wake<Values, Figures>(root: HTMLElement, { fields, work }: Calculator<Values, Figures>): void {
  const names = Object.keys(fields) as (keyof Values & string)[];
  const part = (name: string) => root.querySelector<HTMLElement>(`[data-part="${name}"]`)!;
  const form = root.querySelector('form')!;
  const held = JSON.parse(part('figures').textContent!) as Figures;
  const place = (): Place<Figures> => ({
    form,
    result: part('result'),
    figures: root.dataset.units ? { ...held, units: root.dataset.units } : held,
  });
  /** Errors in the address, until the member changes that field. */
  const misread = new Map<string, { fault: FormError; address: string }>();
  /** True after the first press, or when the address had values. */
  let live = false;

  function open(): void {
    if (!location.hash.includes('=')) return;
    const address = readAddress(location.hash, names);
    form.reset();
    misread.clear();
    for (const [name, text] of address.values) {
      const fault = fields[name as keyof Values & string].fill(form, name, text);
      if (fault) misread.set(name, { fault, address: text });
    }
    say('passed-over', passedOver(address));
    live = true;
    list(refresh());
  }

  function refresh(): readonly FormError[] {
    if (!live) return [];
    unmark(form);
    empty();
    const { values, pairs, faults } = read();
    keepAddress(pairs);
    const worked = faults.length > 0 ? faults : work(values, place());
    if (typeof worked !== 'string') {
      markFaults(worked);
      say('status', `No result yet. There ${worked.length === 1 ? 'is 1 problem' : `are ${worked.length} problems`}.`);
      return worked;
    }
    say('status', worked);
    part('result').hidden = false;
    part('example').classList.add('no-print');
    return [];
  }

  function read(): { values: Values; pairs: [string, string][]; faults: FormError[] } {
    const values = {} as Values;
    const pairs: [string, string][] = [];
    const faults: FormError[] = [];
    for (const name of names) {
      const wrong = misread.get(name);
      const reading = wrong ? { faults: [wrong.fault], address: wrong.address } : fields[name].read(form, name);
      if ('value' in reading) values[name] = reading.value;
      else faults.push(...reading.faults);
      if (reading.address !== undefined) pairs.push([name, reading.address]);
    }
    return { values, pairs, faults };
  }

  /** Removes the old result before a new calculation. */
  function empty(): void {
    part('result').hidden = true;
    part('example').classList.remove('no-print');
    for (const output of part('result').querySelectorAll('output')) {
      output.removeAttribute('data-value');
      output.textContent = '';
    }
  }

  function list(faults: readonly FormError[]): void {
    listFaults(part('summary'), faults);
  }

  function say(name: string, words: string): void {
    const line = part(name);
    if (line.textContent !== words) line.textContent = words;
  }

  function changed(): void {
    const faults = refresh();
    if (!part('summary').hidden) list(faults);
  }

  /** Shows the same numbers in other units, and the result that follows. */
  function turn(units: System): void {
    if (root.dataset.units === units) return;
    const shows = names.map((name) => fields[name].turn?.(form, name));
    root.dataset.units = units;
    for (const show of shows) show?.();
    changed();
  }

  const actions: Record<string, (button: HTMLElement) => void> = {
    print: () => window.print(),
    clear: () => {
      live = false;
      misread.clear();
      form.reset();
      unmark(form);
      empty();
      list([]);
      say('status', '');
      say('passed-over', '');
      history.replaceState(null, '', location.pathname + location.search);
      form.querySelector<HTMLElement>('input, select, textarea')!.focus();
    },
    copy: (button) => {
      keepAddress(read().pairs);
      const words = button.textContent!;
      const showForAWhile = (answer: string): void => {
        button.textContent = answer;
        setTimeout(() => (button.textContent = words), 4000);
      };
      const copied = navigator.clipboard?.writeText(location.href) ?? Promise.reject();
      copied.then(
        () => showForAWhile('Copied'),
        () => showForAWhile('Copy it from the address bar'),
      );
    },
  };

  for (const name of names) {
    fields[name].wake?.(form, name, () => {
      misread.delete(name);
      changed();
    });
  }
  root.addEventListener('click', ({ target }) => {
    const button = (target as Element).closest<HTMLElement>('[data-action]');
    if (button) actions[button.dataset.action!]!(button);
    const units = (target as Element).closest<HTMLButtonElement>('[data-form="units"]');
    if (units) turn(units.value as System);
  });
  form.addEventListener('reset', () => remembered.forgetAll(form));
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    misread.clear();
    live = true;
    const faults = refresh();
    list(faults);
    if (faults.length > 0) part('summary').focus();
    else part('status').scrollIntoView({ block: 'nearest' });
  });
  form.addEventListener('input', ({ target }) => {
    const box = target as HTMLInputElement;
    remembered.forget(box);
    misread.delete(box.closest<HTMLElement>('[data-row-of]')?.dataset.rowOf ?? box.name);
    changed();
  });
  window.addEventListener('hashchange', open);
  window.addEventListener('pageshow', ({ persisted }) => {
    open();
    // WebKit empties such a form in a later task when a page returns from the back-forward cache.
    if (persisted) for (const wait of [0, 100]) setTimeout(open, wait);
  });
  const chosen = document.documentElement.dataset.units;
  if (root.dataset.units && (chosen === 'us' || chosen === 'metric')) turn(chosen);
  open();
}

function keepAddress(pairs: readonly (readonly [string, string])[]): void {
  try {
    history.replaceState(null, '', `#${writeAddress(pairs)}`);
  } catch {
    // Some browsers limit the number of address changes in half a minute. The next change catches up.
  }
}

function passedOver({ unknown, repeated }: Address): string {
  const once = [...new Set(unknown)];
  return [
    ...(once.length > 0 ? [`Passed over in the address: ${once.join(', ')}.`] : []),
    ...(repeated.length > 0 ? [`More than once in the address, the first counts: ${[...new Set(repeated)].join(', ')}.`] : []),
  ].join(' ');
}
