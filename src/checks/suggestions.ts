/*
 * The one place that guesses which entry or page an author meant. It knows ids of every kind, titles, other names, old addresses, and
 * which files are new since the last edition. It returns null where nothing is close.
 */
import { nearName } from '../../shared/words/near-name.ts';
import { collections, type Collection } from '../schemas/collections.ts';
import type { Entry } from '../source/folder.ts';
import type { ValidEntries } from './fields.ts';
import { isDraft, isWithdrawn } from './place.ts';

export type Suggestion = { collection: Collection; id: string; why: 'address' | 'renamed' | 'name' };

/** The entry of a collection that is meant by an id that no entry has. */
export function entryMeant(club: ValidEntries, collection: Collection, id: string): Suggestion | null {
  const name = id.toLowerCase();
  const known = [...club.ids[collection]];
  const named = (found: string | null): Suggestion | null => (found === null ? null : { collection, id: found, why: 'name' });
  return (
    named(known.includes(name) ? name : null) ??
    renamed(club, collection, name) ??
    named(onlyOne(entriesOf(club, collection).filter((entry) => namesOf(entry).some((each) => slug(each) === name)))) ??
    named(nearName(name, known)) ??
    named(onlyOne(entriesOf(club, collection).filter((entry) => isWithin(name, entry))))
  );
}

/** The page that is meant by an address that no page has. */
export function pageMeant(club: ValidEntries, address: string): Suggestion | null {
  const name = address.replace(/\/+$/, '').split('/').at(-1) ?? '';
  if (name === '') return null;
  const paged = (Object.entries(collections) as [Collection, { path: string | null }][]).flatMap(([collection, { path }]) =>
    path === null ? [] : [{ collection, path }],
  );
  const formerly = paged.flatMap(({ collection }) =>
    entriesOf(club, collection).flatMap((entry): Suggestion[] =>
      formerlyOf(entry).includes(address) ? [{ collection, id: entry.id, why: 'address' }] : [],
    ),
  );
  const inPlace = paged.find(({ path }) => address.startsWith(path));
  const elsewhere = paged.filter((each) => each !== inPlace);
  const same = elsewhere.filter(({ collection }) => club.ids[collection].has(name));
  const close = [
    ...(inPlace ? [entryMeant(club, inPlace.collection, name)] : []),
    ...(same.length === 1 ? [{ collection: same[0]!.collection, id: name, why: 'name' } satisfies Suggestion] : []),
  ];
  const others = elsewhere.flatMap(({ collection }) => entryMeant(club, collection, name) ?? []);
  return formerly[0] ?? close.find((each) => each !== null) ?? (others.length === 1 ? others[0]! : null);
}

/** Of an id that is not in its collection: what was found, and what to write. */
export function notIn(club: ValidEntries, collection: Collection, id: string): { found: string; write: string } {
  const meant = entryMeant(club, collection, id);
  const other = meant === null ? collectionWith(club, id) : null;
  return {
    found: `"${id}", which is ${other === null ? '' : `in ${other}/ and `}not in ${collection}/`,
    write: meant ? `"${meant.id}"` : `the name of a file in ${collection}/`,
  };
}

/** Another collection that has an entry of this name. */
const collectionWith = (club: ValidEntries, id: string): string | null =>
  (Object.keys(collections) as Collection[]).find((name) => club.ids[name].has(id)) ?? null;

/** The file that was meant: by its letters, else the only one that shares a word with the name. */
export function fileMeant(name: string, names: readonly string[]): string | undefined {
  const near = nearName(name, names);
  if (near !== null) return near;
  const words = wordsOf(name);
  const sharing = names.filter((each) => wordsOf(each).some((word) => words.includes(word)));
  return sharing.length === 1 ? sharing[0] : undefined;
}

/** Words of a name that tell one file from another. */
const wordsOf = (name: string): string[] =>
  name
    .toLowerCase()
    .replace(/\.[a-z]+$/, '')
    .split(/[^a-z]+/)
    .filter((word) => word.length > 3 && !['form', 'file', 'copy', 'final', 'sheet'].includes(word));

/** A file that is new since the last edition, while this one is gone. */
function renamed({ before, folder, ids }: ValidEntries, collection: Collection, id: string): Suggestion | null {
  const former = before.filter((each) => each.collection === collection);
  const gone = former.filter((each) => !ids[collection].has(each.id));
  const lost = gone.find((each) => each.id === id);
  if (!lost) return null;
  const known = new Set(former.map((each) => each.id));
  const fresh = folder.entries.filter((entry) => entry.collection === collection && entry.book === undefined && !known.has(entry.id));
  const sameTitle = fresh.filter((entry) => lost.title !== '' && slug(titleOf(entry)) === slug(lost.title));
  const found = sameTitle.length === 1 ? sameTitle[0] : gone.length === 1 && fresh.length === 1 ? fresh[0] : undefined;
  return found ? { collection, id: found.id, why: 'renamed' } : null;
}

const entriesOf = ({ folder }: ValidEntries, collection: Collection): Entry[] =>
  folder.entries.filter((entry) => entry.collection === collection && !isDraft(entry) && !isWithdrawn(entry));

type Fields = { title?: unknown; word?: unknown; also?: unknown; 'also-called'?: unknown; formerly?: unknown } | null | undefined;

const textsIn = (value: unknown): string[] =>
  (Array.isArray(value) ? (value as unknown[]) : [value]).filter((each): each is string => typeof each === 'string');

const titleOf = ({ fields }: Entry): string => textsIn((fields.value as Fields)?.title)[0] ?? '';

/** Its title, its other names, and the last names of its old addresses. */
function namesOf(entry: Entry): string[] {
  const value = entry.fields.value as Fields;
  const old = formerlyOf(entry).map((address) => address.split('/').at(-2) ?? '');
  return [value?.title, value?.word, value?.also, value?.['also-called'], old].flatMap(textsIn);
}

const formerlyOf = ({ fields }: Entry): string[] => textsIn((fields.value as Fields)?.formerly);

const slug = (words: string): string =>
  words
    .normalize('NFD')
    .replace(/[\u0300-\u036f'’]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');

/** All words of one name are in the other. */
function isWithin(name: string, entry: Entry): boolean {
  const typed = name.split('-').map(stem);
  return [entry.id, ...namesOf(entry).map(slug)].some((each) => {
    const words = each.split('-').map(stem);
    return (
      typed.every((word) => words.includes(word)) || (words.length > 0 && words.every((word) => word.length > 3 && typed.includes(word)))
    );
  });
}

const stem = (word: string): string => word.replace(/(?<=...)e?s$/, '');

const onlyOne = (entries: readonly Entry[]): string | null => (entries.length === 1 ? entries[0]!.id : null);
