/*
 * Reads a club's content folder once, and the books it stands on: every file of every collection, its fields with positions, and its words as a tree. Checks use the
 * result, and the loader feeds the collections from it, so both see the same value.
 */
import { readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Root } from 'mdast';
import { languages, tongueOf, tongues, type Language, type Tongue } from '../../shared/country/language.ts';
import type { Here } from '../schemas/where.ts';
import { booksFolder } from './books-folder.ts';
import { booksBelow, booksFor, booksIn, type BookAt } from './books.ts';
import { decode, decodedAsBest } from './decode.ts';
import { daysKnown, figuresKnown, gapsIn, withoutGaps, type Known } from './gaps.ts';
import { kindOfOverlay } from './overlay.ts';
import { mergeLayers, nameOf, type Layer, type Merged } from './layers.ts';
import { isDraft, saysDraft } from './draft.ts';
import type { Diagnostic } from './diagnostic.ts';
import { parseProse } from './prose.ts';
import { readFields, splitPage, unsplit, type Fields } from './fields.ts';
import { oneVersion } from './unmerged.ts';
import { isPassedOver } from './passed-over.ts';
import { readTable } from './table.ts';
import { baseOf, translated, translationIn } from './translations.ts';
import { differences, isFit, type Difference } from './translation-differences.ts';
import { turnedExamples } from './turned-examples.ts';

export type Entry = {
  collection: string;
  /** The file name without its ending. */
  id: string;
  /** Path inside the content folder, with forward slashes; of a book's file with the book before it: books/us/articles/x.mdx. */
  path: string;
  /** The whole file with LF line ends. */
  text: string;
  fields: Fields;
  /** The words after the front matter, or the SVG of a drawing. Empty in a file of fields or rows. */
  body: string;
  /** The line of the file on which the body begins. */
  bodyLine: number;
  /** The words as a tree. Null in a file without words, or where they could not be parsed. */
  tree: Root | null;
  /** Parts of it could only be parsed after a correction. It is checked, but not shown. */
  isMended?: true;
  /** The book it is from; none of the club's own. */
  book?: string;
  /** What it was laid over. */
  over?: Entry;
  /** The files that only change it: added words, another choice of rows, a withdrawal. */
  overlays?: Entry[];
  /** Words that another file added: from `fromLine` on they are those of `path` from its line `toLine` on. */
  added?: { path: string; fromLine: number; toLine: number };
  /** The language of its words. */
  tongue?: Tongue;
  /** The file that its words are from, where they were translated, and the entry that was translated. */
  translation?: Entry;
  original?: Entry;
};

/** A file with the words of an entry in another language: its own id is that of the entry. */
export type Translation = {
  file: Entry;
  /** Null where nothing has its name. */
  original: Entry | null;
  differences: Difference[];
};

/** A book that the folder stands on, as it lies on the disk. `translations`: those in the languages that the club speaks. */
export type BookLayer = BookAt & { entry: Entry | null; files: string[]; entries: Entry[]; translations: Entry[] };

export type Folder = {
  directory: string;
  club: Entry | null;
  /** Its own book.yaml, of a book that is checked by itself. */
  book: Entry | null;
  /** Texts of the books that the club says it has compared: its claims.csv. */
  claims: Entry | null;
  /** Published weather stations of the land, of a book that is checked by itself: its stations.csv. */
  stations: Entry | null;
  /** The widest first. */
  books: BookLayer[];
  /** Where the club lies; null where it names no land, or a book is checked by itself. */
  here: Here | null;
  /** Of all layers, each entry once. */
  entries: Entry[];
  /** The same for readers of each other language that the club offers. An entry without a translation is as in `entries`. */
  alsoIn: ReadonlyMap<Tongue, readonly Entry[]>;
  /** The folder's own files with words in another language, and those of the books. */
  translations: Translation[];
  /** Faults of translations that cannot be parsed. They stop no build. */
  unreadTranslations: Diagnostic[];
  /** Own files that only change an entry of a book, and those of them that change nothing. */
  overlays: Entry[];
  overNothing: Entry[];
  elsewhere: Merged['elsewhere'];
  /** Names of what the books' pages ask for and this club has not: duties, figures, local texts. */
  gaps: string[];
  /** Every file of the folder itself, with forward slashes, sorted. */
  files: string[];
  faults: Diagnostic[];
  /** Paths of drafts that could not be parsed at all and are therefore not among the entries. */
  unreadDrafts: string[];
  /** The parsed result of each file by path, for the next reading. */
  parsed: Map<string, Parsed>;
};

