/* reading/: recommended reading, and the library that lends it. */
import { z } from 'astro/zod';
import { day, list, number, oneOf, review, section, shelf, webAddress, words, yesNo } from './fields.ts';
import { holding } from './where.ts';

export const reading = section({
  title: words('the title', 'One box, one year'),
  author: words('who wrote it', 'A member of the club'),
  year: number('a year such as 2019', 2019)
    .int({ error: 'a year such as 2019' })
    .optional()
    .describe('Leave it out where the document carries no date.'),
  publisher: words('who published it, where that is not the author', 'US Department of Agriculture').optional(),
  edition: words('which edition', 'second').optional(),
  kind: oneOf(['reference', 'starter', 'next step', 'periodical', 'free leaflet']),
  level: oneOf(['first year', 'some seasons', 'any']),
  worth: words(
    'what it is good for, in one or two sentences',
    'The first season month by month; its advice on mites is out of date.',
  ).describe('Say as well what is out of date in it.'),
  'mite-advice-of': number('a year such as 2012', 2012)
    .int({ error: 'a year such as 2012' })
    .optional()
    .describe('The year its advice on mites was written, if it gives any.'),
  url: webAddress().optional().describe('Where it can be read.'),
  opened: day().optional().describe('The day the address was last opened.'),
  free: yesNo().optional().describe('Whether everybody can read it without paying.'),
  format: oneOf(['PDF', 'web page', 'paper']).optional().describe('A PDF can be kept on a phone for the yard; a web page needs a signal.'),
  'written-for': words('the climate or land it was written for', 'The north-eastern United States').optional(),
  isbn: z
    .string({ error: 'an ISBN in quotes' })
    .regex(/^97[89][0-9-]{10,14}$/, { error: 'an ISBN of 13 digits in quotes' })
    .refine((text) => !/^97[89][0-9-]{10,14}$/.test(text) || lastDigitFits(text), {
      error: 'the ISBN as it is printed: 13 digits, of which one here is wrong',
    })
    .optional()
    .describe('13 digits, the last of which is tested.')
    .meta({ examples: ['978-0-00-000000-2'] }),
  lends: words('which library lends it', 'County library').optional(),
  subjects: list(words('a subject', 'queens')).optional(),
  invented: yesNo().optional().describe('Made up for a demonstration.'),
  ...holding,
  ...review,
  ...shelf,
});

/** ISBN check digit: digits weighted 1 and 3 in turn add up to a multiple of ten (ISO 2108). */
function lastDigitFits(isbn: string): boolean {
  const digits = [...isbn.replaceAll('-', '')].map(Number);
  return digits.length === 13 && digits.reduce((sum, digit, index) => sum + digit * (index % 2 === 0 ? 1 : 3), 0) % 10 === 0;
}

export type Reading = z.infer<typeof reading>;
