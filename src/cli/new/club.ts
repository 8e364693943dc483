/* Folder of a new club: club.yaml, one page of each important kind with blanks to fill, and copied entries. */
import { existsSync, readdirSync, statSync } from 'node:fs';
import { relative, resolve, sep } from 'node:path';
import type { Folder } from '../../source/folder.ts';
import { club } from '../../schemas/club.ts';
import { collectionNames, collections, type Collection } from '../../schemas/collections.ts';
import { copied } from './copied.ts';
import type { File } from './draft.ts';
import { editorFiles } from './editor.ts';
import { fieldLines, type Given } from './field-lines.ts';
import { singular } from './kinds.ts';
import { template } from './template.ts';

/** One page of each kind, published as soon as its blanks are filled. */
const FIRST: readonly Collection[] = ['checklists', 'articles', 'meetings'];

/** The reason why a club's folder cannot be created there, or null. */
export function refusal(directory: string, project: string): string | null {
  const inside = !relative(resolve(project, 'content'), directory).startsWith('..');
  if (inside) return "That folder is inside the demo club's. Write a folder beside the almanac's, such as ../our-club.";
  if (!existsSync(directory)) return null;
  if (!statSync(directory).isDirectory()) return `${directory} is a file. Write the name of a new folder.`;
  return readdirSync(directory).length === 0
    ? null
    : `${directory.split(sep).at(-1)} already holds files, and was not changed. Write the name of a new folder.`;
}

/** Every file, with paths inside the folder. `from`: the club whose figures, sources and cautions are copied. */
export function clubFiles(from: Folder): File[] {
  const taken = copied(from);
  const has = new Set([...FIRST, ...taken.map(({ path }) => path.split('/')[0])]);
  const without = collectionNames.filter((name) => !has.has(name) && !('mayLack' in collections[name]));
  return [{ path: 'club.yaml', text: clubFile(without) }, ...FIRST.map(firstPage), ...taken, ...editorFiles()];
}

const HEAD = [
  '# Fill each blank; the remark above it says with what. A line such as "#name: value" is a field that may be left out:',
  '# to use it, take away its first number sign, and those of the indented lines below it.',
  '# npm run check -- --content and the path of this folder lists every blank that is left.',
];

/** Phases of the year are the quickest way to dates. A contact without a number helps nobody. */
const clubFile = (without: readonly string[]): string =>
  `${[...HEAD, ...fieldLines(club, { demonstration: false, season: { phases: null }, contacts: { phone: null, 'public-office': null }, 'leaves-out': without } satisfies Given)].join('\n')}\n`;

function firstPage(collection: Collection): File {
  const kind = singular(collection);
  const text = template(collection, {}).replace(
    '---\n',
    `---\n# Your first ${kind}. Give the file a name of its own, such as ${kind === 'meeting' ? '2026-09-12-honey-evening' : 'swarm-season'}.mdx: it makes the address.\n`,
  );
  return { path: `${collection}/first-${kind}${collections[collection].ending}`, text };
}