type Parsed = { text: string; entry: Entry | null; faults: Diagnostic[] };
type Former = Pick<Folder, 'parsed'>;

/**
 * Reads the folder. A missing folder or an unreadable file is a diagnostic, not an exception. A file whose text is unchanged since the
 * `former` reading is not parsed again.
 */
export function readFolder(directory: string, former?: Former): Folder {
  const folder: Folder = {
    directory,
    club: null,
    book: null,
    claims: null,
    stations: null,
    books: [],
    here: null,
    entries: [],
    alsoIn: new Map(),
    translations: [],
    unreadTranslations: [],
    overlays: [],
    overNothing: [],
    elsewhere: { entries: 0, rows: 0 },
    gaps: [],
    files: [],
    faults: [],
    unreadDrafts: [],
    parsed: new Map(),
  };
  if (!statSync(directory, { throwIfNoEntry: false })?.isDirectory()) {
    folder.faults.push(folderFault('.', 'no such folder', "the path of a club's content folder after --content"));
    return folder;
  }
  folder.files = list(directory, '', folder.faults, [realpathSync(directory)]).filter((path) => !isInBooks(directory, path));
  if (folder.files.includes('club.yaml')) folder.club = readEntry(folder, 'club.yaml', 'club', 'club', former);
  else if (folder.files.includes('book.yaml')) folder.book = readEntry(folder, 'book.yaml', 'book', 'book', former);
  if (folder.files.includes('claims.csv')) folder.claims = readEntry(folder, 'claims.csv', 'claims', 'claims', former);
  if (folder.book && folder.files.includes('stations.csv'))
    folder.stations = readEntry(folder, 'stations.csv', 'stations', 'stations', former);
  const tongue = folder.book ? tongueOfBook(folder.book) : tongueOf(languageOf(folder));
  const own = [...readEntries(folder, '', folder.files, former), ...unnamedFiles(folder)].map((entry) => madeIn(entry, { tongue }));
  const ownTranslations = readTranslations(folder, '', folder.files, tongues, former);
  const wanted = [tongue, ...offeredIn(folder)];
  const { here, books } = standsOn(folder);
  folder.here = here;
  for (const book of books) {
    const layer: BookLayer = { ...book, entry: null, files: [], entries: [], translations: [] };
    folder.books.push(layer);
    const prefix = prefixOf(book.id);
    const faults: Diagnostic[] = [];
    layer.files = list(book.directory, '', faults, [realpathSync(book.directory)]);
    folder.faults.push(...faults.map((fault) => ({ ...fault, path: prefix + fault.path })));
    layer.entry = readEntry(folder, `${prefix}book.yaml`, 'book', 'book', former);
    const of = { book: book.id, tongue: tongueOfBook(layer.entry) };
    layer.entries = readEntries(folder, prefix, layer.files, former).map((entry) => madeIn(entry, of));
    layer.translations = readTranslations(folder, prefix, layer.files, wanted, former);
  }
  if (books.length > 0) stack(folder, own, ownTranslations, wanted);
  else alone(folder, own, ownTranslations, wanted);
  folder.translations.push(...furtherTranslations(folder, ownTranslations));
  return folder;
}

const made = new WeakMap<Entry, Entry>();

/** The entry with its language and its book. A file whose text is unchanged gives the same entry in each reading. */
function madeIn(entry: Entry, of: { tongue: Tongue; book?: string }): Entry {
  const held = made.get(entry);
  if (held && held.tongue === of.tongue && held.book === of.book) return held;
  const now = { ...entry, ...of };
  made.set(entry, now);
  return now;
}

/** The language of a book's own words. */
function tongueOfBook(book: Entry | null): Tongue {
  const { language } = (book?.fields.value ?? {}) as { language?: unknown };
  return tongues.find((each) => each === language) ?? 'en';
}

