/* Our build beside a bare Astro build and Pagefind of the same pages, one after the other in one run: ratios bear a busy machine, seconds do not. */
import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { projectFolder } from '../../src/desk/places.ts';
import { writeBareProject, writeClub } from './club.ts';
import { measured, type Run } from './measured-run.ts';
import type { Row } from './row.ts';

/** At most this much of a bare build; and a page at the largest size costs at most this much of one at 1,000. */
const RATIO = 1.25;
const GROWTH = 1.1;
const MEMORY_MB = 2500;

type Sizes = { ours: Run; mdx: Run; md: Run; check: Run };

export async function measureBuilds(sizes: readonly number[], say: (line: string) => void): Promise<Row[]> {
  const rows: Row[] = [];
  const all = new Map<number, Sizes>();
  for (const pages of sizes) {
    say(`Building ${pages} pages, ours and bare ...`);
    const found = await buildsOf(pages);
    all.set(pages, found);
    rows.push(
      { what: `${pages} pages: our build`, value: found.ours.seconds, unit: 's' },
      { what: `${pages} pages: bare Astro (.mdx) + Pagefind`, value: found.mdx.seconds, unit: 's' },
      { what: `${pages} pages: bare Astro (.md) + Pagefind`, value: found.md.seconds, unit: 's' },
      { what: `${pages} pages: ours to bare .mdx, wall`, value: found.ours.seconds / found.mdx.seconds, unit: 'x', ...(pages === 1000 && { budget: RATIO }) },
      { what: `${pages} pages: ours to bare .mdx, processor`, value: found.ours.processorSeconds / found.mdx.processorSeconds, unit: 'x' },
      { what: `${pages} pages: ours to bare .md, wall`, value: found.ours.seconds / found.md.seconds, unit: 'x' },
      { what: `${pages} pages: our peak memory`, value: found.ours.peakMB, unit: 'MB', budget: MEMORY_MB },
      { what: `${pages} pages: bare .mdx peak memory`, value: found.mdx.peakMB, unit: 'MB' },
      { what: `${pages} pages: check alone`, value: found.check.seconds, unit: 's' },
    );
  }
  const [small, middle, large] = [...sizes];
  if (large !== undefined) {
    const cost = (from: number, to: number): number => (all.get(to)!.ours.processorSeconds - all.get(from)!.ours.processorSeconds) / (to - from);
    rows.push({ what: `a further page between ${middle} and ${large}, to one between ${small} and ${middle} (processor)`, value: cost(middle!, large) / cost(small!, middle!), unit: 'x', budget: GROWTH });
  }
  return rows;
}

async function buildsOf(pages: number): Promise<Sizes> {
  const work = mkdtempSync(join(tmpdir(), 'bench-'));
  const club = join(work, 'club');
  writeClub(club, pages);
  const check = await measured(process.execPath, [join(projectFolder, 'src/desk/check.ts'), '--content', club], projectFolder);
  const ours = await measured(process.execPath, [join(projectFolder, 'src/desk/build.ts'), '--content', club, '--out', join(work, 'site')], projectFolder);
  const bare = async (ending: '.mdx' | '.md'): Promise<Run> => {
    const folder = join(work, `bare${ending}`);
    writeBareProject(folder, pages, ending);
    symlinkSync(join(projectFolder, 'node_modules'), join(folder, 'node_modules'), 'junction');
    return added(await measured(process.execPath, [join(projectFolder, 'node_modules/astro/bin/astro.mjs'), 'build'], folder), await measured(process.execPath, [join(projectFolder, 'node_modules/pagefind/lib/runner/bin.cjs'), '--site', 'dist'], folder));
  };
  const [mdx, md] = [await bare('.mdx'), await bare('.md')];
  rmSync(work, { recursive: true, force: true });
  return { ours, mdx, md, check };
}

const added = (a: Run, b: Run): Run => ({ seconds: a.seconds + b.seconds, processorSeconds: a.processorSeconds + b.processorSeconds, peakMB: Math.max(a.peakMB, b.peakMB) });
