/* Style sheets of the two books. A chapter keeps no classes but theirs. The single file begins with the site's own. */
import { readFileSync } from 'node:fs';

const read = (name: string): string =>
  readFileSync(new URL(name, import.meta.url), 'utf8')
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/\s+/g, ' ')
    .replace(/ ?([{};,]) ?/g, '$1')
    .trim();

/** Styles of both books. */
export const bookStyles = (): string => read('../../paper/book.css');
/** Styles of the single file for screen and print, with those of the book. */
export const oneFileStyles = (): string => `${tokens()}${read('../../styles/text.css')}${bookStyles()}${read('one-file.css')}`;

/** The site's tokens. A single file has no form to choose, so the colours of the night are those of a system that is dark. */
const tokens = (): string =>
  read('../../styles/tokens.css')
    .replace(/:root\[data-light='night'\](\{[^}]*\})/, '@media (prefers-color-scheme:dark){:root$1}')
    .replace(/:root\[[^\]]*\]\{[^}]*\}/g, '');
