/*
 * A page, or an entry that is found by itself, as the record that Pagefind indexes: title, text and day first, which results show, then
 * words that only help to find it. Each part counts by its weight. The weights were tried out on the questions of tests/tables.
 */
import { canonical, otherForms } from '../../shared/words/canonical.ts';
import { joinParts, onePart, ORDER } from '../../shared/words/search-record.ts';
import { SMALL_WORDS } from '../../shared/words/small-words.ts';
import { wordsIn } from '../../shared/words/terms.ts';
import type { Word } from './handed-over.ts';
import type { Found } from './search-pages.ts';

/** Pagefind takes 10 at most, and keeps 1.05 (25/24) in fewer bytes than 1. A word of names counts once, however many names hold it. */
const WEIGHTS = { title: 10, names: 7, lead: 4, headings: 1, kind: 1.5, text: 1.05, gathered: 0.2 };
const MOST = 10;

/** Pages that gather others would answer every question: their text counts little beside their names. */
const GATHERS: Record<string, string[]> = {
  'year/': ['what to do this month', 'January February March April May June July August September October November December'],
  'meetings/': ['next meeting', 'when and where we meet', 'meeting dates', 'calendar'],
  'signs/': ['start from the signs', 'what is wrong with my bees', 'symptoms', 'which disease', 'sick brood'],
  'about/': [],
  'words/': [],
};

/** The place of the page that a word leads to. */
export const pageOf = (more: string | undefined): string | undefined => more?.slice(1).replace(/#.*/, '');

/** What people call it: the names of the words that it explains, or what a page that gathers others is asked for. */
export const namesOf = (place: string, words: readonly Word[]): string[] => [
  ...words.filter(({ id, more }) => place === `words/#${id}` || pageOf(more) === place).flatMap(({ names }) => names),
  ...(GATHERS[place] ?? []),
];

/** `at` is the record's number, by which the browser knows it. */
export function recordOf(found: Found, at: number, words: readonly Word[]): string {
  const weight = found.place in GATHERS ? WEIGHTS.gathered : WEIGHTS.text;
  const [lead, rest] = found.text.startsWith(found.lead) ? [found.lead, found.text.slice(found.lead.length)] : ['', found.text];
  const title = wordsIn(found.title);
  const forms = [...otherForms(found.text)].map(([form, times]) => weighed(Math.min(MOST, times * weight), form));
  const parts = [
    weighed(WEIGHTS.title, found.title),
    weighed(WEIGHTS.lead, lead) + weighed(weight, rest),
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
  return `<html lang="en"><body><main data-pagefind-body data-pagefind-sort="${order}">${joinParts(parts)}</main></body></html>`;
}

/** Each word that says something, once. */
const large = (texts: readonly string[]): string[] => [...new Set(texts.flatMap(wordsIn))].filter((word) => !SMALL_WORDS.has(word));

/** A span, since Pagefind ends every block with a full stop of its own. */
function weighed(weight: number, text: string | readonly string[]): string {
  const words = typeof text === 'string' ? text : text.join(' ');
  return words === '' ? '' : `<span data-pagefind-weight="${weight}">${escaped(onePart(words))}</span>`;
}

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
