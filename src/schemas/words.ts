/* words/: the trade's words, in plain ones. */
import { z } from 'astro/zod';
import { list, review, section, shelf, words as text } from './fields.ts';

export const words = section({
  /** The word as the almanac uses it. */
  word: text('the word'),
  /** The word of a British or Australian club, where it differs. */
  uk: text('the word in a British club').optional(),
  /** What it means, in one or two sentences. */
  meaning: text('what it means, in one or two sentences'),
  /** Other names and the ways people mistype it: search leads from them to this word. */
  also: list(text('another name or spelling')).optional(),
  /** A page that says more, such as /pests/varroa/. */
  more: text('an address such as /pests/varroa/').optional(),
  ...review,
  ...shelf,
});

export type Word = z.infer<typeof words>;
