/* checklists/: pages of steps. Headings (##) make the pauses, "- [ ]" lines the steps. */
import { z } from 'astro/zod';
import { duty, list, oneOf, review, section, shelf, sources, when, words, WORK, idOf, yesNo } from './fields.ts';

export const checklists = section({
  title: words('the title of the list'),
  /** What it is for, in one sentence under 20 words. */
  summary: words('what it is for, in one sentence'),
  when: when(),
  /** Why now, for the ledger on the first page: under 16 words. */
  why: words('why then, in a few words'),
  /** `read-do`: read each step, then do it. `do-confirm`: work from memory, then tick what was done. */
  mode: oneOf(['read-do', 'do-confirm']),
  /** The reader's own day that the list counts from, where it has one. */
  'starts-from': oneOf(['installing', 'caging', 'treating', 'hiving']).optional(),
  /** Done in the yard: carries the emergency number and the hive cautions. */
  yard: yesNo(),
  /** What the hands do: the cautions follow from it. */
  work: list(oneOf(WORK)).optional(),
  sources: sources(),
  /** Whom to ask next. */
  ask: duty(),
  /** Figures that the head of the page shows. */
  figures: list(idOf('figures')).optional(),
  /** Why the list has more steps to a pause or words to a step than is good. */
  exception: words('why the list departs from the rules of length').optional(),
  ...review,
  ...shelf,
});

export type Checklist = z.infer<typeof checklists>;
