/*
 * Empty rooms: pages that would only say that nothing is there, and calculators that lack their figures. They are not drawn
 * (src/middleware.ts), and no menu, link, search or book leads to them.
 */
import { calculators, type Calculator } from '../schemas/calculators.ts';
import { collectionNames, collections } from '../schemas/collections.ts';
import type { Almanac } from './almanac.ts';
import { rowOn } from './figures.ts';
import { edition } from './settings.ts';
import { troublesOf } from './signs.ts';
import { heldWeightRules, rulesOfLand } from './weight-rules.ts';

const known = new WeakMap<Almanac, ReadonlySet<string>>();

/** Paths below the base: `meetings/`, `work-it-out/weight-check/`. */
export function emptyRooms(almanac: Almanac): ReadonlySet<string> {
  const held = known.get(almanac) ?? emptyIn(almanac, edition.day);
  known.set(almanac, held);
  return held;
}

export function emptyIn(almanac: Almanac, day: string): ReadonlySet<string> {
  const tools = new Set(calculatorsOn(almanac, day));
  const rooms: [place: string, count: number][] = [
    ['lists/', almanac.checklists.length],
    ['pests/', almanac.bulletins.length + almanac.treatments.length],
    ['signs/', troublesOf(almanac).length],
    ['treatments/', almanac.treatments.length],
    ['know-how/', almanac.articles.length],
    ['meetings/', almanac.meetings.length],
    ['sheets/', almanac.sheets.length],
    ['reading/', almanac.reading.length],
    ['words/', almanac.words.length],
    ['figures/', almanac.figures.size],
    ['open/', almanac.figures.size],
    ['counts/', almanac.counts.length],
    // One that is over by the edition's day is in no list.
    ['notices/', almanac.notices.filter(({ data }) => data.until >= day).length],
    ['withdrawn/', almanac.withdrawn.length],
    ['year/bloom/', almanac.forage.length],
    ['work-it-out/', tools.size],
    ...calculators.map((tool): [string, number] => [`work-it-out/${tool.slug}/`, Number(tools.has(tool))]),
  ];
  return new Set(rooms.flatMap(([place, count]) => (count === 0 ? [place] : [])));
}

/** The calculators that this club has the figures for, in list order. */
export const calculatorsHere = (almanac: Almanac): Calculator[] =>
  calculators.filter(({ slug }) => !emptyRooms(almanac).has(`work-it-out/${slug}/`));

/** A club that names no land has no books: it wrote its figures itself, and each page says which of them is missing. */
function calculatorsOn(almanac: Almanac, day: string): readonly Calculator[] {
  if (almanac.club.land === undefined) return calculators;
  const isHeld = (id: string): boolean => {
    const figure = almanac.figures.get(id);
    return figure !== undefined && rowOn(figure, figure.follows, day) !== null;
  };
  return calculators.filter(({ slug, needs }) => needs.every(isHeld) && hasRowsHere(almanac, slug, day));
}

/** What only rows of the club's own land can say: its labels, and its law on net weights. */
function hasRowsHere(almanac: Almanac, slug: Calculator['slug'], day: string): boolean {
  if (slug === 'treatment-window') return almanac.treatments.some(({ data }) => data.rows.length > 0);
  if (slug !== 'weight-check') return true;
  const rules = heldWeightRules(almanac, day);
  return rulesOfLand(almanac.club.land).some((rule) => rules[rule] !== null);
}

const entries = new WeakMap<Almanac, ReadonlySet<string>>();

/** Addresses of entries that have a page, and those that answer for a page that has gone: `/lists/winter-rest/`. */
function entryPages(almanac: Almanac): ReadonlySet<string> {
  const held =
    entries.get(almanac) ??
    new Set([
      ...(['checklists', 'bulletins', 'articles', 'meetings', 'treatments', 'sheets'] as const).flatMap((name) =>
        (almanac[name] as { id: string }[]).map(({ id }) => `${collections[name].path}${id}/`),
      ),
      ...almanac.withdrawn.flatMap(({ place }) => place ?? []),
      ...almanac.moved.map(({ from }) => from),
    ]);
  entries.set(almanac, held);
  return held;
}

const ROOMS_OF_ENTRIES: ReadonlySet<string> = new Set(collectionNames.flatMap((name) => collections[name].path ?? []));

/** Whether the page of an address is in this almanac. A fragment or a question does not matter; other sites are taken as they are. */
export function pageExists(almanac: Almanac, address: string): boolean {
  const [place = ''] = address.split(/[#?]/);
  if (!place.startsWith('/') || place.startsWith('//')) return true;
  const [, room = '', name = ''] = /^(\/[^/]+\/)([^/]+)/.exec(place) ?? [];
  if (room === '/work-it-out/' && name !== '' && !calculators.some(({ slug }) => slug === name)) return false;
  if (name !== '' && ROOMS_OF_ENTRIES.has(room) && !entryPages(almanac).has(`${room}${name}/`)) return false;
  return !emptyRooms(almanac).has(`${place.slice(1).replace(/\/?$/, '')}/`);
}