/** A book's own words in a language, or in its own where they are not translated. */
export function bookIn({ entry, translations }: BookLayer, tongue: Tongue): Entry | null {
  const file = translations.find((each) => each.collection === 'book' && each.tongue === tongue);
  return entry && file && isFit(file, differences(entry, file)) ? translated(entry, file) : entry;
}

/** The other languages in which the club offers pages. */
function offeredIn({ club }: Folder): Tongue[] {
  const { 'also-in': also } = (club?.fields.value ?? {}) as { 'also-in'?: unknown };
  return Array.isArray(also) ? tongues.filter((each) => also.includes(each)) : [];
}

/** Files with words in one of the languages. Their ids are those of the entries that they translate. */
function readTranslations(folder: Folder, prefix: string, files: readonly string[], wanted: readonly Tongue[], former?: Former): Entry[] {
  // What cannot be parsed stops no build: the original is shown.
  const apart: Folder = { ...folder, faults: folder.unreadTranslations };
  return files.flatMap((path) => {
    const of = translationIn(path);
    if (!of || !wanted.includes(of.tongue)) return [];
    const entry = readEntry(apart, prefix + path, of.collection, of.id, former);
    return entry ? [madeIn(entry, { tongue: of.tongue })] : [];
  });
}

/** A folder without books below it: its entries are its own. */
function alone(folder: Folder, own: readonly Entry[], translations: readonly Entry[], wanted: readonly Tongue[]): void {
  folder.overlays = folder.overNothing = own.filter((entry) => kindOfOverlay(entry) !== null);
  const entries = own.filter((entry) => kindOfOverlay(entry) === null);
  const inTongue = (tongue: Tongue): Entry[] => {
    const merged = mergeLayers([{ id: '', place: null, entries, translations: inOne(translations, tongue) }], null, []);
    folder.translations.push(...merged.translations);
    return merged.entries;
  };
  folder.entries = folder.book ? entries : inTongue(wanted[0]!);
  folder.alsoIn = new Map(wanted.slice(1).map((tongue) => [tongue, inTongue(tongue)]));
}

const inOne = (translations: readonly Entry[], tongue: Tongue): Entry[] => translations.filter((each) => each.tongue === tongue);

/** Own translations into a language that no reader here is offered, and those without an original: both are compared all the same. */
function furtherTranslations(folder: Folder, own: readonly Entry[]): Translation[] {
  const compared = new Set(folder.translations.map(({ file }) => file));
  const originals = new Map([...folder.entries, ...(folder.book ? [folder.book] : [])].map((entry) => [nameOf(entry), baseOf(entry)]));
  return own
    .filter((file) => !compared.has(file))
    .map((file) => {
      const original = originals.get(nameOf(file)) ?? null;
      return { file, original, differences: original ? differences(original, file) : [] };
    });
}

const prefixOf = (book: string): string => `books/${book}/`;

/** The folder of books may lie among a club's files; it is none of them. */
const isInBooks = (directory: string, path: string): boolean => path.startsWith('books/') && resolve(directory, 'books') === booksFolder();

function readEntries(folder: Folder, prefix: string, files: readonly string[], former?: Former): Entry[] {
  return files.flatMap((path) => {
    const match = translationIn(path) ? null : /^([^/]+)\/([^/]+)\.(mdx|yaml|csv)$/.exec(path);
    const entry = match && readEntry(folder, prefix + path, match[1]!, match[2]!, former);
    if (!entry) return [];
    if (entry.collection === 'files') return [withSize(folder, entry, path.replace(/yaml$/, 'pdf'))];
    return [entry.collection === 'drawings' ? withLines(folder, entry, files, prefix) : entry];
  });
}

/** Where the club lies, and its books; of a book that is checked by itself, the wider books. What cannot be read is left to the checks. */
function standsOn({ directory, club, book }: Folder): { here: Here | null; books: BookAt[] } {
  if (book) return { here: null, books: booksBelow(booksIn(booksFolder()), directory) };
  const { land, hemisphere, books } = (club?.fields.value ?? {}) as { land?: unknown; hemisphere?: unknown; books?: unknown };
  if (typeof land !== 'string' || (hemisphere !== 'north' && hemisphere !== 'south')) return { here: null, books: [] };
  const here: Here = { land, hemisphere };
  const all = booksIn(booksFolder());
  if (books === undefined) return { here, books: booksFor(all, here) };
  const named: unknown[] = Array.isArray(books) ? books : [];
  return { here, books: named.flatMap((id, index) => (named.indexOf(id) === index ? all.filter((each) => each.id === id) : [])) };
}

