/* sources/: publications that were opened and read. Pages and figures name the file. */
import { z } from 'astro/zod';
import { day, number, oneOf, section, webAddress, words, withdrawn } from './fields.ts';
import { holding } from './where.ts';

export const sources = section({
  who: words('who wrote or published it', 'Ohio State University Extension'),
  title: words('its title', 'Buckeye yard and garden notes').optional().describe('Leave out where only the body and the year are known.'),
  year: number('a year such as 2013', 2013)
    .int({ error: 'a year such as 2013' })
    .min(1800, { error: 'a year such as 2013' })
    .max(2199, { error: 'a year such as 2013' })
    .optional(),
  where: words('journal and page, report number or address', 'Bulletin 1054, page 12').optional(),
  publisher: words('who published it, where that is not who wrote it', 'US Environmental Protection Agency').optional(),
  page: words('the page, table or section that was read', 'Page 12').optional(),
  url: webAddress().optional().describe('Where its publisher or a public archive keeps it. Search for one before you leave this out.'),
  place: words('the land or region it speaks of', 'Ohio').optional(),
  kind: oneOf(['paper', 'book', 'extension', 'agency', 'law', 'standard', 'club', 'habit', 'label', 'handbook']),
  seen: oneOf(['itself', 'quoted', 'memory']).describe('How it was seen: itself, as quoted by another, or only from memory.'),
  opened: day().optional().describe('The day it was last opened.'),
  ...holding,
  withdrawn: withdrawn().optional().describe('Taken back or found wrong: every row that rests on it goes with it.'),
});

export type Source = z.infer<typeof sources>;
