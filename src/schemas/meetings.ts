/* meetings/: the club's meetings, in local time. */
import { z } from 'astro/zod';
import { clock, day, dayAndReason, duty, id, list, oneOf, reviewIfAny, section, shelf, words, WORK, yesNo, idOf } from './fields.ts';

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
  address: words('the street address, as a driver types it, such as "00 Invented Road, Tamarack County"')
    .optional()
    .describe('The street address of the place: on the page and in the calendar files. Leave it out for a yard that nobody should find.'),
  district: id('a district of club.yaml, such as valley').optional(),
  kind: oneOf(['meeting', 'yard day', 'course', 'annual meeting', 'show']),
  bring: list(words('one thing to bring', 'A veil')).optional().describe('What members should bring.'),
  ask: duty().describe('Whom to call if the weather is doubtful.'),
  'called-off-by': words('the hour and how, such as "08:00 on the day; call the meetings line"')
    .optional()
    .describe('When a yard day is called off at the latest.'),
  'called-off': dayAndReason('the day it was said and why, such as "2026-05-15, it rains all weekend"')
    .optional()
    .describe('It does not take place: said on its page, in every list and in the calendar files.'),
  yard: yesNo().describe('Hives are opened there.'),
  work: list(oneOf(WORK)).optional().describe('What the hands do: the cautions follow from it.'),
  reads: list(idOf('articles')).optional().describe('What members may read before.'),
  lists: list(idOf('checklists')).optional().describe('Checklists to bring, printed or on a phone.'),
  taught: list(words('one thing that was taught, in a sentence', 'A wash finds more mites than a sugar roll.'))
    .optional()
    .describe('After the meeting: what it taught. It stays on the page.'),
  ...reviewIfAny,
  ...shelf,
});

export type Meeting = z.infer<typeof meetings>;
