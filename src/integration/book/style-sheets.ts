/* The two style sheets of the book, and the classes of which they speak: a chapter keeps no other. */
import { readFileSync } from 'node:fs';

const read = (name: string): string =>
  readFileSync(new URL(name, import.meta.url), 'utf8')
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/\s+/g, ' ')
    .replace(/ ?([{};,]) ?/g, '$1')
    .trim();

/** What both books show alike. */
export const bookStyles = (): string => read('book.css');
/** What the one file adds for a screen and for paper. */
export const oneFileStyles = (): string => read('one-file.css');

/** Classes in selectors; `.5rem` and `example.org` are none. */
export const classesIn = (styles: string): Set<string> =>
  new Set([...styles.matchAll(/\.([a-z][\w-]*)(?=[^{}]*\{)/gi)].map(([, name]) => name!));
