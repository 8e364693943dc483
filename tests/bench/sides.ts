/*
 * The same pages for our generator and for three bare projects: Astro with the Markdown processor that we use, Astro with its own, and
 * Eleventy. Each bare site is indexed by Pagefind's own program.
 */
import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { projectFolder } from '../../src/cli/paths.ts';
import { cacheFile } from '../../src/source/parse-cache.ts';
import { articleIn, writeBareProject, writeClub, type Bare } from './club.ts';
import { measured, together, type Run } from './measured-run.ts';
import { ownPackages } from './own-packages.ts';

export type Side = 'ours' | Bare;
export const BARE = ['same', 'usual', 'eleventy'] as const satisfies readonly Bare[];
export const SIDES = ['ours', ...BARE] as const satisfies readonly Side[];

/** The names in the tables. */
export const NAMES: Readonly<Record<Side, string>> = {
  ours: 'ours',
  same: 'bare Astro, our processor',
  usual: 'bare Astro, its own processor',
  eleventy: 'Eleventy',
};

const packages = join(projectFolder, 'node_modules');

/** A command line: the file that Node runs, its words, and the folder to run it in. */
export type Command = { words: string[]; cwd: string };

export type Sides = {
  build: (side: Side) => Promise<Run>;
  /** The folder of the built site. */
  site: (side: Side) => string;
  /** The command that previews it. */
  preview: (side: Side) => Command;
  /** The file of the first article. */
  article: (side: Side) => string;
  remove: () => void;
};

export async function openSides(pages: number): Promise<Sides> {
  const eleventy = join(await ownPackages('eleventy', '23 MB'), 'node_modules', '@11ty', 'eleventy', 'cmd.cjs');
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  const remove = (): void => rmSync(folder, { recursive: true, force: true });
  process.once('exit', remove);
  const club = join(folder, 'club');
  writeClub(club, pages);
  for (const side of BARE) {
    writeBareProject(join(folder, side), pages, side);
    if (side !== 'eleventy') symlinkSync(packages, join(folder, side, 'node_modules'), 'junction');
  }
  const site = (side: Side): string => (side === 'ours' ? join(folder, 'site') : join(folder, side, 'dist'));
  const command = (side: Bare, ofAstro: string, ofEleventy: readonly string[]): Command => ({
    words: side === 'eleventy' ? [eleventy, ...ofEleventy] : [join(packages, 'astro', 'bin', 'astro.mjs'), ofAstro],
    cwd: join(folder, side),
  });
  const run = ({ words, cwd }: Command): Promise<Run> => measured(process.execPath, words, cwd);
  return {
    site,
    article: (side) => articleIn(side === 'ours' ? club : join(folder, side), side),
    preview: (side) =>
      side === 'ours'
        ? { words: [join(projectFolder, 'src', 'cli', 'dev.ts'), '--content', club], cwd: projectFolder }
        : command(side, 'dev', ['--serve']),
    build: async (side) => {
      rmSync(site(side), { recursive: true, force: true });
      if (side === 'ours') {
        // A cold build: what an earlier one parsed is in no bare project.
        rmSync(cacheFile, { force: true });
        const words = ['--content', club, '--out', site(side), '--site', 'https://club.example'];
        return run({ words: [join(projectFolder, 'scripts', 'launch.mjs'), 'build', ...words], cwd: projectFolder });
      }
      for (const left of ['.kept', '.astro']) rmSync(join(folder, side, left), { recursive: true, force: true });
      const drawn = await run(command(side, 'build', ['--quiet']));
      const pagefind = [join(packages, 'pagefind', 'lib', 'runner', 'bin.cjs'), '--site', 'dist'];
      return together([drawn, await run({ words: pagefind, cwd: join(folder, side) })]);
    },
    remove,
  };
}
