/* club.yaml: the publisher of the almanac, its place and districts, and the contacts of members. */
import { z } from 'astro/zod';
import { languages, tongues } from '../../shared/country/language.ts';
import { climate, observedYear, season } from './climate.ts';
import { collectionNames } from './collections.ts';
import { clock, day, id, list, number, oneOf, section, words, yesNo } from './fields.ts';
import { land } from './where.ts';

export const phone = () =>
  z.string({ error: 'a telephone number in quotes, such as "330-555-0142"' }).regex(/^\+?[0-9][0-9 ()-]*$/, {
    error: 'a telephone number in quotes, such as "330-555-0142"',
  });

/** After "a" and "de", "el" becomes one word with them: al, del. */
const said = (example: string) =>
  words(`a name with its article, such as "${example}"`, example).refine((name) => !/^el\s/i.test(name), {
    error: 'a name that does not begin with "el", because pages put "a" before it: "la oficina ...", "su médico", "quien ..."',
  });

const contact = section({
  duty: id('one word for what they do, such as inspector').describe(
    'Pages point at the contact by this word: inspector, extension, swarm-line, mentor ...',
  ),
  name: words('an office or duty, such as "County extension office"').describe('The office or duty as members read it. Never a person.'),
  'said-in': section({ en: said('the county extension office').optional(), es: said('la oficina de extensión').optional() })
    .optional()
    .describe(
      'The office or duty within a sentence, with its article: for a club that writes Spanish, and for each language of also-in. "es: la oficina de extensión" makes "llame a la oficina de extensión".',
    ),
  ask: words('what members may ask them, in a few words', 'Suspected foulbrood, moving bees, registering hives'),
  phone: phone()
    .optional()
    .describe('It is shown to everyone who reads the almanac; that of a person, until the day on which consent ends.'),
  email: z.email({ error: 'an address such as help@example.org' }).optional(),
  web: z.url({ protocol: /^https?$/, error: 'a whole address such as https://example.org/bees' }).optional(),
  hours: words('when they answer, such as "Monday to Friday, 08:00 to 17:00"').optional(),
  languages: list(words('a language, such as Spanish')).optional().describe("Languages they speak besides the club's own."),
  district: id('the id of a district, such as valley').optional().describe('Only for this district; leave out for all.'),
  'public-office': yesNo().optional().describe('A public office needs no consent.'),
  agreed: day().optional().describe('The day a person behind the duty agreed in writing.'),
  until: day().optional().describe('The day that consent ends: from that day on the number is shown nowhere.'),
});

const district = section({
  id: id('one short lower-case word, such as valley').describe('Used in addresses and references.'),
  name: words('as in "in ...", such as "the valley"'),
  'later-by-days': number('a whole number of days', 9)
    .int({ error: 'a whole number of days' })
    .min(-60, { error: 'at most 60 days earlier' })
    .max(60, { error: 'at most 60 days later' })
    .describe(
      'How many days later than the main district; 0 for the main one. Of a district with normals or observed dates of its own, for the days that these do not give.',
    ),
  'fall-later-by-days': number('a whole number of days', 9)
    .int({ error: 'a whole number of days' })
    .min(-60, { error: 'at most 60 days earlier' })
    .max(60, { error: 'at most 60 days later' })
    .optional()
    .describe('The same for the days of fall: a cold place is later in spring and earlier in fall. As in spring where it is left out.'),
  basis: words('where the number of days comes from', 'Bloom notes of members on the hill, 2019 to 2025'),
  climate: climate.optional().describe('Its own normals, and what its own members saw.'),
  observed: list(observedYear).optional(),
});

export const WORD_SETS = ['us', 'uk'] as const;
export const UNIT_SYSTEMS = ['us', 'metric'] as const;

export const number24 = section({
  number: phone(),
  name: words('what the line is called', 'Emergency number'),
  source: id('the name of a file in sources/', 'fcc-911').describe('The published source of the number.'),
});

