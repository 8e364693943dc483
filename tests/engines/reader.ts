/*
 * What a journey can do with a browser. Each engine's driver implements it; the functions below wait and look, the same in every engine.
 * A function given to `run` runs inside the page, so it must not use anything around it.
 */

export interface Reader {
  /** Opens an address and waits until the page has loaded. */
  go: (address: string) => Promise<void>;
  run: <Arguments extends unknown[], Value>(inPage: (...given: Arguments) => Value, ...given: Arguments) => Promise<Awaited<Value>>;
  /** Presses the first element that fits, with the mouse. */
  press: (selector: string) => Promise<void>;
  /** Types into the element that has the focus. */
  type: (text: string) => Promise<void>;
  key: (name: Key) => Promise<void>;
  /** Returns the width in which the page is laid out. A window may have a least width. */
  resize: (width: number, height: number) => Promise<number>;
  reload: () => Promise<void>;
  /** The page as PDF, where the driver can print. */
  print?: () => Promise<Buffer>;
  shot: (file: string) => Promise<void>;
  close: () => Promise<void>;
}

export type Key = 'Tab' | 'Enter' | 'Space' | 'PageDown' | 'Backspace';

/** A browser program that has started. Each reader has storage of her own, and only one is open at a time. */
export interface Engine {
  version: string;
  open: () => Promise<Reader>;
  close: () => Promise<void>;
}

export const phone = { width: 390, height: 844 } as const;

const PATIENCE = 30_000;

/** Waits until the function returns something, and returns it. A page that is just being replaced is asked again. */
export async function until<Arguments extends unknown[], Value>(
  reader: Reader,
  what: string,
  inPage: (...given: Arguments) => Value,
  ...given: Arguments
): Promise<Exclude<Awaited<Value>, null | undefined | false | ''>> {
  const end = performance.now() + PATIENCE;
  let last: unknown;
  while (performance.now() < end) {
    try {
      const value = await reader.run(inPage, ...given);
      if (value) return value as Exclude<Awaited<Value>, null | undefined | false | ''>;
      last = value;
    } catch (error) {
      last = error;
    }
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`${what}: not within ${PATIENCE / 1000} s; last ${String(last)}; on ${await whereIs(reader)}`);
}

const whereIs = (reader: Reader): Promise<string> =>
  reader
    .run(() => {
      const { id, tagName, outerHTML } = document.activeElement!;
      const place = `${location.href}, ${scrollY} px down, ${tagName} ${id} has the focus`;
      return `${place}: ${(document.querySelector('main') ?? document.body).innerText.slice(0, 1500)}\n${outerHTML.slice(0, 200)}`;
    })
    .catch((error: unknown) => String(error));

/** The visible text of the first element that fits, with plain spaces, once it matches. */
export const saying = (reader: Reader, selector: string, fits: RegExp): Promise<string> =>
  until(
    reader,
    `${selector} says ${fits}`,
    (selector, source, flags) => {
      const words = [...document.querySelectorAll<HTMLElement>(selector)].map((each) => each.innerText.replace(/\s+/g, ' ').trim());
      return words.find((each) => new RegExp(source, flags).test(each));
    },
    selector,
    fits.source,
    fits.flags,
  );

/** Presses the button, link or summary with these words, once it can be seen. */
export async function pressNamed(reader: Reader, words: string): Promise<void> {
  await until(
    reader,
    `something to press is named ${words}`,
    (words) => {
      for (const old of document.querySelectorAll('[data-to-press]')) old.removeAttribute('data-to-press');
      const found = [...document.querySelectorAll<HTMLElement>('button, a, summary')].find(
        (each) => each.checkVisibility({ visibilityProperty: true }) && each.innerText.replace(/\s+/g, ' ').trim() === words,
      );
      found?.setAttribute('data-to-press', '');
      return found !== undefined;
    },
    words,
  );
  await reader.press('[data-to-press]');
}

/** Replaces the text of a field by typing, as a person does. Folds around it are opened first. */
export async function fill(reader: Reader, selector: string, text: string): Promise<void> {
  await until(
    reader,
    `${selector} is there to be filled`,
    (selector) => {
      const field = document.querySelector<HTMLInputElement>(selector);
      for (let fold = field?.closest('details'); fold; fold = fold.parentElement!.closest('details')) fold.open = true;
      field?.focus();
      field?.select();
      return field !== null && document.activeElement === field;
    },
    selector,
  );
  await reader.key('Backspace');
  await reader.type(text);
}

/** Goes back or forward in the tab. The page leaves after the answer, so that no driver loses it. */
export const travel = (reader: Reader, by: -1 | 1): Promise<void> =>
  reader.run((by) => {
    setTimeout(() => history.go(by));
  }, by);
