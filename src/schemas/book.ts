/* book.yaml: a book is a folder of the same shape as a club's, which many clubs stand on. */
import { z } from 'astro/zod';
import { languages, tongues } from '../../shared/country/language.ts';
import { phaseSpans } from './climate.ts';
import { number24, UNIT_SYSTEMS, WORD_SETS } from './club.ts';
import { day, id, oneOf, section, words } from './fields.ts';
import { where } from './where.ts';

export const book = section({
  id: id('the name of its folder, such as us-oh'),
  title: words('what it is called, such as "The common book"'),
  edition: day().describe('The day of its last change.'),
  place: where().describe('Where it holds: anywhere, north, south, or a code of ISO 3166.'),
  language: oneOf(tongues).optional().describe('The language of its own words. English where it is left out.'),
  editors: words('the office that edits it, such as "editors of the common book"').describe("Never a person's name."),
  mistakes: z
    .email({ error: 'an address such as almanac@example.org' })
    .optional()
    .describe('A mail address for mistakes found by readers. Without it they write to the club.'),
  duties: z
    .record(id('a duty'), words('such as "your doctor"'))
    .optional()
    .describe('What a sentence says for a duty that no contact of the club has.'),
  offers: section({
    language: oneOf(languages).optional(),
    words: oneOf(WORD_SETS).optional(),
    units: oneOf(UNIT_SYSTEMS).optional(),
    emergency: number24.optional(),
    poison: number24.optional(),
    phases: phaseSpans.optional().describe("The parts of a hive's year as a guess for a place that has no normals and no notes."),
  })
    .optional()
    .describe('What a new club here is offered; each club confirms it in its own club.yaml.'),
});

export type Offers = NonNullable<z.infer<typeof book>['offers']>;
