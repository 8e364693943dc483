/* What the books say of a land: which of them hold there, and what they offer a new club. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { book as bookSchema, type Offers } from '../../schemas/book.ts';
import { stations as stationSchema, type Station } from '../../schemas/stations.ts';
import { booksFolder } from '../../source/books-folder.ts';
import { booksFor, booksIn, type BookAt } from '../../source/books.ts';
import { readTable } from '../../source/table.ts';

export type Half = 'north' | 'south';

/** Countries that lie south of the equator, or on both sides of it. Common geography, from memory. */
const SOUTH = new Set(
  'AO AR AS AU BI BO BW BV CC CK CL CX FJ FK GS HM KM LS MG MU MW MZ NA NC NF NR NU NZ PE PF PG PN PY RE RW SB SH SZ SC TF TK TL TO TV TZ UY VU WF WS YT ZA ZM ZW'.split(
    ' ',
  ),
);
const BOTH = new Set('BR CD CG CO EC GA GQ ID KE KI MV SO ST UG UM'.split(' '));

/** Null where a country lies on both sides of the equator. */
export function halfOf(land: string): Half | null {
  const country = land.slice(0, 2);
  return BOTH.has(country) ? null : SOUTH.has(country) ? 'south' : 'north';
}

/** Codes of the lands that have a book. */
export const landsWithBooks = (): string[] =>
  booksIn(booksFolder())
    .map(({ place }) => place)
    .filter((place) => /^[A-Z]/.test(place))
    .sort();

/** The books of a land, the widest first. */
export const booksOf = (land: string, hemisphere: Half): BookAt[] => booksFor(booksIn(booksFolder()), { land, hemisphere });

/** The narrowest book's word counts. */
export const offersOf = (books: readonly BookAt[]): Offers => Object.assign({}, ...books.map((book) => fieldsOf(book).offers ?? {}));

export const titleOf = (book: BookAt): string => fieldsOf(book).title;

const fieldsOf = ({ directory }: BookAt) => bookSchema.parse(parse(readFileSync(join(directory, 'book.yaml'), 'utf8')));

/** Stations of the country's books. */
export function stationsOf(land: string): Station[] {
  const country = booksIn(booksFolder()).filter(({ place }) => place.slice(0, 2) === land.slice(0, 2));
  return country.flatMap(({ directory }) => {
    const path = join(directory, 'stations.csv');
    const text = textOf(path);
    return text === null ? [] : stationSchema.parse(readTable(path, text).fields.value).rows;
  });
}

function textOf(path: string): string | null {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
}

export type Point = { latitude: number; longitude: number };

/** Mean radius of the earth (IUGG). */
const EARTH_KM = 6371;

/** Distance on a sphere, by the haversine formula. */
export function kilometres(a: Point, b: Point): number {
  const radians = (degrees: number): number => (degrees * Math.PI) / 180;
  const half = (one: number, other: number): number => Math.sin(radians(other - one) / 2) ** 2;
  const chord =
    half(a.latitude, b.latitude) + Math.cos(radians(a.latitude)) * Math.cos(radians(b.latitude)) * half(a.longitude, b.longitude);
  return 2 * EARTH_KM * Math.asin(Math.sqrt(chord));
}

/** Stations with their distance, the nearest first. */
export const nearest = (stations: readonly Station[], town: Point): { station: Station; km: number }[] =>
  stations.map((station) => ({ station, km: Math.round(kilometres(town, station)) })).sort((a, b) => a.km - b.km);

/** Time zones of a country by the list of IANA. */
export function zonesOf(land: string): string[] {
  const locale = new Intl.Locale(`und-${land.slice(0, 2)}`) as Intl.Locale & { getTimeZones?: () => string[]; timeZones?: string[] };
  return locale.getTimeZones?.() ?? locale.timeZones ?? [];
}
