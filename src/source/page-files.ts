/*
 * Files that the texts of a page are from, by the address of the page: for the preview, which says where to edit them. Of a page with a
 * file of its own also the figures, cautions, sources and texts of its place; of a list its entries.
 */
import { collections, collectionNames, type Collection } from '../schemas/collections.ts';
import { HAZARDS_OF } from '../schemas/hazards.ts';
import { filesOfLayers, type Entry, type Folder } from './folder.ts';
import { picturesShown } from './pictures.ts';
import { attribute, isTag, walk } from './prose.ts';

/** Lists of entries that have no page of their own. */
const LISTS: Readonly<Record<string, Collection>> = {
  'words/': 'words',
  'reading/': 'reading',
  'figures/': 'figures',
  'signs/': 'signs',
  'notices/': 'notices',
  'counts/': 'counts',
  'search/': 'answers',
  'club/': 'files',
  'year/bloom/': 'forage',
};

const SHOWN_BY: Readonly<Record<string, readonly [Collection, string]>> = {
  Figure: ['figures', 'id'],
  Local: ['local', 'id'],
  Caution: ['cautions', 'id'],
  Drawing: ['drawings', 'name'],
};

export type PageFiles = {
  /** Its own file and what was laid over it. Empty for a page without one. */
  own: string[];
  /** The files of what else it shows, or of the entries that it lists. */
  shown: string[];
  /** What it lists. */
  lists?: Collection;
};

/** `place`: the address below the base, such as `know-how/swarms/`. */
export function filesOfPage(folder: Folder, place: string): PageFiles {
  const ofEntry = collectionNames.find((name) => place.startsWith(pathOf(name) ?? '\n') && place !== pathOf(name));
  if (ofEntry) {
    const id = place.slice(pathOf(ofEntry)!.length).replace(/\/$/, '');
    const entry = entryOf(folder, ofEntry, id);
    if (entry) {
      const own = filesOfEntry(entry);
      return { own, shown: shownOn(folder, entry).filter((path) => !own.includes(path)) };
    }
    // A file with a fault in its words or fields has no entry, and its page is not there.
    const unread = filesOfLayers(folder).find(({ bare }) => bare === `${ofEntry}/${id}${collections[ofEntry].ending}`);
    return { own: unread ? [unread.path] : [], shown: [] };
  }
  const [, list] = Object.entries(LISTS).find(([path]) => place.startsWith(path)) ?? [];
  const lists = list ?? collectionNames.find((name) => pathOf(name) === place);
  if (!lists) return { own: [], shown: [] };
  return { own: [], shown: folder.entries.filter(({ collection }) => collection === lists).flatMap(filesOfEntry), lists };
}

/** The address of an entry's page below the base. Null where it has none. */
export const placeOfEntry = ({ collection, id }: Entry): string | null => {
  const path = pathOf(collection as Collection);
  return path === null ? null : `${path}${id.replace(/\.add$/, '')}/`;
};

/** Where the words in a line of the whole text are written: words that were added are in their own file. */
export function writtenAt(entry: Entry, line: number): { path: string; line: number } {
  const { added, over, overlays } = entry;
  if (added && line >= added.fromLine) return { path: added.path, line: line - added.fromLine + added.toLine };
  return over && overlays ? writtenAt(over, line) : { path: entry.path, line };
}

/** The book of a file; undefined for one of the club's own. */
export const bookOf = ({ books }: Folder, path: string): Folder['books'][number] | undefined =>
  books.find(({ id }) => path.startsWith(`books/${id}/`));

const pathOf = (name: Collection): string | null => collections[name]?.path?.slice(1) ?? null;

const entryOf = ({ entries }: Folder, collection: string, id: string): Entry | undefined =>
  entries.find((entry) => entry.collection === collection && entry.id === id);

/** What was laid over it last comes first. */
export const filesOfEntry = ({ path, translation, overlays = [] }: Entry): string[] => [
  ...overlays.map((overlay) => overlay.path).reverse(),
  ...(translation ? [translation.path] : []),
  path,
];

function shownOn(folder: Folder, entry: Entry): string[] {
  const { work, sources } = (entry.fields.value ?? {}) as { work?: unknown; sources?: unknown };
  const hazards = listOf(work).flatMap((each) => HAZARDS_OF[each as keyof typeof HAZARDS_OF] ?? []);
  const named: (readonly [Collection, string])[] = [
    ...tagsOf(entry),
    ...hazards.map((hazard) => ['cautions', hazard] as const),
    ...listOf(sources).map((source) => ['sources', source] as const),
  ];
  const entries = named.flatMap(([collection, id]) => entryOf(folder, collection, id) ?? []);
  const locals = entries.filter(({ collection }) => collection === 'local').flatMap((local) => shownOn(folder, local));
  const pictures = picturesShown(folder).flatMap(({ page, path }) => (page === entry && path !== null ? [path] : []));
  return [...new Set([...entries.flatMap(filesOfEntry), ...locals, ...pictures])].sort();
}

const tagsOf = ({ tree }: Entry): (readonly [Collection, string])[] =>
  [...(tree ? walk(tree) : [])].flatMap((node) => {
    const shown = isTag(node) ? SHOWN_BY[node.name] : undefined;
    return isTag(node) && shown ? [[shown[0], attribute(node, shown[1]) ?? ''] as const] : [];
  });

const listOf = (value: unknown): string[] => (Array.isArray(value) ? value.map(String) : []);
