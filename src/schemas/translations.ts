/*
 * The fields of each collection that are words, which a translation gives in another language. All others are those of the entry that is
 * translated. The book's own words are here, too.
 */
import type { Collection } from './collections.ts';

/**
 * `text`: one text. `texts`: sentences, as many as in the original. `names`: what people type or say, as many as the language has.
 * `by-name`: a text for each name. Fields in a list belong to the row of the same `id`, or to the row at the same place where rows have none.
 */
export type Texts =
  'text' | 'texts' | 'names' | 'by-name' | { readonly [field: string]: Texts } | readonly [{ readonly [field: string]: Texts }];
export type TextFields = { readonly [field: string]: Texts };

const head = { title: 'text', summary: 'text', why: 'text' } as const;

export const translatedFields = {
  checklists: { ...head, exception: 'text' },
  bulletins: { ...head, 'also-called': 'names', law: [{ place: 'text', says: 'text' }] },
  articles: head,
  treatments: {
    title: 'text',
    summary: 'text',
    rows: [
      {
        form: 'text',
        place: 'text',
        limits: [{ when: 'text' }],
        'works-poorly-outside': [{ when: 'text' }],
        resistance: 'text',
        note: 'text',
      },
    ],
  },
  words: { word: 'text', meaning: 'text', also: 'names' },
  answers: { title: 'text', asks: 'names', answer: 'text' },
  figures: { title: 'text', because: 'text', rows: [{ at: 'text', place: 'text', method: 'text', note: 'text' }] },
  sources: { who: 'text', title: 'text', where: 'text', page: 'text' },
  cautions: { heading: 'text', line: 'text', says: 'texts', 'if-it-happens': 'texts' },
  signs: { title: 'text', look: 'text', usually: 'text' },
  drawings: { title: 'text', words: 'text', parts: 'texts' },
  reading: { worth: 'text', 'written-for': 'text', lends: 'text' },
  forage: { title: 'text', worth: 'text' },
  sheets: {
    title: 'text',
    summary: 'text',
    before: 'texts',
    fields: 'texts',
    columns: [{ name: 'text' }],
    lines: 'texts',
    after: 'texts',
  },
  local: { title: 'text' },
  book: { title: 'text', editors: 'text', duties: 'by-name' },
} as const satisfies { [Name in Collection | 'book']?: TextFields };

/** Fields of a translation itself: who checked it and when, and the text that it was made from. */
export const TRANSLATION_FIELDS = ['checked', 'by', 'of'] as const;

/** Texts that a reader can do without: the original's are shown until they are translated. */
export const MAY_LACK: ReadonlySet<string> = new Set(['exception', 'at', 'where', 'page']);

export const textFieldsOf = (collection: string): TextFields | null =>
  (translatedFields as Readonly<Record<string, TextFields>>)[collection] ?? null;
