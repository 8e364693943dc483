/* forage/: plants that bees visit here. */
import type { z } from 'astro/zod';
import { day, list, monthDay, number, oneOf, review, section, shelf, words, idOf } from './fields.ts';
import { holding } from './where.ts';

export const forage = section({
  title: words('the plain name', 'Black locust'),
  botanical: words('the botanical name', 'Robinia pseudoacacia'),
  worth: words('what it is worth to bees, in one sentence', 'The first heavy nectar of the year.'),
  gives: list(oneOf(['pollen', 'nectar', 'honeydew'])),
  bloom: section({
    'degree-days': number(undefined, 450),
    scale: oneOf(['F', 'C']),
    base: number(undefined, 50),
    from: monthDay('a month and day such as "01-01", in quotes', '01-01').describe('The day the sum starts.'),
    cap: number(undefined, 86).optional().describe('The temperature above which a degree counts no more: for modified, allowed for sine.'),
    method: oneOf(['simple', 'floored', 'sine', 'modified', 'maximum', 'not stated']),
    stage: oneOf(['first bloom', 'full bloom']),
    place: words('where it was observed', 'Wooster, Ohio'),
    source: idOf('sources'),
    certainty: oneOf(['settled', 'likely', 'contested', 'habit', 'memory']),
  })
    .optional()
    .describe('Degree-days at first bloom, with all that makes the number mean something.'),
  observed: list(
    section({
      year: number('a year such as 2024', 2024).int({ error: 'a year such as 2024' }),
      first: day().describe('The first day in bloom.'),
      last: day().optional().describe('The last day in bloom.'),
    }),
  )
    .optional()
    .describe('What members of the main district saw, a line a year.'),
  ...holding,
  ...review,
  ...shelf,
});

export type Forage = z.infer<typeof forage>;
