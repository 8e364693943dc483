/*
 * The questions of `new -- club`, in their order: words, a proposed answer, and the check of what is typed. The terminal and the answers
 * file ask the same ones.
 */
import { nearest, booksOf, halfOf, landsWithBooks, offersOf, stationsOf, titleOf, zonesOf, type Half } from './land.ts';
import type { Day } from '../../../shared/days/day.ts';
import type { Offers } from '../../schemas/book.ts';
import type { Station } from '../../schemas/stations.ts';
import {
  agreedDay,
  dayToCome,
  degrees,
  hours,
  land,
  lineChoice,
  mail,
  name,
  oneWord,
  phoneNumber,
  position,
  reach,
  schema,
  twelve,
  twelveHighs,
  webAddress,
  words,
  type Read,
} from './answer-values.ts';
import { club } from '../../schemas/club.ts';
import { KNOWN_DUTIES } from './duties.ts';

/** Answers by their key, as they stand in an answers file. */
export type Given = Readonly<Record<string, string>>;
export type Context = { today: Day; zone: string };

export type Question = {
  key: string;
  /** Questions of one part share its number in the terminal. */
  part: string;
  ask: (given: Given) => string;
  /** Taken by Enter. In a file, taken where the answer is missing, unless it must be confirmed. */
  propose?: (given: Given, context: Context) => string | undefined;
  mustConfirm?: true;
  /** When it is not asked in the terminal: the proposed answer is taken, and told at the end. */
  silent?: (given: Given, context: Context) => boolean;
  asked?: (given: Given) => boolean;
  read: (typed: string, given: Given, context: Context) => Read;
};

const half = (given: Given): Half => given.hemisphere as Half;
export const offers = (given: Given): Offers => offersOf(booksOf(given.land!, half(given)));
const isOwn = (key: string) => (given: Given) => given[key] === 'own';
const offeredLine = (given: Given, line: 'emergency' | 'poison'): string => {
  const { number, name: called } = offers(given)[line]!;
  return `The book of your country has ${number}: ${called}.`;
};

/** Nobody wants the weather of a place further away than this by default. A choice of ours. */
const NEAR_KM = 150;
const PARTS = 'parts of the year';

export const townOf = (given: Given) => {
  const [latitude, longitude] = (given.town ?? '').split(',').map(Number);
  return latitude === undefined || longitude === undefined ? null : { latitude, longitude };
};

/** Stations of the land with their distance, where the town is known. */
export function stationsFor(given: Given): { station: Station; km: number | null }[] {
  const town = townOf(given);
  const all = stationsOf(given.land!);
  return town ? nearest(all, town) : all.map((station) => ({ station, km: null }));
}

const stationLine = ({ station, km }: { station: Station; km: number | null }): string =>
  `   ${station.id}: ${station.name}, ${station.period}${km === null ? '' : `, ${km} km away`}`;

export function phasesBook(given: Given): string | null {
  const books = booksOf(given.land!, half(given)).filter((book) => offersOf([book]).phases);
  const last = books.at(-1);
  return last ? titleOf(last) : null;
}

