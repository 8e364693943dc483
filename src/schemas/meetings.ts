/* meetings/: the club's meetings, in local time. */
import { z } from 'astro/zod';
import { clock, day, duty, id, list, oneOf, reviewIfAny, section, shelf, words, WORK, yesNo, idOf } from './fields.ts';

export const meetings = section({
  title: words('the subject of the evening', 'Queens and swarms'),
  summary: words('what it is about, in one sentence', 'How to read queen cells, and what to do with a swarm.'),
  day: day().describe('The day it is held.'),
  'last-day': day().optional().describe('The last day, when it runs over several.'),
  start: clock().optional().describe('By the clock of the hall; leave start and finish out for a whole day.'),
  finish: clock().optional().describe('When it ends.'),
  weekday: oneOf(['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'])
    .optional()
    .describe('The day of the week, if you like to write it: it is compared with the date.'),
  place: words('the hall or yard, by name', 'Alder Grange Hall'),
  district: id('a district of club.yaml, such as valley').optional(),
  kind: oneOf(['meeting', 'yard day', 'course', 'annual meeting', 'show']),
  bring: list(words('one thing to bring', 'A veil')).optional().describe('What members should bring.'),
  ask: duty().describe('Whom to call if the weather is doubtful.'),
  'called-off-by': words('the hour and how, such as "08:00 on the day; call the meetings line"')
    .optional()
    .describe('When a yard day is called off at the latest.'),
  yard: yesNo().describe('Hives are opened there.'),
  work: list(oneOf(WORK)).optional().describe('What the hands do: the cautions follow from it.'),
  reads: list(idOf('articles')).optional().describe('What members may read before.'),
  ...reviewIfAny,
  ...shelf,
});

export type Meeting = z.infer<typeof meetings>;