/** Lays the club's own files over those of the books: for its readers, and once more for those of each other language. */
function stack(folder: Folder, own: readonly Entry[], ownTranslations: readonly Entry[], wanted: readonly Tongue[]): void {
  const { 'leaves-out': left } = (folder.club?.fields.value ?? {}) as { 'leaves-out'?: unknown };
  const leavesOut = Array.isArray(left) ? left.map(String) : [];
  const inTongue = (tongue: Tongue): Merged => {
    const layers: Layer[] = [
      ...folder.books.map((book) => ({ ...book, translations: inOne(book.translations, tongue) })),
      { id: '', place: null, entries: own, translations: inOne(ownTranslations, tongue) },
    ];
    const merged = mergeLayers(layers, folder.here, leavesOut);
    folder.translations.push(...merged.translations);
    return merged;
  };
  const merged = inTongue(wanted[0]!);
  Object.assign(folder, { overlays: merged.overlays, overNothing: merged.overNothing, elsewhere: merged.elsewhere });
  folder.entries = completed(folder, merged.entries, wanted[0]!);
  folder.alsoIn = new Map(wanted.slice(1).map((tongue) => [tongue, completed(folder, inTongue(tongue).entries, tongue)]));
  const { club, here } = folder;
  if (club && here) {
    const known = knownHere(folder, merged.entries, here, wanted[0]!);
    folder.gaps = [
      ...new Set(merged.entries.flatMap(published).flatMap((entry) => (entry.book === undefined ? [] : gapsIn(entry, known)))),
    ].sort();
  }
}

/** What the club has of all that the pages of its books ask for. */
function knownHere(folder: Folder, entries: readonly Entry[], here: Here, tongue: Tongue): Known {
  const fields = (folder.club?.fields.value ?? {}) as { contacts?: unknown; 'stands-in'?: unknown; poison?: unknown };
  const contacts = Array.isArray(fields.contacts) ? (fields.contacts as { duty?: unknown }[]) : [];
  const shown = entries.flatMap(published);
  const dutiesIn = (entry: Entry | null): [string, string][] =>
    Object.entries((entry?.fields.value as { duties?: Record<string, string> } | undefined)?.duties ?? {});
  return {
    duties: new Set([...contacts.map((contact) => String(contact?.duty)), ...Object.keys(fields['stands-in'] ?? {})]),
    wordsFor: new Map(folder.books.flatMap((book) => dutiesIn(bookIn(book, tongue)))),

    figures: figuresKnown(shown, here),
    hasPoisonLine: fields.poison !== undefined,
    hasDay: daysKnown(fields),
    locals: new Set(shown.filter(({ collection }) => collection === 'local').map(({ id }) => id)),
  };
}

/** The entries as they read here, without what the club cannot complete. */
function completed(folder: Folder, entries: readonly Entry[], tongue: Tongue): Entry[] {
  if (!folder.club || !folder.here) return [...entries];
  const known = knownHere(folder, entries, folder.here, tongue);
  const bothHalves = new Set(
    folder.here.hemisphere === 'south' ? folder.books.filter(({ place }) => place === 'anywhere').map(({ id }) => id) : [],
  );
  return entries.map((entry) => complete(entry, known, bothHalves));
}

/**
 * The entry without the sentences of a book that have a gap here, and with the days of examples for the half of the world; below a
 * draft, what it would take the place of too. `turned` are the books whose examples are turned.
 */
function complete(entry: Entry, known: Known, turned: ReadonlySet<string>): Entry {
  const { book, bodyLine } = entry;
  const added = addedTo(entry);
  const inBook =
    book !== undefined && turned.has(book) && entry.tree ? turnedExamples(entry.tree, added && added.fromLine - bodyLine + 1) : entry.tree;
  const tree = book === undefined || !inBook ? inBook : withoutGapsOfBook(entry, inBook, known);
  const over = entry.over && isDraft(entry) ? complete(entry.over, known, turned) : entry.over;
  return tree === entry.tree && over === entry.over ? entry : { ...entry, tree, ...(over ? { over } : {}) };
}

