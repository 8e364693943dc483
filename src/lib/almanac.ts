/*
 * The almanac's collections: all published entries in one sorted order, with withdrawn entries in a list of their own. It is made
 * from entries that the caller hands over: pages take those of Astro, the integration those of the checks.
 */
import type { Day } from '../../shared/days/day.ts';
import { tongueOf, type Tongue } from '../../shared/country/language.ts';
import type { Spoken } from '../schemas/spoken.ts';
import type { Answer } from '../schemas/answers.ts';
import type { Article } from '../schemas/articles.ts';
import type { Bulletin } from '../schemas/bulletins.ts';
import type { Caution } from '../schemas/cautions.ts';
import type { Checklist } from '../schemas/checklists.ts';
import type { SeasonFields } from '../schemas/as-season.ts';
import { withClocks } from '../../shared/country/clock.ts';
import type { Club } from '../schemas/club.ts';
import type { Counts } from '../schemas/counts.ts';
import type { Drawing } from '../schemas/drawings.ts';
import type { Figure, FigureRow } from '../schemas/figures.ts';
import type { ClubFile } from '../schemas/files.ts';
import type { Forage } from '../schemas/forage.ts';
import type { Meeting } from '../schemas/meetings.ts';
import type { Notice } from '../schemas/notices.ts';
import type { Reading } from '../schemas/reading.ts';
import type { Sheet } from '../schemas/sheets.ts';
import type { Sign } from '../schemas/signs.ts';
import type { Source } from '../schemas/sources.ts';
import type { Treatment } from '../schemas/treatments.ts';
import type { Word } from '../schemas/words.ts';
import type { Origin } from '../schemas/origin.ts';
import { holdsHere, type For, type Here } from '../schemas/where.ts';
import { collectionNames, collections, type Collection } from '../schemas/collections.ts';
import { withLines } from './contacts.ts';
import { isPublished, withoutWithdrawn, withdrawalOf } from './published.ts';
import { rowOn } from './figures.ts';
import type { PictureFiles } from './render-context.ts';
import { seasonsOf, type DistrictSeason } from './season.ts';

/** `lang`: the language of its texts, where that is not the language of the page's frame. */
export type Item<T> = { id: string; data: T; body: string; lang?: Tongue | undefined };
/** An entry without its id, in the language `lang`. */
export type InTongue<T> = T & { lang?: Tongue | undefined };

export type Almanac = {
  club: Club;
  /** The language of its readers. */
  tongue: Tongue;
  /** What is translated, or in another language than that of its readers, by folder and name: `articles/swarms`. */
  spoken: Map<string, Spoken>;
  /** For each other language the entries that are translated into it, by folder and name. */
  alsoIn: Map<Tongue, ReadonlySet<string>>;
  seasons: DistrictSeason[];
  checklists: Item<Checklist>[];
  bulletins: Item<Bulletin>[];
  articles: Item<Article>[];
  meetings: Item<Meeting>[];
  reading: Item<Reading>[];
  treatments: Item<Treatment>[];
  /** The treatments with the label rows of every land, for the treatment window, which asks for the land by name. */
  labelRows: Item<Treatment>[];
  forage: Item<Forage>[];
  words: Item<Word>[];
  answers: Item<Answer>[];
  figures: Map<string, InTongue<Figure>>;
  sources: Map<string, InTongue<Source>>;
  cautions: Map<string, InTongue<Caution>>;
  sheets: Item<Sheet>[];
  signs: Item<Sign>[];
  notices: Item<Notice>[];
  counts: Item<Counts>[];
  drawings: Map<string, Item<Drawing>>;
  /** The club's own PDFs: `body` is the size in bytes. */
  files: Item<ClubFile>[];
  /** By collection and written address: `articles/./hive.jpg`. */
  pictures: Map<string, PictureFiles>;
  withdrawn: Withdrawn[];
  moved: Moved[];
  /** Whose claim an entry is, by its folder and name: `articles/swarms`. Empty for a club without books. */
  origins: Map<string, Origin>;
  /** Rows of figures that hold elsewhere, by the figure. */
  elsewhere: Map<string, FigureRow[]>;
};

/** A withdrawn entry: the words of its notice, and the address it had. */
export type Withdrawn = {
  kind: Collection;
  id: string;
  title: string;
  place: string | null;
  day: Day;
  why: string;
  ask?: string | undefined;
};

/** A page's former address and its current one: `/lists/package-day/`. */
export type Moved = { from: string; to: string; title: string };

/** An entry with valid fields, as Astro or the checks hold it. */
export type RawEntry = { id: string; data: unknown; body?: string | undefined };
/** All entries of a collection, drafts and withdrawn ones too. */
export type EntriesOf = (collection: string) => readonly RawEntry[];

/**
 * Joins the collections. `day` is the edition's, for the rows of figures that the season needs. `tongue` is another language than the
 * club's, whose readers get the entries that are translated. @throws Error without a club entry.
 */
