/*
 * MDX module of each page: a Vite plug-in that gives it an address, and a remark plug-in that supplies its tree. source/ has already
 * parsed the words, so nothing is parsed twice, and what was checked is what is compiled.
 */
import { readFileSync } from 'node:fs';
import type { Root } from 'mdast';
import type { Tongue } from '../../shared/country/language.ts';
import type { Processor } from 'unified';
import { decode } from './decode.ts';
import { onDisk, withoutDrafts, type Entry, type Folder } from './folder.ts';
import { heldFolder, openFolder } from './open-folder.ts';
import { filesOfEntry, writtenAt } from './page-files.ts';

/** A virtual folder. A club's own may be anywhere, under a name that no module address can contain. */
const BELOW = 'club-words/';
const IN_ADDRESS = /[\\/]club-words[\\/]((?:[a-z]{2}[\\/])?[^\\/?]+[\\/][^\\/?]+\.mdx)(\?.*)?$/;

/** The page's path for Astro, relative to the project's folder. `tongue`: for readers of another language than the club's. */
export const modulePath = ({ collection, id }: Entry, tongue?: Tongue): string =>
  `${BELOW}${tongue ? `${tongue}/` : ''}${collection}/${id}.mdx`;

/** `articles/swarms.mdx` or `es/articles/swarms.mdx`, whichever folders its words are from; null for a module of another kind. */
const pathIn = (address: string): string | null => IN_ADDRESS.exec(address)?.[1]?.replaceAll('\\', '/') ?? null;

/** A preview shows drafts. */
let isPreview = false;

/** Vite's view of its modules while a preview runs. */
type Preview<Module> = { environment: { moduleGraph: { idToModuleMap: Map<string, Module> } } };

export function mdxModules() {
  isPreview = false;
  return {
    name: 'club-words',
    enforce: 'pre' as const,
    configResolved({ command }: { command: string }): void {
      isPreview = command === 'serve';
    },
    resolveId: { filter: { id: IN_ADDRESS }, handler: (id: string): string => id },
    load: {
      filter: { id: IN_ADDRESS },
      handler(id: string): string {
        const path = pathIn(id)!;
        if (isPreview) readIfChanged(path);
        const entry = heldEntry(path);
        if (!entry) throw new Error(`${path} is not in the club's folder any more`);
        // An empty line comes first, because Astro would parse words between two lines "---" as front matter, such as a layout.
        return `${path}\n${entry.body}`;
      },
    },
    hotUpdate<Module>(this: Preview<Module>, { file, modules }: { file: string; modules: Module[] }): Module[] | undefined {
      const held = heldFolder();
      if (!held) return undefined;
      const ours = [...this.environment.moduleGraph.idToModuleMap].filter(([id]) => {
        const path = pathIn(id);
        return path !== null && filesOf(held, path).some((each) => onDisk(held, each).replaceAll('\\', '/') === file);
      });
      return ours.length > 0 ? [...modules, ...ours.map(([, module]) => module)] : undefined;
    },
  };
}

/** A browser may ask for the page before the watcher has reported its change. */
function readIfChanged(path: string): void {
  const held = heldFolder();
  if (held && filesOf(held, path).some((each) => held.parsed.get(each)?.text !== textNow(held, each))) openFolder(held.directory, true);
}

/** The files that a page's words are from; of a page that is not there, the one that it would be from. */
function filesOf(folder: Folder, path: string): string[] {
  const entry = pagesOf(folder).get(path);
  return entry ? filesOfEntry(entry) : [path];
}

function textNow(folder: Folder, path: string): string | undefined {
  try {
    const decoded = decode(path, readFileSync(onDisk(folder, path)));
    return decoded.ok ? decoded.value : undefined;
  } catch {
    return undefined;
  }
}

const pages = new WeakMap<Folder, Map<string, Entry>>();

function pagesOf(folder: Folder): Map<string, Entry> {
  const known = pages.get(folder);
  if (known) return known;
  const { entries, alsoIn } = isPreview ? folder : withoutDrafts(folder);
  const made = new Map(entries.map((entry) => [`${entry.collection}/${entry.id}.mdx`, entry]));
  for (const [tongue, others] of alsoIn)
    for (const entry of others) if (entry.translation) made.set(`${tongue}/${entry.collection}/${entry.id}.mdx`, entry);
  pages.set(folder, made);
  return made;
}

function heldEntry(path: string | null): Entry | undefined {
  const held = path === null ? undefined : heldFolder();
  return held && pagesOf(held).get(path!);
}

/** True for words of a reader: an id, an address or a choice has no blank and no capital. */
export const isText = (value: string): boolean => (/\s/.test(value) || /^\p{Lu}/u.test(value)) && !/^\w+:\/\//.test(value);

/** A book is written in American English. In a translation nothing is changed. */
export const isWrittenForCountry = ({ book, tongue = 'en' }: Entry): boolean => book !== undefined && tongue === 'en';

/** True where the words of a module are from a book in English. */
export function isOfBook(address: string): boolean {
  const entry = heldEntry(pathIn(address));
  return entry !== undefined && isWrittenForCountry(entry);
}

/** Returns the parsed tree in place of a second parse. It is a copy, because compiling changes it and the preview checks it again. */
export function remarkReadTree(this: Processor): void {
  const parse = this.parser!;
  this.parser = (text, file): Root => {
    const words = text.slice(text.indexOf('\n') + 1);
    const read = heldEntry(pathIn(file.path));
    if (!read?.tree || read.body !== words) return parse(words, file) as Root;
    const tree = structuredClone(read.tree);
    return isPreview ? withFiles(tree, read) : tree;
  };
}

/** For the preview: each block of a page carries the file and the line of its words. */
function withFiles(tree: Root, entry: Entry): Root {
  for (const node of tree.children) {
    const { path, line } = writtenAt(entry, entry.bodyLine + (node.position?.start.line ?? 1) - 1);
    node.data = { ...node.data, hProperties: { 'data-written': `${path}:${line}` } } as typeof node.data;
  }
  return tree;
}
