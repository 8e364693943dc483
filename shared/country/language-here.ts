/**
 * The club's language. Each build has one, and Vite puts it in for the pages and their scripts (src/integration/words.ts). The
 * integration, which runs without Vite, sets it before it writes files for readers. Messages for webmasters are in English.
 */
import { tongueOf, type Language, type Tongue } from './language.ts';

declare const __LANGUAGE__: Language | undefined;

let here: Language = typeof __LANGUAGE__ === 'string' ? __LANGUAGE__ : 'en-US';

export const languageHere = (): Language => here;

/** For the integration, and for a test of another language. */
export function setLanguageHere(language: Language): void {
  here = language;
}

/** The words of a room in any language: what `text.en.ts` exports, with other sentences. */
export type WordsLike<Said> = Said extends string
  ? string
  : Said extends (...given: never[]) => unknown
    ? Said
    : { [Name in keyof Said]: WordsLike<Said[Name]> };

/**
 * The words of a room in the club's language: `spoken({ en, es })`. For code that also runs without Vite. Elsewhere an import of
 * `text.en.ts` is enough, because Vite takes `text.es.ts` in its place.
 */
export const spoken = <Words>(words: Readonly<Record<Tongue, Words>>): Words => words[tongueOf(here)];
