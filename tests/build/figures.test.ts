// Traces every marked number of any page to its row, and the row to its source.
import assert from 'node:assert/strict';
import { beforeAll, test } from 'vitest';
import { sourceWords } from '../../src/lib/figures.ts';
import { readFolder } from '../../src/source/folder.ts';
import { builtDemo, builtFixture, type Built } from '../setup/built-site.ts';
import { nothing } from '../e2e/visit.ts';
import { holdsHere } from '../../src/schemas/where.ts';

type Row = { id: string; value?: number; least?: number; most?: number; from: string; until?: string; source: string };
type Held = {
  figures: Map<string, { unit: string; rows: Row[] }>;
  treatments: Map<string, { rows: Record<string, any>[] }>;
  sources: Map<string, any>;
  /** The words of sources that are translated. */
  translated: Map<string, any>;
  edition: string;
};

let demo: Built;
let held: Held;
beforeAll(async () => {
  demo = await builtDemo();
  held = heldIn(demo);
});

function heldIn(built: Built): Held {
  const { entries, books } = readFolder(built.content);
  const of = (name: string) =>
    new Map(entries.filter(({ collection }) => collection === name).map(({ id, fields }) => [id, fields.value as any]));
  return {
    figures: of('figures'),
    treatments: of('treatments'),
    sources: of('sources'),
    translated: new Map(
      books
        .flatMap(({ translations }) => translations)
        .filter(({ collection }) => collection === 'sources')
        .map(({ id, fields }) => [id, fields.value as any]),
    ),
    edition: JSON.parse(built.read('edition.json')).day,
  };
}

