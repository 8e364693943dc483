/*
 * Pagefind record of a page or entry: title, text and day, which results show, then words that only help to find it. Each part has a
 * weight. The weights were tuned on the questions of tests/tables.
 */
import { spoken } from '../../shared/country/language-here.ts';
import type { Tongue } from '../../shared/country/language.ts';
import { canonical, otherForms } from '../../shared/words/canonical.ts';
import { joinParts, onePart, ORDER, placeOfHeading } from '../../shared/words/search-record.ts';
import { SMALL_WORDS } from '../../shared/words/small-words.ts';
import { wordsIn } from '../../shared/words/terms.ts';
import type { SearchWord } from '../lib/search-content.ts';
import * as en from './search-record.en.ts';
import * as es from './search-record.es.ts';
import type { Found } from './search-pages.ts';

/** Pagefind allows at most 10, and stores 1.05 (25/24) in fewer bytes than 1. A word in several names counts once. */
const WEIGHTS = { title: 10, names: 7, lead: 4, headings: 1, kind: 1.5, text: 1.05, gathered: 0.2 };
const MOST = 10;

/** Overview pages would match every query, so their text counts little compared with their names. */
const overviews = (): typeof en.overviews => spoken<typeof en>({ en, es }).overviews;

/** The path of the page for a word. */
export const pageOf = (more: string | undefined): string | undefined => more?.slice(1).replace(/#.*/, '');

/** People's names for it: the names of the words that it explains, or the queries for an overview page. */
export const namesOf = (place: string, words: readonly SearchWord[]): string[] => [
  ...words.filter(({ id, more }) => place === `words/#${id}` || pageOf(more) === place).flatMap(({ names }) => names),
  ...(overviews()[place] ?? []),
];

/** `at` is the record's number, which the browser uses. */
export function recordOf(found: Found, at: number, words: readonly SearchWord[], tongue: Tongue = 'en'): string {
  const weight = found.place in overviews() ? WEIGHTS.gathered : WEIGHTS.text;
  const [lead, rest] = found.text.startsWith(found.lead) ? [found.lead, found.text.slice(found.lead.length)] : ['', found.text];
  const title = wordsIn(found.title);
  const forms = [...otherForms(found.text)].map(([form, times]) => weighed(Math.min(MOST, times * weight), form));
  const parts = [
    weighed(WEIGHTS.title, found.title),
    weighed(WEIGHTS.lead, lead) + inSections(rest, found.sections, weight),
    weighed(WEIGHTS.kind, found.when ?? ''),
    [
      weighed(
        WEIGHTS.title,
        title.map(canonical).filter((form, nth) => form !== title[nth]),
      ),
      weighed(WEIGHTS.names, large(namesOf(found.place, words)).map(canonical)),
      weighed(WEIGHTS.headings, large([found.headings])),
      weighed(WEIGHTS.kind, found.kind),
      ...forms,
    ].join(' '),
  ];
  const order = `${ORDER}:${String(at).padStart(5, '0')}`;
  return `<html lang="${tongue}"><body><main data-pagefind-body data-pagefind-sort="${order}">${joinParts(parts)}</main></body></html>`;
}

/** Each meaningful word, once. */
const large = (texts: readonly string[]): string[] => [...new Set(texts.flatMap(wordsIn))].filter((word) => !SMALL_WORDS.has(word));

/** The text with its headings as elements, so that a result can lead to one. */
function inSections(text: string, sections: Found['sections'], weight: number): string {
  let [marked, from] = ['', 0];
  for (const { id, title } of sections) {
    const at = placeOfHeading(text, title, from);
    if (at < 0) continue;
    marked += `${escaped(onePart(text.slice(from, at)))}<b id="${escaped(id).replaceAll('"', '')}">${escaped(onePart(title))}</b>`;
    from = at + title.length;
  }
  return `<span data-pagefind-weight="${weight}">${marked}${escaped(onePart(text.slice(from)))}</span>`;
}

/** A span, because Pagefind adds a full stop after every block. */
function weighed(weight: number, text: string | readonly string[]): string {
  const words = typeof text === 'string' ? text : text.join(' ');
  return words === '' ? '' : `<span data-pagefind-weight="${weight}">${escaped(onePart(words))}</span>`;
}

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
