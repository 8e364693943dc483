/* Entries of a made-up club, as src/lib receives them: each test gives the fields that it is about. */
import { aMonthDay } from '../../days.ts';
import { anchorsOf } from '../../../shared/season/anchors.ts';
import { guessesFrom, seasonFrom } from '../../../shared/season/year.ts';
import type { Almanac } from '../../../src/lib/content.ts';
import type { Figure, FigureRow } from '../../../src/lib/figures.ts';
import type { Contact } from '../../../src/schemas/club.ts';
import type { Source } from '../../../src/schemas/sources.ts';
import type { DistrictSeason } from '../../../src/lib/season.ts';

type Fields = Record<string, unknown>;
type Loose = { [Name in keyof Almanac]?: Almanac[Name] extends Map<string, unknown> ? Record<string, Fields> : unknown };

/** Main flow from 20 May to 5 July; `later` shifts all parts of the year by so many days. */
export function district(id: string, days: Partial<Record<string, string>> = {}): DistrictSeason {
  const starts = {
    'winter-rest': '11-16', 'build-up': '03-01', swarming: '04-21', 'main-flow': '05-20', dearth: '07-06', 'fall-preparation': '08-21', ...days,
  } as Parameters<typeof guessesFrom>[0]; // prettier-ignore
  const figures = { freezeC: null, clusterC: null, syrupC: null, doubt: null, crossingDays: null };
  const anchors = anchorsOf({ climate: null, observed: [], signs: {}, guesses: guessesFrom(starts), figures });
  const season = seasonFrom(anchors);
  if (!season.ok) throw new Error(`district: ${id} has no whole year`);
  return {
    id,
    name: `The ${id}`,
    climate: null,
    anchors,
    blooms: [],
    days: season.value,
    basisOf: () => null,
  } as unknown as DistrictSeason;
}

export const contact = (duty: string, other: Partial<Contact> = {}): Contact =>
  ({ duty, name: `Person for ${duty}`, ask: 'About that.', ...other }) as Contact;

export const source = (who: string, other: Partial<Source> = {}): Source => ({ who, kind: 'paper', seen: 'itself', ...other }) as Source;

export const row = (id: string, other: Fields = {}): FigureRow =>
  ({ id, source: 'extension', place: 'Ohio', from: '2020-01-01', certainty: 'likely', ...other }) as unknown as FigureRow;

export const figure = (rows: FigureRow[], other: Fields = {}): Figure & Fields =>
  ({ title: 'A figure', unit: 'days', follows: rows[0]!.id, rows, checked: '2026-01-10', 'next-check': '2027-01-10', by: 'editor', ...other }) as unknown as Figure & Fields; // prettier-ignore

export const entry = (id: string, data: Fields): { id: string; data: Fields; body: string } => ({ id, data, body: '' });

/** An almanac of empty collections, and what a test puts into it. Maps are given as objects. */
export function almanacOf(parts: Loose): Almanac {
  const lists = [
    'checklists',
    'bulletins',
    'articles',
    'meetings',
    'reading',
    'treatments',
    'labelRows',
    'forage',
    'words',
    'answers',
    'signs',
    'sheets',
    'notices',
    'counts',
    'files',
    'withdrawn',
    'moved', // prettier-ignore
  ];
  const maps = ['figures', 'sources', 'cautions', 'drawings', 'pictures', 'origins', 'elsewhere'];
  return {
    club: { name: 'Quarry Town', units: 'us', words: 'us', contacts: [contact('mentor')], districts: [{ id: 'valley' }], season: {} },
    seasons: [district('valley')],
    ...Object.fromEntries(lists.map((name) => [name, (parts as Fields)[name] ?? []])),
    ...Object.fromEntries(maps.map((name) => [name, new Map(Object.entries(((parts as Fields)[name] as object) ?? {}))])),
    ...(parts.club ? { club: parts.club } : {}),
    ...(parts.seasons ? { seasons: parts.seasons } : {}),
  } as unknown as Almanac;
}

export const monthDay = aMonthDay;