/** The words that were added below those of the page. A translation is in the place of them. */
const addedTo = ({ added, translation }: Entry): Entry['added'] => (added?.path === translation?.path ? undefined : added);

/** A gap in the words that the club added is a fault of the club's, so those words stay as they are. */
function withoutGapsOfBook(entry: Entry, tree: Root, known: Known): Root {
  const { bodyLine } = entry;
  const added = addedTo(entry);
  const from = added && !added.path.startsWith('books/') ? added.fromLine : Infinity;
  const isAdded = ({ position }: Root['children'][number]): boolean => bodyLine + (position?.start.line ?? 1) - 1 >= from;
  const theirs: Root = { ...tree, children: tree.children.filter((node) => !isAdded(node)) };
  const left = withoutGaps(theirs, known);
  return left === theirs ? tree : { ...left, children: [...left.children, ...tree.children.filter(isAdded)] };
}

/** The language of the club, or of a book that is checked by itself, where it can be read. */
export const languageOf = ({ club }: Folder): Language => {
  const { language } = (club?.fields.value ?? {}) as { language?: unknown };
  return languages.find((each) => each === language) ?? 'en-US';
};

/** Where a file of any layer lies on the disk. */
export function onDisk({ directory, books }: Folder, path: string): string {
  const book = books.find(({ id }) => path.startsWith(prefixOf(id)));
  return book ? join(book.directory, path.slice(prefixOf(book.id).length)) : join(directory, path);
}

/** Every file of every layer, the nearest first, by its path inside its layer. */
export const filesOfLayers = (folder: Folder): { bare: string; path: string }[] => [
  ...folder.files.map((path) => ({ bare: path, path })),
  ...[...folder.books].reverse().flatMap(({ id, files }) => files.map((bare) => ({ bare, path: prefixOf(id) + bare }))),
];

/** What readers see of an entry: below a draft, what it would take the place of. */
const published = (entry: Entry): Entry[] => (!isDraft(entry) ? [entry] : entry.over ? published(entry.over) : []);

/** The folder as a build publishes it: without its drafts, and with what they would take the place of. */
export const withoutDrafts = (folder: Folder): Folder => ({
  ...folder,
  entries: folder.entries.flatMap(published),
  alsoIn: new Map([...folder.alsoIn].map(([tongue, entries]) => [tongue, entries.flatMap(published)])),
  overlays: folder.overlays.filter((entry) => !isDraft(entry)),
  overNothing: folder.overNothing.filter((entry) => !isDraft(entry)),
});

function readEntry(folder: Folder, path: string, collection: string, id: string, former?: Former): Entry | null {
  const bytes = bytesOf(folder, path);
  if (!bytes) return null;
  const decoded = decode(path, bytes);
  const entry = parsedEntry(folder, path, collection, id, decoded.ok ? decoded.value : decodedAsBest(bytes), former);
  if (!decoded.ok) folder.faults.push(decoded.reason);
  if (!entry && saysDraft(Buffer.from(bytes).toString('latin1'))) folder.unreadDrafts.push(path);
  return entry && !decoded.ok ? { ...entry, isMended: true } : entry;
}

function parsedEntry(folder: Folder, path: string, collection: string, id: string, text: string, former?: Former): Entry | null {
  const parsed = former?.parsed.get(path);
  const now = parsed?.text === text ? parsed : parsedText(path, collection, id, text);
  folder.parsed.set(path, now);
  folder.faults.push(...now.faults);
  return now.entry;
}

function parsedText(path: string, collection: string, id: string, text: string): Parsed {
  const faults: Diagnostic[] = [];
  return { text, entry: readText(path, collection, id, text, faults), faults };
}

/** The SVG of a drawing is beside its words, under the same name. */
function withLines(folder: Folder, entry: Entry, files: readonly string[], prefix: string): Entry {
  const path = entry.path.replace(/yaml$/, 'svg');
  const bytes = files.includes(path.slice(prefix.length)) ? bytesOf(folder, path) : null;
  const decoded = bytes && decode(path, bytes);
  if (decoded?.ok === false) folder.faults.push(decoded.reason);
  return decoded?.ok ? { ...entry, body: decoded.value } : entry;
}

