// A reader can open a source of every page of the books on disease, chemicals, law or first aid. No level that a verdict goes by is from memory.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { test } from 'vitest';
import { parse } from 'yaml';
import { followedRows, type Figure } from '../../src/schemas/figures.ts';
import type { Source } from '../../src/schemas/sources.ts';
import type { Work } from '../../src/schemas/hazards.ts';

const COLLECTIONS = ['articles', 'bulletins', 'cautions', 'checklists', 'treatments'] as const;
/** Work that can poison, burn, infect or spoil food. The boxes on stings, smoke, loads and roads are cautions, and every caution is looked at. */
const GRAVE_WORK: ReadonlySet<Work> = new Set<Work>([
  'acid',
  'vapour',
  'alcohol',
  'carbon-dioxide',
  'fire',
  'diseased-comb',
  'honey-as-food',
  'feed-honey',
  'hot-wax',
]);
const GRAVE_SUBJECTS = new Set(['law', 'mites']);
/** Whom to ask about disease, chemicals, fire and first aid. */
const GRAVE_DUTIES = new Set(['doctor', 'inspector', 'pesticide-office', 'fire-office']);

type Page = { sources?: string[]; work?: Work[]; subject?: string; ask?: string; law?: { source: string }[]; rows?: { source?: string }[] };
type Entry = { collection: string; path: string; data: Page };
type Sources = ReadonlyMap<string, Pick<Source, 'url' | 'seen'>>;

const read = (path: string): unknown => {
  const text = readFileSync(path, 'utf8');
  return parse(path.endsWith('.mdx') ? (/^---\n([\s\S]*?)\n---/.exec(text)?.[1] ?? '') : text);
};

const filesOf = (collection: string): string[] =>
  readdirSync('content/books').flatMap((book) => {
    const folder = join('content/books', book, collection);
    try {
      return readdirSync(folder).map((name) => join(folder, name));
    } catch {
      return [];
    }
  });

const idOf = (path: string): string => basename(path).replace(/\.(?:yaml|mdx)$/, '');
const sources: Sources = new Map(filesOf('sources').map((path) => [idOf(path), read(path) as Source]));
const pages: Entry[] = COLLECTIONS.flatMap((collection) =>
  filesOf(collection).map((path) => ({ collection, path, data: read(path) as Page })),
);

const isGrave = ({ collection, data }: Entry): boolean =>
  ['bulletins', 'cautions', 'treatments'].includes(collection) ||
  GRAVE_SUBJECTS.has(data.subject ?? '') ||
  GRAVE_DUTIES.has(data.ask ?? '') ||
  (data.work ?? []).some((work) => GRAVE_WORK.has(work));

/** Whether one of its sources has an address. An addition without sources of its own stands below a page that has them. */
const opens = ({ data }: Entry, known: Sources): boolean => {
  const named = [
    ...(data.sources ?? []),
    ...(data.law ?? []).map(({ source }) => source),
    ...(data.rows ?? []).map(({ source }) => source),
  ];
  return named.length === 0 || named.some((id) => id !== undefined && known.get(id)?.url !== undefined);
};

const closed = (entries: readonly Entry[], known: Sources): string[] =>
  entries.filter((entry) => isGrave(entry) && !opens(entry, known)).map(({ path }) => path);

test('each page on disease, chemicals, law or first aid has a source that a reader can open', () => {
  assert.ok(pages.filter(isGrave).length > 90);
  assert.deepEqual(closed(pages, sources), []);
});

test('a page whose sources have no address is found, by its work, its subject, its duty or its collection', () => {
  const known: Sources = new Map([
    ['printed', { seen: 'itself' as const }],
    ['open', { seen: 'itself' as const, url: 'https://example.org/' }],
  ]);
  const page = (collection: string, path: string, data: Page): Entry => ({ collection, path, data });
  const entries = [
    page('checklists', 'work', { work: ['acid'], sources: ['printed'] }),
    page('articles', 'subject', { subject: 'law', sources: ['printed'] }),
    page('articles', 'duty', { ask: 'doctor', sources: ['printed'] }),
    page('cautions', 'collection', { sources: ['printed'] }),
    page('bulletins', 'addition', { law: [{ source: 'printed' }] }),
    page('articles', 'mild', { subject: 'club', work: ['open-hive'], sources: ['printed'] }),
    page('cautions', 'opens', { sources: ['printed', 'open'] }),
  ];
  assert.deepEqual(closed(entries, known), ['work', 'subject', 'duty', 'collection', 'addition']);
});

/** The calculators that say act, wait, enough, short, passes or ruled out. The others only count or date. */
const VERDICTS = ['mite-count', 'sampling-plan', 'sticky-board', 'treatment-window', 'weight-check', 'winter-stores'];
/** Code beside a calculator that hands it the figures. */
const HANDED_BY = ['src/lib/calculator-figures.ts', 'src/lib/stores-figures.ts', 'src/lib/treatment-rows.ts', 'src/lib/weight-rules.ts'];

/** What all books together write about a figure: its rows, and the rows that any book follows. */
type Rows = { rows: Figure['rows']; followed: string[] };
const figures = new Map<string, Rows>();
for (const path of filesOf('figures')) {
  const { rows: written = [], ...choice } = read(path) as Partial<Figure> & Pick<Figure, 'follows'>;
  const { rows, followed } = figures.get(idOf(path)) ?? { rows: [], followed: [] };
  figures.set(idOf(path), { rows: [...rows, ...written], followed: [...followed, ...followedRows(choice)] });
}

const codeOf = (folder: string): string =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => readFileSync(join(folder, name), 'utf8'))
    .join('\n');

/** Figures whose id stands in the code that makes a verdict. */
const verdictFigures = (): string[] => {
  const code = [
    ...VERDICTS.map((slug) => codeOf(join('src/calculators', slug))),
    ...HANDED_BY.map((path) => readFileSync(path, 'utf8')),
  ].join('\n');
  return [...figures.keys()].filter((id) => code.includes(`'${id}'`)).sort();
};

const fromMemory = (ids: readonly string[], known: Sources): string[] =>
  ids.filter((id) => {
    const { rows, followed } = figures.get(id) ?? { rows: [], followed: [] };
    return rows.some((row) => followed.includes(row.id) && known.get(row.source)?.seen === 'memory');
  });

/** Tables of a standard that nobody could read. Its address opens, and the weight check says beside its verdict that they are from memory. */
const SAID_TO_BE_FROM_MEMORY = ['net-sample-us', 'net-tolerance-us'];

test('no followed figure of a verdict is from memory, but for two that say so and have an address', () => {
  const ids = verdictFigures();
  for (const id of ['mite-action-level', 'mite-emergency-level', 'winter-stores-target', 'stores-water-share', 'net-tolerance-us'])
    assert.ok(ids.includes(id), id);
  assert.deepEqual(fromMemory(ids, sources), SAID_TO_BE_FROM_MEMORY);
  assert.ok(sources.get('nist-handbook-133-tables')?.url);
});

test('a level from memory is found', () => {
  const known: Sources = new Map([...sources, ['manitoba-2021', { seen: 'memory' as const }]]);
  assert.deepEqual(fromMemory(verdictFigures(), known), ['mite-action-level', ...SAID_TO_BE_FROM_MEMORY]);
});
