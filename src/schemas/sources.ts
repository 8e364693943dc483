/* sources/: what was opened and read, once each. Pages and figures name the file. */
import { z } from 'astro/zod';
import { day, number, oneOf, section, words, withdrawn } from './fields.ts';

export const sources = section({
  /** Who wrote or published it. */
  who: words('who wrote or published it'),
  /** Its title; leave out where only the body and year are known. */
  title: words('its title').optional(),
  year: number('a year such as 2013').int({ error: 'a year such as 2013' }).min(1800, { error: 'a year such as 2013' }).max(2199, { error: 'a year such as 2013' }).optional(),
  /** Journal, volume and page, report number, or address. */
  where: words('journal and page, report number or address').optional(),
  /** The land or region it speaks of. */
  place: words('the land or region it speaks of').optional(),
  kind: oneOf(['paper', 'book', 'extension', 'agency', 'law', 'standard', 'club', 'habit', 'label', 'handbook']),
  /** How it was seen: itself, as quoted by another, or only from memory. */
  seen: oneOf(['itself', 'quoted', 'memory']),
  /** The day it was last opened. */
  opened: day().optional(),
  /** Taken back or found wrong: every row that rests on it goes with it. */
  withdrawn: withdrawn().optional(),
});

export type Source = z.infer<typeof sources>;
