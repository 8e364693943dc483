/* answers/: best answers of the search, kept by hand. What people type leads to a page or a section of it, and to one sentence of it. */
import { z } from 'astro/zod';
import { duty, list, oneOf, section, shelf, when, words } from './fields.ts';
import { holding } from './where.ts';

const hint = 'the first thing to do, in one sentence or two, without numbers: the page has them';

export const answers = section({
  title: words('what is seen or asked, in a few words', 'A swarm in my garden').describe('It stands above the answer.'),
  asks: list(words('a few words as people type them', 'swarm in my yard'))
    .min(1, { error: 'at least one line of words as people type them' })
    .describe(
      'Ways to type it, besides the title. The answer shows where all words of one way are typed, and hardly a word more. Endings, order and small slips of spelling do not matter.',
    ),
  page: words('an address such as /pests/american-foulbrood/#what-to-do-today').describe('The page that answers, or a heading of it.'),
  answer: words(hint, 'Keep back, do not spray, and call the swarm line.')
    .refine((text) => !/\d/.test(text), { error: hint })
    .describe('It repeats what the page says, and adds no rule.'),
  line: oneOf(['emergency', 'poison']).optional().describe('A button that calls the line of `club.yaml`.'),
  ask: duty().optional().describe('A button that calls the contact with this duty. A club without the duty has no button.'),
  when: when()
    .optional()
    .describe('The part of the year in which the search page lists the question before anything is typed. Most are never listed.'),
  ...holding,
  ...shelf,
});

export type Answer = z.infer<typeof answers>;
