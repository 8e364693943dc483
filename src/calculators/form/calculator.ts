/*
 * Custom element of a calculator around its form. It reads the form fields each time and keeps no result. It calculates on load, on
 * return to the page and at "Calculate". From then on it calculates at every change, so that no old answer remains under new numbers.
 * After a result the form folds to the question asked, except on a wide screen, where both are beside each other. The values are in the address after `#`. An address without `=` is a fragment of the page and is ignored. The form uses the club's
 * units, or those that the reader chose at its top. The address always uses fixed units. Markup: components/Calculator, with parts named
 * by `data-part` and buttons by `data-action`.
 */
import { readAddress, writeAddress, type Address } from '../../../shared/address/address.ts';
import { listFaults, markFaults, unmark } from './faults.ts';
import type { FormError, Field } from './field.ts';
import type { System } from './measures.ts';
import * as remembered from './remembered.ts';
import * as words from './text.en.ts';

export type Calculator<Values, Figures> = {
  /** By the names in the address, in their order. */
  readonly fields: { readonly [Name in keyof Values]: Field<Values[Name]> };
  /** Fills the outputs and returns the answer, or the fields that cannot be right together. */
  readonly work: (values: Values, place: Place<Figures>) => Answer | readonly FormError[];
};

export type Answer<Kind extends string = string> = {
  readonly headline: string;
  /** One line under the headline. */
  readonly more?: string | undefined;
  /** A verdict in a word, its level of gravity, and its value where it is an output. */
  readonly tag?: readonly [words: string, step: string, value?: string] | undefined;
  /** The question asked, in one line. */
  readonly asked: string;
  readonly next: {
    /** Chooses the links and the call (the calculator's next.ts). */
    readonly kind: Kind;
    readonly says?: string | undefined;
    /** The day of the next count or look, in a sentence. */
    readonly again?: string | undefined;
    /** Hazards of the work that this result asks for. Each has a line (components/NextSteps). */
    readonly hazards?: readonly string[];
    /** Values for the form of another calculator, by its slug. */
    readonly values?: Readonly<Record<string, string>>;
  };
};

export type Place<Figures> = {
  readonly form: HTMLFormElement;
  /** The container of the outputs. */
  readonly result: HTMLElement;
  /** The club's own figures from the page. `units` are the units of the form. */
  readonly figures: Figures;
};

