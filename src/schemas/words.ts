/* words/: the glossary, the trade's terms in plain words. */
import { z } from 'astro/zod';
import { list, review, section, shelf, words as text } from './fields.ts';
import { holding } from './where.ts';

export const words = section({
  word: text('the word', 'brood').describe('The word as the almanac uses it.'),
  uk: text('the word in a British club', 'varroa board').optional().describe('The word of a British or Australian club, where it differs.'),
  meaning: text('what it means, in one or two sentences', 'Eggs, larvae and pupae: the young bees in the cells.'),
  also: list(text('another name or spelling', 'larvae'))
    .optional()
    .describe('Other names and the ways people mistype it: search leads from them to this word.'),
  more: text('an address such as /pests/varroa/').optional(),
  ...holding,
  ...review,
  ...shelf,
});

export type Word = z.infer<typeof words>;
