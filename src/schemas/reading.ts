/* reading/: what is worth reading, and which library lends it. */
import { z } from 'astro/zod';
import { list, number, oneOf, review, section, shelf, words, yesNo } from './fields.ts';

export const reading = section({
  title: words('the title'),
  author: words('who wrote it'),
  year: number('a year such as 2019').int({ error: 'a year such as 2019' }),
  edition: words('which edition').optional(),
  kind: oneOf(['reference', 'starter', 'next step', 'periodical', 'free leaflet']),
  level: oneOf(['first year', 'some seasons', 'any']),
  /** What it is good for and what is out of date in it, in one or two sentences. */
  worth: words('what it is good for, in one or two sentences'),
  /** The year its advice on mites was written, if it gives any. */
  'mite-advice-of': number('a year such as 2012').int({ error: 'a year such as 2012' }).optional(),
  /** 13 digits; the check digit is tested. */
  isbn: z.string({ error: 'an ISBN in quotes' }).regex(/^97[89][0-9-]{10,14}$/, { error: 'an ISBN of 13 digits in quotes' }).optional(),
  /** Which library lends it. */
  lends: words('which library lends it').optional(),
  subjects: list(words('a subject')).optional(),
  /** Made up for a demonstration. */
  invented: yesNo().optional(),
  ...review,
  ...shelf,
});

export type Reading = z.infer<typeof reading>;
