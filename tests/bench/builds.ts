/*
 * Our whole build compared with a bare Astro project with Pagefind and the same pages, alternately in one run. The bare project uses MDX
 * with a component on each page and the same processor as ours. A second one uses plain Markdown, which is less work than any almanac.
 */
import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { projectFolder } from '../../src/cli/paths.ts';
import { writeBareProject, writeClub, type Written } from './club.ts';
import { measured, together, type Run } from './measured-run.ts';
import { median, type Row } from './table.ts';

const packages = join(projectFolder, 'node_modules');

/** How often each is built. The largest is built once, because it takes minutes. */
const ROUNDS: Record<number, number> = { 100: 3, 1000: 3, 5000: 1 };

type Built = { seconds: number; processorSeconds: number; peakMB: number };
type Ours = Built & { book: number };
type Side = { ours: Ours; mdx: Built; md: Built };

export async function builds(quick: boolean): Promise<Row[]> {
  const sizes = quick ? [100, 1000] : [100, 1000, 5000];
  const sides = new Map<number, Side>();
  for (const pages of sizes) {
    console.log(`  ${pages} pages, ${ROUNDS[pages]} ${ROUNDS[pages] === 1 ? 'time' : 'times'} ...`);
    sides.set(pages, await sideBySide(pages, ROUNDS[pages]!));
  }
  return [...[...sides].flatMap(([pages, side]) => rowsOf(pages, side)), ...growth(sides)];
}

function rowsOf(pages: number, { ours, mdx, md }: Side): Row[] {
  const name = (words: string): string => `${pages} pages: ${words}`;
  const apart = ours.seconds - ours.book;
  const row = (words: string, value: number, unit: Row['unit'], more: Partial<Row> = {}): Row => ({
    part: 'builds',
    name: name(words),
    measured: value,
    unit,
    ...more,
  });
  return [
    row('ours, the book apart', apart, 's'),
    row('the book', ours.book, 's'),
    row('bare, MDX', mdx.seconds, 's'),
    row('bare, Markdown', md.seconds, 's'),
    row('ours / bare MDX', apart / mdx.seconds, 'times', pages === 1000 ? { most: 1.5 } : {}),
    row('ours / bare Markdown', apart / md.seconds, 'times'),
    row('processor, ours with the book', ours.processorSeconds, 's', {
      note: `bare MDX ${mdx.processorSeconds.toFixed(2)} s, bare Markdown ${md.processorSeconds.toFixed(2)} s`,
    }),
    row('most memory, ours', ours.peakMB, 'MB', {
      ...(pages === 5000 ? { most: 3000 } : {}),
      note: `bare MDX ${mdx.peakMB.toFixed(0)} MB, bare Markdown ${md.peakMB.toFixed(0)} MB`,
    }),
  ];
}

function growth(sides: ReadonlyMap<number, Side>): Row[] {
  const [few, many] = [sides.get(1000), sides.get(5000)];
  if (!few || !many) return [];
  const least = sides.get(100)!;
  const grows = (of: (side: Side) => number): number => of(many) / 5000 / (of(few) / 1000);
  // Without the fixed cost of every build before its first page.
  const further = (of: (side: Side) => number): number => (of(many) - of(few)) / 4000 / ((of(few) - of(least)) / 900);
  const row = (name: string, value: number, more: Partial<Row> = {}): Row => ({
    part: 'builds',
    name: `a page at 5000 / at 1000: ${name}`,
    measured: value,
    unit: 'times',
    ...more,
  });
  return [
    row(
      'ours, the book apart',
      grows(({ ours }) => ours.seconds - ours.book),
      { most: 1.1 },
    ),
    {
      ...row(
        '',
        further(({ ours }) => ours.seconds - ours.book),
        { most: 1.1 },
      ),
      name: 'a further page from 1000 to 5000 / from 100 to 1000: ours, the book apart',
    },
    row(
      'ours, processor, with the book',
      grows(({ ours }) => ours.processorSeconds),
    ),
    row(
      'the book',
      grows(({ ours }) => ours.book),
    ),
    row(
      'bare MDX',
      grows(({ mdx }) => mdx.seconds),
    ),
  ];
}

async function sideBySide(pages: number, rounds: number): Promise<Side> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  const removeAll = (): void => rmSync(folder, { recursive: true, force: true });
  process.on('exit', removeAll);
  writeClub(join(folder, 'club'), pages);
  for (const written of ['mdx', 'md'] as const) {
    writeBareProject(join(folder, written), pages, written);
    symlinkSync(packages, join(folder, written, 'node_modules'), 'junction');
  }
  const all: { ours: Run[]; mdx: Run[]; md: Run[] } = { ours: [], mdx: [], md: [] };
  for (let round = 0; round < rounds; round += 1) {
    all.ours.push(await buildOurs(folder));
    all.mdx.push(await buildBare(folder, 'mdx'));
    all.md.push(await buildBare(folder, 'md'));
  }
  removeAll();
  process.off('exit', removeAll);
  return { ours: { ...middle(all.ours), book: median(all.ours.map(bookSeconds)) }, mdx: middle(all.mdx), md: middle(all.md) };
}

async function buildOurs(folder: string): Promise<Run> {
  const out = join(folder, 'site');
  rmSync(out, { recursive: true, force: true });
  return measured(
    process.execPath,
    [join(projectFolder, 'src', 'cli', 'build.ts'), '--content', join(folder, 'club'), '--out', out, '--site', 'https://club.example'],
    projectFolder,
  );
}

async function buildBare(folder: string, written: Written): Promise<Run> {
  const project = join(folder, written);
  for (const left of ['dist', '.kept', '.astro']) rmSync(join(project, left), { recursive: true, force: true });
  const drawn = await measured(process.execPath, [join(packages, 'astro', 'bin', 'astro.mjs'), 'build'], project);
  return together([
    drawn,
    await measured(process.execPath, [join(packages, 'pagefind', 'lib', 'runner', 'bin.cjs'), '--site', 'dist'], project),
  ]);
}

/** From the line before to the line that names the book. */
export function bookSeconds({ lines }: Run): number {
  const at = lines.findIndex(({ text }) => text.startsWith('Book: '));
  if (at < 1) throw new Error(`the build names no book:\n${lines.map(({ text }) => text).join('\n')}`);
  return lines[at]!.second - lines[at - 1]!.second;
}

const middle = (runs: readonly Run[]): Built => ({
  seconds: median(runs.map(({ seconds }) => seconds)),
  processorSeconds: median(runs.map(({ processorSeconds }) => processorSeconds)),
  peakMB: Math.max(...runs.map(({ peakMB }) => peakMB)),
});
