/* meetings/: when the club meets. Times are the hall's own clock. */
import { z } from 'astro/zod';
import { clock, day, duty, id, list, oneOf, review, section, shelf, words, WORK, yesNo, idOf } from './fields.ts';

export const meetings = section({
  title: words('the subject of the evening'),
  summary: words('what it is about, in one sentence'),
  /** The day it is held. */
  day: day(),
  /** The last day, when it runs over several. */
  'last-day': day().optional(),
  /** Start and finish in the hall; leave both out for a whole day. */
  start: clock().optional(),
  finish: clock().optional(),
  /** The day of the week, if you like to write it: it is compared with the date. */
  weekday: oneOf(['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday']).optional(),
  place: words('the hall or yard, by name'),
  district: id().optional(),
  kind: oneOf(['meeting', 'yard day', 'course', 'annual meeting', 'show']),
  /** What to bring. */
  bring: list(words('one thing to bring')).optional(),
  /** Whom to ring if the weather is doubtful. */
  ask: duty(),
  /** The hour by which a yard day is called off. */
  'called-off-by': words('such as "08:00 on the day; ring the meetings line"').optional(),
  yard: yesNo(),
  work: list(oneOf(WORK)).optional(),
  reads: list(idOf('articles')).optional(),
  ...review,
  ...shelf,
});

export type Meeting = z.infer<typeof meetings>;