/** A PDF in files/ without a description beside it: its title is made from its name. */
function unnamedFiles(folder: Folder): Entry[] {
  return folder.files.flatMap((path) => {
    const name = /^files\/([^/]+)\.pdf$/.exec(path)?.[1];
    if (name === undefined || folder.files.includes(`files/${name}.yaml`)) return [];
    const title = name.replace(/[-_ ]+/g, ' ').trim();
    const entry = readText(path, 'files', name, `title: ${JSON.stringify(title.charAt(0).toUpperCase() + title.slice(1))}\n`, []);
    return entry ? [withSize(folder, entry, path)] : [];
  });
}

/** The body of a club's file is the size of its PDF in bytes. */
const withSize = (folder: Folder, entry: Entry, path: string): Entry => ({
  ...entry,
  body: String(statSync(onDisk(folder, path), { throwIfNoEntry: false })?.size ?? 0),
});

/** True where both its fields and its words could be parsed as they are. */
export const isWhole = (entry: Entry): boolean =>
  !entry.isMended && entry.fields.value !== undefined && (entry.tree !== null || !entry.path.endsWith('.mdx'));

/**
 * Parses an entry from the text of its file. Problems are added to `faults`. What cannot be parsed is corrected or left out, line for
 * line, so that the rest can still be checked.
 */
export function readText(path: string, collection: string, id: string, text: string, faults: Diagnostic[]): Entry | null {
  const before = faults.length;
  const { text: merged, fault: unmerged } = oneVersion(path, text);
  if (unmerged) faults.push(unmerged);
  const mended = (): { isMended?: true } => (faults.length > before ? { isMended: true } : {});
  if (path.endsWith('.csv')) {
    const fields = readTableInto(path, merged, faults);
    return { collection, id, path, text, ...fields, body: '', bodyLine: 1, tree: null, ...mended() };
  }
  const isPage = path.endsWith('.mdx');
  let page = isPage ? splitPage(merged) : { fields: merged, fieldsLine: 1, body: '', bodyLine: 1 };
  if (!page) {
    const fault = unsplit(path, merged);
    faults.push(fault);
    page = splitPage(
      merged
        .split('\n')
        .with(fault.line - 1, '---')
        .join('\n'),
    );
    if (!page) return null;
  }
  const read = readFields(path, page.fields, page.fieldsLine);
  faults.push(...read.faults);
  const words = isPage ? readWords(path, page.bodyLine, page.body) : { tree: null, faults: [] };
  faults.push(...words.faults);
  return { collection, id, path, text, fields: read.fields, body: page.body, bodyLine: page.bodyLine, tree: words.tree, ...mended() };
}

/** Parses the words. A tag that is wrong is reported and read as words, so that it hides nothing. */
function readWords(path: string, bodyLine: number, body: string): { tree: Root | null; faults: Diagnostic[] } {
  const faults: Diagnostic[] = [];
  const reported = new Set<string>();
  let text = body;
  // Every round takes one sign "<" away.
  for (let left = body.split('<').length; left > 0; left -= 1) {
    try {
      return { tree: parseProse(text), faults };
    } catch (error) {
      const fault = proseFault(path, bodyLine, body, error);
      const offset = offsetAt(text, fault.line - bodyLine + 1, fault.column);
      const at = text.indexOf('<', offset);
      const [typed, slash, name = ''] = /^<(\/?)\s*(\w*)/.exec(text.slice(at)) ?? [];
      // Of a pair of tags each half would be reported.
      if (!reported.has(slash ? name : `/${name}`)) faults.push(fault);
      reported.add(slash ? `/${name}` : name);
      if (at < 0 || typed === undefined) break;
      text = `${text.slice(0, at)}\u2039${text.slice(at + 1)}`;
    }
  }
  return { tree: null, faults };
}

const offsetAt = (text: string, line: number, column: number): number =>
  text
    .split('\n')
    .slice(0, line - 1)
    .reduce((sum, each) => sum + each.length + 1, column - 1);

