/*
 * MDX module of each page: a Vite plug-in that gives it an address, and a remark plug-in that supplies its tree. source/ has already
 * parsed the words, so nothing is parsed twice, and what was checked is what is compiled.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Root } from 'mdast';
import type { Processor } from 'unified';
import { decode } from './decode.ts';
import type { Entry, Folder } from './folder.ts';
import { heldFolder, openFolder } from './open-folder.ts';

/** A virtual folder. A club's own may be anywhere, under a name that no module address can contain. */
const BELOW = 'club-words/';
const IN_ADDRESS = /[\\/]club-words[\\/]([^\\/?]+[\\/][^\\/?]+\.mdx)(\?.*)?$/;

/** The page's path for Astro, relative to the project's folder. */
export const modulePath = (entry: Entry): string => BELOW + entry.path;

/** The path inside the content folder, or null for a module of another kind. */
const pathIn = (address: string): string | null => IN_ADDRESS.exec(address)?.[1]?.replaceAll('\\', '/') ?? null;

/** Vite's view of its modules while a preview runs. */
type Preview<Module> = { environment: { moduleGraph: { idToModuleMap: Map<string, Module> } } };

export function mdxModules() {
  let isPreview = false;
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
        return path !== null && join(held.directory, path).replaceAll('\\', '/') === file;
      });
      return ours.length > 0 ? [...modules, ...ours.map(([, module]) => module)] : undefined;
    },
  };
}

/** A browser may ask for the page before the watcher has reported its change. */
function readIfChanged(path: string): void {
  const held = heldFolder();
  if (held && held.parsed.get(path)?.text !== textNow(held, path)) openFolder(held.directory, true);
}

function textNow({ directory }: Folder, path: string): string | undefined {
  try {
    const decoded = decode(path, readFileSync(join(directory, path)));
    return decoded.ok ? decoded.text : undefined;
  } catch {
    return undefined;
  }
}

const heldEntry = (path: string | null): Entry | null | undefined => (path === null ? null : heldFolder()?.parsed.get(path)?.entry);

/** Returns the parsed tree in place of a second parse. It is a copy, because compiling changes it and the preview checks it again. */
export function remarkReadTree(this: Processor): void {
  const parse = this.parser!;
  this.parser = (text, file): Root => {
    const words = text.slice(text.indexOf('\n') + 1);
    const read = heldEntry(pathIn(file.path));
    return read?.tree && read.body === words ? structuredClone(read.tree) : (parse(words, file) as Root);
  };
}