const fileOf = (built: Built, page: string): string => `${page.slice(built.base.length)}${page.endsWith('/') ? 'index.html' : ''}`;
const attributes = (tag: string): Record<string, string> =>
  Object.fromEntries([...tag.matchAll(/\s([\w-]+)="([^"]*)"/g)].map(([, name, value]) => [name, value!]));
const plain = (html: string): string =>
  html
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
    .replaceAll('&#39;', "'")
    .replaceAll('&quot;', '"')
    .replace(/&#x([0-9a-f]+);/gi, (_, hex: string) => String.fromCodePoint(parseInt(hex, 16)))
    .replace(/\s+/g, ' ');

/** Problems with the marked numbers of a page. A calculator computes its results and table, so those have no row. */
function faultsOn(
  page: string,
  html: string,
  { figures, treatments, sources, translated, edition }: Held,
  base: string,
): { faults: string[]; count: number } {
  const numbers = [...html.matchAll(/<data\b([^>]*)>([\s\S]*?)<\/data>([\s\S]{0,400})/g)].map(([, tag, shown, rest]) => ({
    at: attributes(tag!),
    shown: plain(shown!),
    rest: rest!,
  }));
  const text = plain(html);
  const faults = numbers.flatMap(({ at, shown, rest }): string[] => {
    const name = `"${shown}"`;
    if (at['data-treatment']) {
      const row = treatments.get(at['data-treatment'])?.rows.find(({ id }) => id === at['data-row']);
      if (!row) return [`${name}: no row ${at['data-treatment']}/${at['data-row']}`];
      // A temperature limit is within a list: limits.0.least-c.
      const field = at['data-field']!;
      const found = field.split('.').reduce((part, key) => part?.[key], row as any);
      const source = field.startsWith('works-poorly') ? row['efficacy-source'] : row.source;
      return [
        ...(String(found) === at.value ? [] : [`${name}: ${at.value}, and the row has ${found}`]),
        ...(sources.has(source) ? [] : [`${name}: no source ${source}`]),
      ];
    }
    if (!at['data-figure']) return page.startsWith(`${base}work-it-out/`) ? [] : [`${name}: no figure`];
    const figure = figures.get(at['data-figure']);
    const rows =
      figure?.rows.filter(
        ({ id, from, until }) =>
          id === at['data-row'] &&
          (at['data-from'] ? from === at['data-from'] : from <= edition && (until === undefined || edition <= until)),
      ) ?? [];
    const row = rows.find((each) => (each.value === undefined ? `${each.least}/${each.most}` : String(each.value)) === at.value);
    if (!figure || !row) return [`${name}: no row ${at['data-figure']}/${at['data-row']} of ${at.value} in force`];
    const source = sources.get(row.source);
    if (!source) return [`${name}: no source ${row.source}`];
    const note = /^[\s\S]*?href="#(note-\d+)"/.exec(rest)?.[1];
    const where = note ? plain(new RegExp(`id="${note}"[^>]*>([\\s\\S]*?)</li>`).exec(html)?.[1] ?? '') : text;
    const inSpanish = page.startsWith(`${base}es/`) && translated.get(row.source);
    const words = sourceWords(inSpanish ? { ...source, ...inSpanish, lang: 'es' } : source);
    return [
      ...(figure.unit === at['data-unit'] ? [] : [`${name}: unit ${at['data-unit']}, and the figure has ${figure.unit}`]),
      ...(where.includes(words) ? [] : [`${name}: its note does not name ${words}`]),
    ];
  });
  return { faults, count: numbers.length };
}

test('every marked number of the demo club has its row, unit and source, and a note that names the source', (t) => {
  const all = demo.pages.map((page) => ({ page, ...faultsOn(page, demo.read(fileOf(demo, page)), held, demo.base) }));
  const count = all.reduce((sum, each) => sum + each.count, 0);
  void t.annotate(`${count} numbers on ${all.filter((each) => each.count > 0).length} pages`);
  assert.ok(count > 500, `${count} numbers`);
  nothing(all.flatMap(({ page, faults }) => faults.map((fault) => `${page}: ${fault}`)));
});

for (const club of ['southern', 'sub-folder', 'hostile']) {
  test(`so have those of ${club}`, async () => {
    const built = await builtFixture(club);
    nothing(
      built.pages.flatMap((page) =>
        faultsOn(page, built.read(fileOf(built, page)), heldIn(built), built.base).faults.map((fault) => `${page}: ${fault}`),
      ),
    );
  });
}

test('the test detects a number without a figure, one with another value, and one whose note names another source', () => {
  const note = (words: string): string => `<ol><li id="note-1">${words}</li></ol>`;
  const [id, figure] = [...held.figures].find(([, { rows }]) => rows.length === 1 && rows[0]!.value !== undefined)!;
  const row = figure.rows[0]!;
  const number = (value: unknown): string =>
    `<data value="${value}" data-figure="${id}" data-row="${row.id}" data-unit="${figure.unit}">n</data><sup><a href="#note-1">1</a></sup>`;
  const look = (html: string): string => faultsOn('/pests/x/', html, held, '/').faults.join('; ');
  assert.equal(look(number(row.value) + note(sourceWords(held.sources.get(row.source)))), '');
  assert.match(look('<data value="3">3</data>'), /no figure/);
  assert.match(look(number(row.value! + 1) + note('')), /no row/);
  assert.match(look(number(row.value) + note('Somebody else')), /does not name/);
});

test('every figure is shown with all its rows and sources, the one that is followed, and the reason', () => {
  const missing = [...held.figures].flatMap(([id, figure]: [string, any]) => {
    if (figure.draft) return [];
    const page = `figures/${figure.subject ?? 'other'}/index.html`;
    const html = demo.read(page);
    const section = plain(
      new RegExp(`<details class="fold figure-rows" id="${id}">([\\s\\S]*?)<(?:details class="fold figure-rows"|/main>)`).exec(html)?.[1] ??
        '',
    );
    if (section === '') return [`${id}: no place in ${page}`];
    const here = figure.rows.filter((row: any) => holdsHere(row.for ?? 'anywhere', { land: 'US-OH', hemisphere: 'north' }));
    const contested = new Set(here.map((row: Row) => row.id)).size > 1;
    const columns = [
      ...figure.rows.map((row: Row) => sourceWords(held.sources.get(row.source))),
      ...figure.rows.map((row: any) => row.place),
      ...(contested ? ['followed here', figure.because] : []),
    ];
    return columns.filter((words: string) => !section.includes(words)).map((words: string) => `${id}: no "${words}"`);
  });
  nothing(missing);
});

test('a note of a figure links to its rows', () => {
  const html = demo.read('pests/varroa/index.html');
  assert.match(html, /<a class="alone no-print" href="\/figures\/mites\/#sample-bees">See all sources for this figure<\/a>/);
});
