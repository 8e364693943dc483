/* Finds the entry that a webmaster names: `articles/swarms`, the path of its file, or the address of its page. */
import { collectionNames, collections, type Collection } from '../schemas/collections.ts';
import { collectionCalled } from './new/kinds.ts';
import { nearestName } from '../../shared/words/edit-distance.ts';

export type Named = { ok: true; collection: Collection; id: string; path: string } | { ok: false; sentence: string };

/** `files`: every path inside the content folder. */
export function entryNamed(typed: string, files: readonly string[]): Named {
  const said = typed.trim().replaceAll('\\', '/');
  const [, kind, name] = byAddress(said) ?? /^(?:.*\/)?([^/]+)\/([^/]+?)(?:\.(?:mdx|yaml|csv))?$/.exec(said) ?? [];
  if (kind === undefined || name === undefined)
    return wrong(`"${typed}" names no entry. Write its folder and its name, such as articles/swarms.`);
  const called = collectionCalled(kind);
  if (!called.ok) return wrong(`There is no folder "${kind}"; there are: ${collectionNames.join(', ')}.`);
  const { collection } = called;
  const path = `${collection}/${name}${collections[collection].ending}`;
  if (files.includes(path)) return { ok: true, collection, id: name, path };
  const elsewhere = collectionNames.find((each) => files.includes(`${each}/${name}${collections[each].ending}`));
  if (elsewhere) return wrong(`There is no ${path}; did you mean ${elsewhere}/${name}?`);
  const near = nearestName(name, idsIn(collection, files), 1);
  return wrong(near ? `There is no ${path}; did you mean ${collection}/${near}?` : `There is no ${path}.`);
}

/** `/pests/varroa/`, with or without the site before it and a fragment after it. */
function byAddress(said: string): [string, string, string] | null {
  const bare = said
    .replace(/^https?:\/\/[^/]+/, '')
    .replace(/[?#].*$/, '')
    .replace(/\/$/, '');
  for (const name of collectionNames) {
    const { path } = collections[name];
    const id = path === null ? undefined : new RegExp(`${path}([^/.]+)$`).exec(bare)?.[1];
    if (id !== undefined) return [said, name, id];
  }
  return null;
}

const idsIn = (collection: Collection, files: readonly string[]): string[] =>
  files.flatMap((path) => (path.startsWith(`${collection}/`) ? (/^[^/]+\/([^/]+)\.(?:mdx|yaml|csv)$/.exec(path)?.[1] ?? []) : []));

const wrong = (sentence: string): Named => ({ ok: false, sentence });