export const QUESTIONS: readonly Question[] = [
  { key: 'name', part: 'name', ask: () => 'What is the club called?', read: name },
  {
    key: 'land',
    part: 'land',
    ask: () =>
      `In which land is it? Write its code of ISO 3166: NZ-WKO for Waikato in New Zealand, GB-DEV for Devon, US-KY for Kentucky.\n   There are books for ${landsWithBooks().join(', ')}; a part of a country uses those of its country.`,
    read: (typed) => land(typed),
  },
  {
    key: 'hemisphere',
    part: 'land',
    ask: () => 'On which side of the equator: north or south?',
    asked: ({ land }) => halfOf(land!) === null,
    read: schema(club.shape.hemisphere),
  },
  {
    key: 'place',
    part: 'place',
    ask: () => 'Which county or region, as members call it?',
    read: words('the county or region, such as "Waikato, New Zealand"'),
  },
  {
    key: 'site',
    part: 'web',
    ask: () => 'At which web address will the almanac be? Enter if you do not know yet.',
    propose: () => '',
    silent: () => true,
    read: webAddress,
  },
  { key: 'mistakes', part: 'web', ask: () => 'To which mail address may readers report mistakes?', read: mail },
  {
    key: 'time-zone',
    part: 'time zone',
    ask: ({ land }) => `Which time zone is the hall in? In this land: ${zonesOf(land!).join(', ')}.`,
    propose: ({ land }, { zone }) => {
      const zones = zonesOf(land!);
      return zones.includes(zone) ? zone : zones.length === 1 ? zones[0] : undefined;
    },
    silent: ({ land }, { zone }) => zonesOf(land!).includes(zone) || zonesOf(land!).length === 1,
    read: schema(club.shape['time-zone']),
  },
  {
    key: 'language',
    part: 'words and units',
    ask: () => `Which English? ${club.shape.language.options.join(', ')}.`,
    propose: (given) => offers(given).language ?? 'en-GB',
    silent: (given) => offers(given).language !== undefined,
    read: schema(club.shape.language),
  },
  {
    key: 'words',
    part: 'words and units',
    silent: () => true,
    ask: () => 'Which words: us (fall, sticky board) or uk (autumn, varroa board)?',
    propose: (given) => offers(given).words ?? (given.language === 'en-US' ? 'us' : 'uk'),
    read: schema(club.shape.words),
  },
  {
    key: 'units',
    part: 'words and units',
    ask: () => 'Which units come first: us (pounds, quarts) or metric (kilograms, litres)?',
    propose: (given) => offers(given).units ?? 'metric',
    silent: (given) => offers(given).units !== undefined,
    read: schema(club.shape.units),
  },
  {
    key: 'emergency',
    part: 'emergency lines',
    ask: (given) => `${offeredLine(given, 'emergency')} Is that the number for someone who is unwell? yes, or own for another.`,
    asked: (given) => offers(given).emergency !== undefined,
    propose: () => 'yes',
    mustConfirm: true,
    read: lineChoice(['yes', 'own']),
  },
  ...ownSource('emergency', (given) => offers(given).emergency === undefined || given.emergency === 'own', [
    { key: 'emergency-number', ask: 'Which number do members call when someone is unwell?', read: phoneNumber(2) },
  ]),
  {
    key: 'poison',
    part: 'emergency lines',
    ask: (given) => `${offeredLine(given, 'poison')} Is that the line for poisons? yes, or none.`,
    asked: (given) => offers(given).poison !== undefined,
    propose: () => 'yes',
    mustConfirm: true,
    read: lineChoice(['yes', 'none']),
  },
  {
    key: 'inspector',
    part: 'inspection office',
    ask: () => 'Which office must hear of a notifiable disease of bees? Its name as members read it.',
    read: words('the name of the office, such as "Apiary inspection office"'),
  },
  {
    key: 'inspector-reach',
    part: 'inspection office',
    ask: () => 'Its number, mail or web address?',
    read: reach,
  },
  {
    key: 'contact-duty',
    part: 'contact',
    ask: () => `One word for the duty of the other contact: ${Object.keys(KNOWN_DUTIES).join(', ')}, or your own word.`,
    propose: () => 'mentor',
    silent: () => true,
    read: oneWord,
  },
  {
    key: 'contact-name',
    part: 'contact',
    ask: () => 'Whom else may members ask, such as the mentors? The duty or the group, never the name of a person.',
    propose: (given) => KNOWN_DUTIES[given['contact-duty']!]?.name,
    read: words('the duty as members read it, such as "Mentors of the club"'),
  },
  { key: 'contact-reach', part: 'contact', ask: () => 'Its number or mail address?', read: reach },
  {
    key: 'contact-agreed',
    part: 'contact',
    ask: () => 'On which day did the person behind it agree in writing to be shown? It is shown for a year from that day.',
    propose: (_, { today }) => today,
    mustConfirm: true,
    read: agreedDay,
  },
  { key: 'meeting-day', part: 'meeting', ask: () => 'On which day does the club meet next, such as 2027-01-12?', read: dayToCome },
  {
    key: 'meeting-hours',
    part: 'meeting',
    ask: () => 'From when to when, such as 19:00 to 21:00? Enter for a whole day.',
    propose: () => '',
    read: hours,
  },
  { key: 'meeting-place', part: 'meeting', ask: () => 'In which hall or yard?', read: words('the hall or yard, such as "Village hall"') },
  {
    key: 'meeting-title',
    part: 'meeting',
    silent: () => true,
    ask: () => 'What is the meeting about?',
    propose: () => 'Club meeting',
    read: words('the subject, such as "Queens and swarms"'),
  },
  {
    key: 'town',
    part: 'climate',
    ask: () =>
      'Where is the nearest town? Its latitude and longitude to a tenth, such as 38.2, -85.7, with a minus in the south and in the west. They are not kept. Enter to leave it out.',
    asked: (given) => stationsOf(given.land!).length > 0,
    propose: () => '',
    read: position,
  },
  {
    key: 'climate',
    part: 'climate',
    ask: (given) => {
      const stations = stationsFor(given);
      const most = townOf(given) ? 5 : stations.length;
      return [
        `What are the dates of the year here worked out from?${stations.length > 0 ? ' The monthly normals of a station:' : ''}`,
        ...stations.slice(0, most).map(stationLine),
        `   ${PARTS}: the guess of the books${phasesBook(given) ? ` (${phasesBook(given)})` : ''}, until you have your own notes`,
        '   own: twelve lows and twelve highs that you type',
      ].join('\n');
    },
    propose: (given) => {
      const [first] = stationsFor(given);
      return typeof first?.km === 'number' && first.km <= NEAR_KM ? first.station.id : PARTS;
    },
    // Without a station there is one answer that needs no figures.
    silent: (given) => stationsOf(given.land!).length === 0 && phasesBook(given) !== null,
    read: (typed, given) => {
      const choices = [...stationsOf(given.land!).map(({ id }) => id), ...(phasesBook(given) ? [PARTS] : []), 'own'];
      return lineChoice(choices)(typed);
    },
  },
  ...ownSource('climate', isOwn('climate'), [
    { key: 'climate-scale', ask: 'In which degrees: F or C?', read: schema(club.shape.climate.unwrap().shape.scale) },
    { key: 'climate-lows', ask: 'The normals of the daily low, twelve numbers from January to December?', read: twelve },
    { key: 'climate-highs', ask: 'The normals of the daily high, twelve numbers from January to December?', read: twelveHighs },
    { key: 'climate-latitude', ask: 'At which latitude? South of the equator with a minus.', read: degrees },
    { key: 'climate-years', ask: 'Of which years, such as 1991-2020?', read: words('the years of the normals, such as 1991-2020') },
  ]),
];

/** Questions for a value that is in no book, and for its published source. */
function ownSource(
  key: 'emergency' | 'climate',
  asked: (given: Given) => boolean,
  own: readonly { key: string; ask: string; read: Question['read'] }[],
): Question[] {
  const part = key === 'climate' ? 'climate' : 'emergency lines';
  const source = [
    { key: `${key}-published-by`, ask: 'Who publishes that?', read: words('the body that publishes it, such as "Met Office"') },
    { key: `${key}-published-at`, ask: 'At which address, or in which report?', read: words('where it is published, such as an address') },
  ];
  return [...own, ...source].map(({ ask, ...question }) => ({ ...question, part, asked, ask: () => ask }));
}