export function almanacOf(entriesIn: EntriesOf, day: Day, tongue?: Tongue): Almanac {
  const offered = entriesIn('offered');
  const entriesOf: EntriesOf =
    tongue === undefined ? entriesIn : (name) => entriesIn(name).map((entry) => inTongue(entry, name, tongue, offered));
  const frame = tongueOf((entriesIn('club')[0]?.data as Club | undefined)?.language ?? 'en-US');
  const spoken = spokenIn(entriesIn('spoken') as readonly { id: string; data: Spoken }[], tongue);
  const langOf = (name: string, id: string): Tongue | undefined => {
    const held = spoken.get(`${name}/${id}`)?.tongue ?? frame;
    return held === frame && tongue === undefined ? undefined : held;
  };
  const shelf = <T>(name: string): Item<T>[] => publishedOf<T>(entriesOf(name)).map((item) => withLang(item, langOf(name, item.id)));
  const [clubEntry] = shelf<Club>('club');
  if (!clubEntry) throw new Error('almanacOf: needs club.yaml, which checks refuse to be without');
  const club = withHours(clubEntry.data);
  const sources = new Map(shelf<Source>('sources').map(({ id, data, lang }) => [id, { ...data, ...(lang && { lang }) }]));
  const forage = byTitle(shelf<Forage>('forage').map((item) => withBloom(item, sources)));
  const withNumbers = <T>(name: string): Item<T>[] => shelf<T>(name).map((item) => ({ ...item, data: withLines(item.data, club) }));
  const labelRows = byTitle(onSources(shelf<Treatment>('treatments'), sources));
  const allFigures = onSources(shelf<Figure>('figures'), sources);
  const figures = new Map(
    allFigures.map(({ id, data, lang }) => [id, { ...data, rows: rowsHere(data.rows, club), ...(lang && { lang }) }]),
  );
  const addresses = new Set(collectionNames.flatMap((kind) => shelf(kind).map(({ id }) => `${collections[kind].path}${id}/`)));
  return {
    club,
    tongue: tongue ?? frame,
    spoken,
    alsoIn: alsoIn(offered, frame, tongue),
    seasons: seasonsOf({ club, forage, figureOf: (id, row) => rowInForce(figures.get(id), row, day) }),
    checklists: byTitle(withNumbers<Checklist>('checklists')),
    bulletins: byTitle(withNumbers<Bulletin>('bulletins')).map((item) => ({ ...item, data: withLawHere(item.data, club) })),
    articles: byTitle(withNumbers<Article>('articles')),
    meetings: shelf<Meeting>('meetings').sort(
      (a, b) => compare(a.data.day + (a.data.start ?? ''), b.data.day + (b.data.start ?? '')) || compare(a.id, b.id),
    ),
    reading: byTitle(shelf<Reading>('reading')),
    treatments: labelRows.map((item) => ({ ...item, data: { ...item.data, rows: rowsHere(item.data.rows, club) } })),
    labelRows,
    forage,
    words: shelf<Word>('words').sort((a, b) => compare(a.data.word.toLowerCase(), b.data.word.toLowerCase())),
    answers: withNumbers<Answer>('answers'),
    figures,
    sources,
    cautions: new Map(withNumbers<Caution>('cautions').map(({ id, data, lang }) => [id, { ...data, ...(lang && { lang }) }])),
    sheets: byTitle(withNumbers<Sheet>('sheets')),
    signs: byTitle(shelf<Sign>('signs')),
    notices: shelf<Notice>('notices').sort((a, b) => compare(a.data.from, b.data.from) || compare(a.id, b.id)),
    counts: shelf<Counts>('counts'),
    drawings: new Map(shelf<Drawing>('drawings').map((item) => [item.id, item])),
    files: byTitle(shelf<ClubFile>('files')),
    pictures: new Map(shelf<PictureFiles>('pictures').map((item) => [item.id, item.data])),
    withdrawn: collectionNames.flatMap((kind) => withdrawnOf(kind, entriesOf(kind))),
    // A page of the club's own may have the name that a book's page had.
    moved: collectionNames.flatMap((kind) => movedOf(kind, entriesOf(kind))).filter(({ from }) => !addresses.has(from)),
    origins: new Map(shelf<Origin>('origins').map((item) => [item.id, item.data])),
    elsewhere: new Map(allFigures.map(({ id, data }) => [id, data.rows.filter((row) => rowsHere([row], club).length === 0)])),
  };
}

/** The entry in the language of its readers, where it is translated. */
function inTongue(entry: RawEntry, name: string, tongue: Tongue, offered: readonly RawEntry[]): RawEntry {
  const other = offered.find(({ id }) => id === `${tongue}/${name}/${entry.id}`);
  return other ? { ...other, id: entry.id } : entry;
}