function readTableInto(path: string, text: string, faults: Diagnostic[]): { fields: Fields } {
  const read = readTable(path, text);
  faults.push(...read.faults);
  return { fields: read.fields };
}

function proseFault(path: string, bodyLine: number, body: string, error: unknown): Diagnostic {
  const { line, column, crossing } = tagFaultOf(error as VFileMessage);
  const at = { path, line: bodyLine - 1 + line, column, rule: 'tag' };
  if (crossing)
    return {
      ...at,
      field: crossing,
      found: `${crossing} that crosses another mark, such as *words*`,
      write: 'the mark wholly inside the tag or wholly outside',
    };
  const typed = body.split('\n')[line - 1] ?? '';
  const open = /<(Figure|Task|Contact|Drawing|Day)((?:\s+[a-z-]+="[^"]*")*)\s*>(?:<\/\1>)?/;
  const mended = open.test(typed) ? typed.replace(open, '<$1$2 />').trim() : undefined;
  return {
    ...at,
    field: 'a tag',
    found: 'a tag that is opened and not closed, closed and not opened, or crosses another mark',
    write: 'both <Tag> and </Tag> in one sentence, or the short form <Tag ... />',
    ...(mended === undefined ? {} : { corrected: mended }),
  };
}

/** The error of the tag parser (a VFileMessage of mdast-util-mdx-jsx). */
type VFileMessage = { reason?: string; ruleId?: string; line?: number; column?: number };

/** The position where the tag begins, and its name where it closes across another mark. */
function tagFaultOf({ reason = '', ruleId, line = 1, column = 1 }: VFileMessage): {
  line: number;
  column: number;
  crossing?: string | undefined;
} {
  const crossing = /`<\/?(\w+)>`.* of `(?:emphasis|strong|delete|link)`/.exec(reason)?.[1];
  const opened = /^Expected a closing tag for `<\w+>` \((\d+):(\d+)/.exec(reason);
  if (opened) return { line: Number(opened[1]), column: Number(opened[2]), crossing };
  // The parser names the slash.
  return { line, column: ruleId === 'unexpected-closing-slash' ? column - 1 : column, crossing };
}

function bytesOf(folder: Folder, path: string): Uint8Array | null {
  try {
    const file = onDisk(folder, path);
    if (!statSync(file).isFile()) throw Object.assign(new Error(), { code: 'not a file' });
    return readFileSync(file);
  } catch (error) {
    folder.faults.push(
      folderFault(
        path,
        `a file that cannot be read (${(error as NodeJS.ErrnoException).code ?? 'unknown'})`,
        'its permissions so that you may read it',
      ),
    );
    return null;
  }
}

/** `above`: the true paths of the folders on the way down, so that a link back to one of them does not loop. */
function list(directory: string, below: string, faults: Diagnostic[], above: readonly string[]): string[] {
  try {
    return readdirSync(join(directory, below), { withFileTypes: true })
      .filter((item) => !isPassedOver(item.name))
      .flatMap((item) => {
        const path = below ? `${below}/${item.name}` : item.name;
        if (!isFolder(directory, path, item)) return [path];
        const truePath = realpathSync(join(directory, path));
        if (!above.includes(truePath)) return list(directory, path, faults, [...above, truePath]);
        faults.push(folderFault(path, 'a link that leads back to a folder it lies in', 'a real folder, or nothing'));
        return [];
      })
      .sort();
  } catch (error) {
    faults.push(
      folderFault(
        below || '.',
        `a folder that cannot be read (${(error as NodeJS.ErrnoException).code ?? 'unknown'})`,
        'its permissions so that you may read it',
      ),
    );
    return [];
  }
}

const isFolder = (directory: string, path: string, item: { isDirectory(): boolean; isSymbolicLink(): boolean }): boolean =>
  item.isDirectory() || (item.isSymbolicLink() && Boolean(statSync(join(directory, path), { throwIfNoEntry: false })?.isDirectory()));

const folderFault = (path: string, found: string, write: string): Diagnostic => ({
  path,
  line: 1,
  column: 1,
  rule: 'folder',
  field: 'the content folder',
  found,
  write,
});
