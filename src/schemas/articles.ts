/* articles/: know-how pages, neither checklists nor bulletins. */
import { z } from 'astro/zod';
import { CERTAINTIES, duty, list, oneOf, review, section, shelf, sources, when, words, WORK, yesNo } from './fields.ts';
import { holding } from './where.ts';

export const articles = section({
  title: words('the title', 'Feeding and stores'),
  summary: words(
    'the answer first, in one or two sentences',
    'Feed thin syrup in spring and thick syrup in fall. Stop when the nights are cold.',
  ),
  subject: oneOf([
    'packages',
    'queens',
    'brood',
    'feeding',
    'mites',
    'swarms',
    'flow',
    'fall',
    'winter',
    'people',
    'law',
    'club',
    'records',
  ]),
  when: when().optional(),
  why: words('why then, in a few words', 'Brood grows faster than food comes in.').optional(),
  yard: yesNo().describe('What it tells to do means opening a hive.'),
  work: list(oneOf(WORK)).optional().describe('What the hands do: the cautions follow from it.'),
  sources: sources(),
  certainty: oneOf(CERTAINTIES).describe('How sure its sources are.'),
  ask: duty().describe('Who to ask next.'),
  ...holding,
  ...review,
  ...shelf,
});

export type Article = z.infer<typeof articles>;
