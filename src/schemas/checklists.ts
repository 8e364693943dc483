/* checklists/: pages of steps. Headings (##) make the pauses, and "- [ ]" lines make the steps. */
import { z } from 'astro/zod';
import { ownEvents } from '../../shared/season/phases.ts';
import { duty, list, oneOf, review, section, shelf, sources, when, words, WORK, idOf, yesNo } from './fields.ts';
import { holding } from './where.ts';

export const checklists = section({
  title: words('the title of the list', 'The evening the package comes'),
  summary: words('what it is for, in one sentence', 'Get the bees into the hive before dark, and feed them.').describe('Under 20 words.'),
  when: when(),
  why: words('why then, in a few words', 'Bees in a box live on their can only.').describe(
    'For the ledger on the first page, under 16 words.',
  ),
  mode: oneOf(['read-do', 'do-confirm']).describe('`read-do`: read each step, then do it. `do-confirm`: do the jobs, then check them off.'),
  'starts-from': oneOf(ownEvents).optional().describe("The reader's own day that the list counts from, where it has one."),
  next: idOf('checklists').optional().describe('The checklist that follows. At the end it starts for the same hive.'),
  yard: yesNo().describe('Done in the yard: carries the emergency number and the hive cautions.'),
  work: list(oneOf(WORK))
    .optional()
    .describe(
      'What the hands do, the main work first. The cautions follow from it, and a list shows the gravest of its main work in full.',
    ),
  sources: sources(),
  ask: duty().describe('Who to ask next.'),
  figures: list(idOf('figures')).optional().describe('Figures that the head of the page shows.'),
  exception: words('why the list departs from the rules of length', 'The law asks for these steps in one go.')
    .optional()
    .describe('Why the list has more steps to a pause or words to a step than is good.'),
  ...holding,
  ...review,
  ...shelf,
});

export type Checklist = z.infer<typeof checklists>;