export const club = section({
  id: id('one word that never changes, such as tamarack-county').describe('Never changes: calendars and ticks are filed under it.'),
  name: words('the name of the club', 'Tamarack County Beekeepers'),
  almanac: words('the name of the almanac', 'The Tamarack Almanac').describe('Printed at the head of every page.'),
  demonstration: yesNo().describe('true marks every page as an invented club and keeps search engines away.'),
  place: words('county and state or land', 'Tamarack County, Ohio'),
  language: oneOf(languages).describe('The language of the club, as its country writes it: how days, hours and words are written.'),
  'also-in': list(oneOf(tongues))
    .optional()
    .describe('Other languages in which readers are offered the pages that are translated, such as es. Each page links to the other.'),
  words: oneOf(WORD_SETS).describe('Fall or autumn, sticky board or varroa board.'),
  hemisphere: oneOf(['north', 'south']),
  'time-zone': words('a zone such as America/New_York')
    .refine(zoneExists, { error: 'a time zone of the IANA list, such as America/New_York' })
    .describe("The zone that the hall's clock is in."),
  units: oneOf(UNIT_SYSTEMS).describe('Which units come first; the other ones follow in brackets.'),
  emergency: number24.describe('The line for someone who is unwell, and its published source.'),
  poison: number24.optional().describe('The poison line, and its published source.'),
  mistakes: z.email({ error: 'an address such as almanac@example.org' }).describe('A mail address for mistakes found by readers.'),
  site: z
    .url({ protocol: /^https?$/, error: 'a whole address such as https://bees.example.org/' })
    .optional()
    .describe('The address of the web site. `build` takes it where `--site` and `--base` are left out.'),
  districts: list(district)
    .min(1, { error: 'at least one district' })
    .describe('The first is the main one: it shows where a reader chose none.'),
  season: season.describe('The dates of the year here, and where they come from.'),
  climate: climate.optional().describe('Monthly normals of the main district, and what is published about it.'),
  observed: list(observedYear).optional().describe('What members of the main district saw, a section a year.'),
  contacts: list(contact).min(1, { error: 'at least one contact' }).describe('Whom members may ask, a duty each.'),
  review: words('how pages are reviewed', 'Each page is compared with its sources once a year by the duty named on it.').describe(
    'Two or three sentences, printed on the About page.',
  ),
  'meeting-place': words('where the club usually meets', 'Alder Grange Hall').optional(),
  'meeting-time': clock().optional(),
  land: land().optional().describe('Where the club lies. The books that hold there follow from it.'),
  books: list(id('the name of a book, such as common'))
    .optional()
    .describe('The books the club stands on, the widest first; only where they are not those that follow from `land:`.'),
  'largest-file-mb': number('a whole number of megabytes', 8)
    .int({ error: 'a whole number of megabytes' })
    .min(1, { error: 'at least 1' })
    .max(50, { error: 'at most 50' })
    .optional()
    .describe('How large a PDF in files/ may be. 5 where it is left out.'),
  'leaves-out': list(leftOut())
    .optional()
    .describe('What this club does without: folders, such as forage, or single entries of a book, such as bulletins/small-hive-beetle.'),
  'stands-in': z
    .record(id(), id(), { error: 'indented lines, each "duty: other-duty"' })
    .optional()
    .describe('Who answers for a duty that the club does not have, such as `swarm-line: mentor`.'),
});

/** A kind, or one entry of it. */
function leftOut() {
  const hint = `one of: ${collectionNames.join(', ')}; or one entry, such as bulletins/small-hive-beetle`;
  const isKnown = (text: string): boolean =>
    (collectionNames as readonly string[]).includes(text.split('/')[0]!) && /^[a-z]+(?:\/[a-z0-9-]+)?$/.test(text);
  return z
    .string({ error: hint })
    .refine(isKnown, { error: hint })
    .meta({ examples: ['forage'] });
}

function zoneExists(zone: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: zone });
    return true;
  } catch {
    return false;
  }
}

export type Club = z.infer<typeof club>;
export type Contact = z.infer<typeof contact>;
