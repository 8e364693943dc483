/* Finds the entry that a webmaster names: `articles/swarms`, the path of its file, or the address of its page. */
import { collectionNames, collections, type Collection } from '../schemas/collections.ts';
import { collectionCalled } from './new/kinds.ts';
import { err, ok, type Result } from '../../shared/result.ts';
import { nearName } from '../../shared/words/near-name.ts';

/** The entry, or the sentence for a name that no entry has. `files`: every path inside the content folder. */
export function entryNamed(typed: string, files: readonly string[]): Result<{ collection: Collection; id: string; path: string }, string> {
  const written = typed.trim().replaceAll('\\', '/');
  const [, kind, name] = byAddress(written) ?? /^(?:.*\/)?([^/]+)\/([^/]+?)(?:\.(?:mdx|yaml|csv))?$/.exec(written) ?? [];
  if (kind === undefined || name === undefined)
    return err(`"${typed}" is not the name of an entry. Write its folder and its name, such as articles/swarms.`);
  const called = collectionCalled(kind);
  if (!called.ok) return err(`There is no folder "${kind}"; there are: ${collectionNames.join(', ')}.`);
  const collection = called.value;
  const path = `${collection}/${name}${collections[collection].ending}`;
  if (files.includes(path)) return ok({ collection, id: name, path });
  const elsewhere = collectionNames.find((each) => files.includes(`${each}/${name}${collections[each].ending}`));
  if (elsewhere) return err(`There is no ${path}; did you mean ${elsewhere}/${name}?`);
  const near = nearName(name, idsIn(collection, files));
  return err(near ? `There is no ${path}; did you mean ${collection}/${near}?` : `There is no ${path}.`);
}

/** `/pests/varroa/`, with or without the site before it and a fragment after it. */
function byAddress(written: string): [string, string, string] | null {
  const bare = written
    .replace(/^https?:\/\/[^/]+/, '')
    .replace(/[?#].*$/, '')
    .replace(/\/$/, '');
  for (const name of collectionNames) {
    const { path } = collections[name];
    const id = path === null ? undefined : new RegExp(`${path}([^/.]+)$`).exec(bare)?.[1];
    if (id !== undefined) return [written, name, id];
  }
  return null;
}

const idsIn = (collection: Collection, files: readonly string[]): string[] =>
  files.flatMap((path) => (path.startsWith(`${collection}/`) ? (/^[^/]+\/([^/]+)\.(?:mdx|yaml|csv)$/.exec(path)?.[1] ?? []) : []));
