/* Style sheets of the two books, and the classes in them. A chapter keeps no other classes. */
import { readFileSync } from 'node:fs';

const read = (name: string): string =>
  readFileSync(new URL(name, import.meta.url), 'utf8')
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/\s+/g, ' ')
    .replace(/ ?([{};,]) ?/g, '$1')
    .trim();

/** Styles of both books. */
export const bookStyles = (): string => read('book.css');
/** Styles of the single file for screen and print. */
export const oneFileStyles = (): string => read('one-file.css');

/** Classes in selectors. `.5rem` and `example.org` are none. */
export const classesIn = (styles: string): Set<string> =>
  new Set([...styles.matchAll(/\.([a-z][\w-]*)(?=[^{}]*\{)/gi)].map(([, name]) => name!));