export function defineCalculator<Values, Figures>(tag: string, calculator: Calculator<Values, Figures>): void {
  // A form that came with values in its address works at once. Until then its own file must have been read to the end.
  queueMicrotask(() =>
    customElements.define(
      tag,
      class extends HTMLElement {
        connectedCallback(): void {
          wake(this, calculator);
        }
      },
    ),
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
  /** The address that the form wrote last. Names that it does not have are no longer in it. */
  let written = '';

  function open(): void {
    if (!location.hash.includes('=')) return;
    const address = readAddress(location.hash, names);
    form.reset();
    // A link says the part of the year, or none. Today's is for a form that somebody fills in.
    for (const option of form.querySelectorAll<HTMLOptionElement>('option[data-span]')) option.selected = false;
    misread.clear();
    for (const [name, text] of address.values) {
      const fault = fields[name as keyof Values & string].fill(form, name, text);
      if (fault) misread.set(name, { fault, address: text });
    }
    if (location.hash !== written) say('passed-over', passedOver(address));
    live = true;
    list(refresh());
    fold();
  }

  function refresh(): readonly FormError[] {
    if (!live) return [];
    unmark(form);
    empty();
    const { values, pairs, faults } = read();
    keepAddress(pairs);
    written = location.hash;
    const worked = faults.length > 0 ? faults : work(values, place());
    if (!('headline' in worked)) {
      markFaults(worked);
      (part('asked') as HTMLDetailsElement).open = true;
      root.classList.remove('answered');
      say('status', words.noResult(worked.length));
      return worked;
    }
    show(worked);
    return [];
  }

  function show({ headline, more = '', tag, asked, next }: Answer): void {
    say('status', headline);
    say('question', asked);
    say('question-printed', asked);
    text('more', more);
    const [verdict = '', step = '', value] = tag ?? [];
    const output = part('tag');
    output.textContent = verdict;
    output.className = `status ${step}`;
    if (value !== undefined) output.dataset.value = value;
    text('next', next.says ?? '');
    text('again', next.again ?? '');
    for (const way of root.querySelectorAll<HTMLElement>('[data-for]')) way.hidden = !way.dataset.for!.split(' ').includes(next.kind);
    for (const line of root.querySelectorAll<HTMLElement>('.next [data-hazard]'))
      line.hidden = !next.hazards?.includes(line.dataset.hazard!);
    for (const way of root.querySelectorAll<HTMLElement>('[data-to]')) way.querySelector('a')!.hash = next.values?.[way.dataset.to!] ?? '';
    part('result').hidden = false;
    part('example').classList.add('no-print');
    if (!root.classList.contains('answered')) (part('example') as HTMLDetailsElement).open = false;
    root.classList.add('answered');
  }

  /** Folds the form to its question, where the screen has no room for both. */
  function fold(): void {
    const isWide = matchMedia('(min-width: 900px)').matches;
    (part('asked') as HTMLDetailsElement).open = isWide || part('result').hasAttribute('hidden');
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
    for (const output of root.querySelectorAll('output')) {
      output.removeAttribute('data-value');
      output.textContent = '';
    }
  }

  function list(faults: readonly FormError[]): void {
    listFaults(part('summary'), faults);
  }

  function say(name: string, sentence: string): void {
    const line = part(name);
    if (line.textContent !== sentence) line.textContent = sentence;
  }

  function text(name: string, sentence: string): void {
    root.querySelector(`[data-text="${name}"]`)!.textContent = sentence;
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

  /** Writes the likely fix of an error into its box, as if it had been typed. */
  function mend({ dataset: { fix, of } }: HTMLButtonElement): void {
    const box = document.getElementById(of!) as HTMLInputElement;
    box.value = fix!;
    box.focus();
    box.dispatchEvent(new Event('input', { bubbles: true }));
  }

  const actions: Record<string, (button: HTMLElement) => void> = {
    print: () => window.print(),
    share: () => {
      keepAddress(read().pairs);
      // An answer without its question is a number without its meaning.
      const text = `${part('question').textContent}: ${part('status').textContent}`;
      void navigator.share({ title: document.title, text, url: location.href }).catch(() => undefined);
    },
    clear: () => {
      live = false;
      misread.clear();
      form.reset();
      unmark(form);
      empty();
      list([]);
      say('status', '');
      say('passed-over', '');
      root.classList.remove('answered');
      (part('example') as HTMLDetailsElement).open = true;
      history.replaceState(null, '', location.pathname + location.search);
      form.querySelector<HTMLElement>('input, select, textarea')!.focus();
    },
    copy: (button) => {
      keepAddress(read().pairs);
      const label = button.lastChild!;
      const before = label.textContent;
      const showForAWhile = (answer: string): void => {
        label.textContent = answer;
        setTimeout(() => (label.textContent = before), 4000);
      };
      const copied = navigator.clipboard?.writeText(location.href) ?? Promise.reject();
      copied.then(
        () => showForAWhile(words.copied),
        () => showForAWhile(words.copyFromBar),
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
    const fix = (target as Element).closest<HTMLButtonElement>('[data-fix]');
    if (fix) mend(fix);
  });
  form.addEventListener('reset', () => remembered.forgetAll(form));
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    misread.clear();
    live = true;
    const faults = refresh();
    list(faults);
    if (faults.length > 0) return part('summary').focus();
    fold();
    if ((part('asked') as HTMLDetailsElement).open) return part('status').scrollIntoView({ block: 'nearest' });
    // The button that was pressed is folded away, so the line that opens the form again takes the focus. The verdict is below it.
    const line = part('asked').querySelector('summary')!;
    line.focus({ preventScroll: true });
    line.scrollIntoView({ block: 'start' });
  });
  form.addEventListener('input', ({ target }) => {
    const box = target as HTMLInputElement;
    remembered.forget(box);
    misread.delete(box.closest<HTMLElement>('[data-row-of]')?.dataset.rowOf ?? box.name);
    changed();
  });
  // On a screen that became wide the form is beside the result.
  matchMedia('(min-width: 900px)').addEventListener('change', fold);
  root.querySelector<HTMLElement>('[data-action="share"]')!.hidden = !('share' in navigator);
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
    ...(once.length > 0 ? [words.unknownInLink(once.join(', '))] : []),
    ...(repeated.length > 0 ? [words.twiceInLink([...new Set(repeated)].join(', '))] : []),
  ].join(' ');
}