/** What the readers of a language are told: of what is translated for them, and of all else what every reader is told. */
function spokenIn(told: readonly { id: string; data: Spoken }[], tongue: Tongue | undefined): Map<string, Spoken> {
  const isOwn = (id: string): boolean => id.split('/').length === 2;
  const own = told.filter(({ id }) => isOwn(id));
  const theirs = told.flatMap(({ id, data }) => (id.startsWith(`${tongue}/`) && !isOwn(id) ? [{ id: id.slice(3), data }] : []));
  return new Map([...own, ...theirs].map(({ id, data }) => [id, data]));
}

/** Readers of the club's language may have a page in another one; those of the other language have all pages in the club's. */
function alsoIn(offered: readonly RawEntry[], frame: Tongue, tongue: Tongue | undefined): Almanac['alsoIn'] {
  const names = Map.groupBy(offered, ({ id }) => id.slice(0, 2) as Tongue);
  const all = [...names].map(([other, entries]) => [other, new Set(entries.map(({ id }) => id.slice(3)))] as const);
  return new Map(tongue === undefined ? all : all.flatMap(([other, entries]) => (other === tongue ? [[frame, entries] as const] : [])));
}

const withLang = <T>(item: Item<T>, lang: Tongue | undefined): Item<T> => (lang ? { ...item, lang } : item);

/** The row of a figure on the edition's day, with the figure's unit. */
function rowInForce(figure: Figure | undefined, row: string | undefined, day: string): ReturnType<SeasonFields['figureOf']> {
  const held = figure && rowOn(figure, row ?? figure.follows, day);
  return figure && held ? { value: held.value, most: held.most, unit: figure.unit } : null;
}

type Entry<T> = { id: string; data: T & { draft?: boolean; withdrawn?: string }; body?: string };

const publishedOf = <T>(entries: readonly RawEntry[]): Item<T>[] =>
  (entries as readonly Entry<T>[])
    .filter((entry) => isPublished(entry.data))
    .map(({ id, data, body }) => ({ id, data, body: body ?? '' }))
    .sort((a, b) => compare(a.id, b.id));

/** Entries with rows, without the rows of withdrawn sources. An entry without any row is left out. */
const onSources = <T extends { rows: { source?: string | undefined }[] }>(
  items: Item<T>[],
  sources: ReadonlyMap<string, unknown>,
): Item<T>[] =>
  items
    .map((item) => ({ ...item, data: { ...item.data, rows: withoutWithdrawn(item.data.rows, sources) } }))
    .filter(({ data }) => data.rows.length > 0);

/** Hours of contacts as the country writes them. */
const withHours = (club: Club): Club => ({
  ...club,
  contacts: club.contacts.map((contact) => (contact.hours ? { ...contact, hours: withClocks(contact.hours, club.language) } : contact)),
});

/** The rows that hold where the club lies. A club that names no land has no books, and all its rows are its own. */
function rowsHere<Row extends { for?: For | undefined }>(rows: readonly Row[], club: Club): Row[] {
  const here: Here | null = club.land === undefined ? null : { land: club.land, hemisphere: club.hemisphere };
  return here ? rows.filter((row) => holdsHere(row.for ?? 'anywhere', here)) : [...rows];
}

function withLawHere({ law, ...bulletin }: Bulletin, club: Club): Bulletin {
  const held = law && rowsHere(law, club);
  return held && held.length > 0 ? { ...bulletin, law: held } : bulletin;
}

const withBloom = ({ data: { bloom, ...data }, ...item }: Item<Forage>, sources: ReadonlyMap<string, unknown>): Item<Forage> => ({
  ...item,
  data: bloom && sources.has(bloom.source) ? { ...data, bloom } : data,
});

function withdrawnOf(kind: Collection, all: readonly RawEntry[]): Withdrawn[] {
  const entries = all as readonly Entry<{
    title?: string;
    word?: string;
    heading?: string;
    who?: string;
    ask?: string;
  }>[];
  return entries.flatMap(({ id, data }) => {
    const withdrawal = withdrawalOf(data);
    const place = collections[kind].path && `${collections[kind].path}${id}/`;
    return withdrawal
      ? [{ kind, id, title: data.title ?? data.word ?? data.heading ?? data.who ?? id, place, ...withdrawal, ask: data.ask }]
      : [];
  });
}

function movedOf(kind: Collection, all: readonly RawEntry[]): Moved[] {
  const { path } = collections[kind];
  if (path === null) return [];
  return publishedOf<{ title?: string; formerly?: string[] }>(all).flatMap(({ id, data }) =>
    (data.formerly ?? []).map((from) => ({ from, to: `${path}${id}/`, title: data.title ?? id })),
  );
}

const byTitle = <T extends { title: string }>(items: Item<T>[]): Item<T>[] =>
  items.sort((a, b) => compare(a.data.title.toLowerCase(), b.data.title.toLowerCase()) || compare(a.id, b.id));

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
