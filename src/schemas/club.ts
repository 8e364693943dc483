/* club.yaml: who publishes the almanac, where, for which districts, and whom a member may ring. */
import { z } from 'astro/zod';
import { climate, observedYear, season } from './climate.ts';
import { KINDS } from './kinds.ts';
import { clock, day, duty, id, list, number, oneOf, section, words, yesNo } from './fields.ts';

export const PHASES = ['winter-rest', 'build-up', 'swarming', 'main-flow', 'dearth', 'fall-preparation'] as const;

const phone = () =>
  z.string({ error: 'a telephone number in quotes, such as "330-555-0142"' }).regex(/^\+?[0-9][0-9 ()-]*$/, {
    error: 'a telephone number in quotes, such as "330-555-0142"',
  });

const contact = section({
  /** What the contact is for: `inspector`, `extension`, `swarm-line`, `mentor` ... Pages point at it by this word. */
  duty: duty(),
  /** The office or duty as members read it. Never a person. */
  name: words('an office or duty, such as "County extension office"'),
  /** What to ask them, in a few words. */
  ask: words('what members may ask them, in a few words'),
  phone: phone().optional(),
  email: z.email({ error: 'an address such as help@example.org' }).optional(),
  web: z.url({ error: 'a whole address such as https://example.org/bees' }).optional(),
  /** When the phone is answered. */
  hours: words('when they answer, such as "Monday to Friday, 08:00 to 17:00"').optional(),
  /** Languages they speak besides the club's own. */
  languages: list(words('a language, such as Spanish')).optional(),
  /** Only for this district; leave out for all. */
  district: id().optional(),
  /** A public office needs no consent. */
  'public-office': yesNo().optional(),
  /** The day a person behind the duty agreed in writing. */
  agreed: day().optional(),
  /** The day that consent ends. */
  until: day().optional(),
});

const district = section({
  /** Used in addresses and references. */
  id: id('one short lower-case word, such as valley'),
  /** As in "in the valley". */
  name: words('as in "in ...", such as "the valley"'),
  /** How many days later than the main district; 0 for the main one. Of a district with normals or observed dates of its own, for the days that these do not give. */
  'later-by-days': number().int({ error: 'a whole number of days' }).min(-60, { error: 'at most 60 days earlier' }).max(60, { error: 'at most 60 days later' }),
  /** The same for the days of fall: a cold place is later in spring and earlier in fall. As in spring where it is left out. */
  'fall-later-by-days': number().int({ error: 'a whole number of days' }).min(-60, { error: 'at most 60 days earlier' }).max(60, { error: 'at most 60 days later' }).optional(),
  /** Where the number of days comes from. */
  basis: words('where the number of days comes from'),
  /** Its own normals, and what its own members saw. */
  climate: climate.optional(),
  observed: list(observedYear).optional(),
});

const number24 = section({
  number: phone(),
  /** What the line is called. */
  name: words('what the line is called'),
  /** The published source of the number: a file in sources/. */
  source: id('the name of a file in sources/'),
});

export const club = section({
  /** Never changes: calendars and ticks are filed under it. */
  id: id('one word that never changes, such as tamarack-county'),
  /** The club's name as members say it. */
  name: words('the name of the club'),
  /** The name of the almanac, printed at the head of every page. */
  almanac: words('the name of the almanac'),
  /** true marks every page as an invented club and keeps search engines away. */
  demonstration: yesNo(),
  /** The county, the state or land. */
  place: words('county and state or land'),
  language: oneOf(['en-US', 'en-GB', 'en-AU', 'en-NZ', 'en-CA', 'en-IE', 'en-ZA']),
  /** us or uk: fall or autumn, sticky board or varroa board. */
  words: oneOf(['us', 'uk']),
  hemisphere: oneOf(['north', 'south']),
  /** The zone that the hall's clock is in, such as America/New_York. */
  'time-zone': words('a zone such as America/New_York').refine(zoneExists, { error: 'a time zone of the IANA list, such as America/New_York' }),
  /** Which units come first; the other ones follow in brackets. */
  units: oneOf(['us', 'metric']),
  /** The line for someone who is unwell, and its published source. */
  emergency: number24,
  /** The poison line, and its published source. */
  poison: number24.optional(),
  /** A mail address for mistakes found by readers. */
  mistakes: z.email({ error: 'an address such as almanac@example.org' }),
  /** The first is the main one: it shows where a reader chose none. */
  districts: list(district).min(1, { error: 'at least one district' }),
  season,
  /** Monthly normals of the main district, and what is published about it. */
  climate: climate.optional(),
  /** What members of the main district saw, a section a year. */
  observed: list(observedYear).optional(),
  contacts: list(contact).min(1, { error: 'at least one contact' }),
  /** How the almanac is reviewed, in two or three sentences. Printed on the About page. */
  review: words('how pages are reviewed'),
  'meeting-place': words('where the club usually meets').optional(),
  'meeting-time': clock().optional(),
  /** Folders this club does without, such as forage; any other that is missing is taken for a mistake. */
  'leaves-out': list(oneOf(KINDS)).optional(),
});

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
