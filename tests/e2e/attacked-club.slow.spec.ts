/*
 * Injection through content: the demo club and its books with harmful text in every sentence of their files, behind titles, names, units, cells, notices
 * and paragraphs. Where check refuses a line, the original line stays, and the rest is built. Its pages have the same elements as a twin
 * club with plain words in the same places. Other files stay well-formed, and nothing runs in a browser.
 */
import assert from 'node:assert/strict';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { note, test } from './fixtures.ts';
import { parse as parseTable } from 'csv-parse/sync';
import fc from 'fast-check';
import { fromHtml } from 'hast-util-from-html';
import ICAL from 'ical.js';
import { visit as walk } from 'unist-util-visit';
import { check } from '../../src/checks/check.ts';
import { projectFolder } from '../../src/cli/paths.ts';
import { serve } from '../../src/cli/serve.ts';
import { translationIn } from '../../src/source/translations.ts';
import { filesIn } from '../build/workshop.ts';
import { builtFolder, type Built } from '../setup/built-site.ts';
import { harmDone, harmful, watchFor } from './harmful.ts';
import { nothing, oneOfEachKind } from './visit.ts';

const CLUB = 'demo-club';
const BOOKS = ['common', 'north', 'us', 'us-oh'].map((id) => `books/${id}`);

/** A line of a field or a paragraph with at least two words: the text before its words, and the words. */
const FIELD = /^(\s*(?:- )?(?:[a-z][a-z-]*: ))?((?:- )?[A-Za-z“][^"'\n{}[\]&*#|>%@`!:]* [^"'\n{}[\]&*#|>%@`!:]*)$/;

/** The copies, the files in which words were put, and their lines that differ. */
type Attack = { attacked: string; twin: string; files: readonly string[]; changed: Set<string> };

/** Puts harmful text into the files that `isOf` picks, and plain words into the same places of a twin. `prepare` changes both copies first. */
function attack(folder: string, isOf: (file: string) => boolean, prepare: (copy: string) => void): Attack {
  const [attacked, twin] = [join(folder, 'attacked'), join(folder, 'twin')];
  const changed = new Set<string>();
  for (const copy of [attacked, twin])
    for (const part of [CLUB, ...BOOKS]) cpSync(join(projectFolder, 'content', part), join(copy, part), { recursive: true });
  prepare(attacked);
  prepare(twin);
  const files = filesIn(attacked).filter((file) => /\.(yaml|mdx)$/.test(file) && isOf(file));
  const marks = fc
    // The same marks in each run: a long page folds, and another length would fold it in one club alone.
    .sample(harmful, { numRuns: 4000, seed: 1 })
    .map((mark) => mark.replace(/[\r\n\u0000-\u0008\u000B-\u001F\u007F-\u009F\u2028\u2029\uD800-\uDFFF\uFFFE\uFFFF]/gu, ''));
  // In a paragraph these are Markdown and correctly become elements.
  const unmarked = marks.filter((mark) => !/[`_*~[\]]/.test(mark));
  // Equal words stay equal, so that merged notes stay merged.
  const pick = (from: readonly string[], words: string): string =>
    from[[...words].reduce((sum, letter) => (sum * 31 + letter.codePointAt(0)!) % 1_000_003, 7) % from.length]!;
  for (const file of files) {
    const lines = readFileSync(join(attacked, file), 'utf8').split('\n');
    const head = file.endsWith('.yaml') ? lines.length : lines.indexOf('---', 1);
    const [harmed, other] = [[...lines], [...lines]];
    for (const [at, line] of lines.entries()) {
      const [, before = '', words] = FIELD.exec(line) ?? [];
      if (!words || (at < head && before === '')) continue;
      const mark = pick(at < head ? marks : unmarked, words);
      // In a field it is in quotes, as JSON, which YAML parses alike.
      const written = (tail: string): string => before + (at < head ? JSON.stringify(`${words} ${tail}`) : `${words} ${tail}`);
      // As long as the mark, because a long page folds.
      [harmed[at], other[at]] = [
        written(mark),
        written(
          'plainword '
            .repeat(mark.length / 10 + 1)
            .slice(0, Math.max(9, mark.length))
            .trim(),
        ),
      ];
      changed.add(`${file}:${at}`);
    }
    writeFileSync(join(attacked, file), harmed.join('\n'));
    writeFileSync(join(twin, file), other.join('\n'));
  }
  return { attacked, twin, files, changed };
}

/** Runs with the books of a copy in place of the project's. */
function onBooksOf<T>(copy: string, run: () => T): T {
  process.env.ALMANAC_BOOKS = join(copy, 'books');
  return run();
}

/** The faults of a copy: of its club, and of each book by itself. Paths begin with the folder. */
const faultsIn = (copy: string): { path: string; line: number }[] =>
  onBooksOf(copy, () =>
    [CLUB, ...BOOKS].flatMap((part) =>
      check(join(copy, part)).map(({ path, line }) => ({ path: path.startsWith('books/') ? path : `${part}/${path}`, line })),
    ),
  );

/** Restores every line with a fault in either copy. False when there is none. */
function takeBack({ attacked, twin, files, changed }: Attack): boolean {
  const faults = [...faultsIn(attacked), ...faultsIn(twin)].filter(({ path }) => files.includes(path));
  for (const path of new Set(faults.map((fault) => fault.path))) {
    const old = readFileSync(join(projectFolder, 'content', path), 'utf8').split('\n');
    const lines = new Set(faults.filter((fault) => fault.path === path).map(({ line }) => line - 1));
    // A fault at an unchanged line may come from any other line. Then the whole file is restored.
    const whole = [...lines].some((line) => !changed.has(`${path}:${line}`));
    for (const copy of [attacked, twin]) {
      const now = readFileSync(join(copy, path), 'utf8').split('\n');
      writeFileSync(join(copy, path), now.map((line, at) => (whole || lines.has(at) ? old[at]! : line)).join('\n'));
    }
    for (const at of old.keys()) if (whole || lines.has(at)) changed.delete(`${path}:${at}`);
  }
  return faults.length > 0;
}

/** Elements with the names of their attributes, in order, and the beginnings of addresses. */
function bones(html: string): string[] {
  const found: string[] = [];
  walk(fromHtml(html), 'element', ({ tagName, properties }) => {
    const attributes = Object.entries(properties).map(([name, value]) =>
      /^(href|src|action)$/.test(name) ? `${name}=${/^[a-z]*:?\/?/.exec(String(value))![0]}` : name,
    );
    found.push(`${tagName} ${attributes.join(' ')}`);
  });
  return found;
}

const tagsOf = (xml: string): string[] => [...xml.replace(/<!\[CDATA\[[\s\S]*?\]\]>/g, '').matchAll(/<\/?[\w:-]+/g)].map(([tag]) => tag);

const kindOf = (place: string): string => /^(?:demo-club|books\/[^/]+)\/([^/:]+)/.exec(place)![1]!;

/** Whether a file of the copies translates another. */
const isTranslation = (file: string): boolean => translationIn(file.replace(/^(?:demo-club|books\/[^/]+)\//, '')) !== null;

/** A translation says of which words it is. An attacked original would make each of them a fault, so they are left out. */
function leaveOutTranslations(copy: string): void {
  for (const file of filesIn(copy).filter(isTranslation)) rmSync(join(copy, file));
  const club = join(copy, CLUB, 'club.yaml');
  // The lines keep their numbers.
  writeFileSync(club, readFileSync(club, 'utf8').replace(/^also-in: .*$/m, '#'));
}

const ATTACKS = [
  {
    name: 'files in the language of the club',
    isOf: (file: string) => !isTranslation(file),
    prepare: leaveOutTranslations,
    least: 1000,
    kindsOf: [
      'articles',
      'bulletins',
      'checklists',
      'figures',
      'forage',
      'meetings',
      'reading',
      'signs',
      'sources',
      'treatments',
      'words',
      'cautions',
      'drawings',
    ],
  },
  {
    name: 'translations',
    isOf: isTranslation,
    prepare: () => undefined,
    least: 300,
    kindsOf: ['articles', 'bulletins', 'cautions', 'checklists', 'figures', 'signs', 'words'],
  },
];

for (const { name, isOf, prepare, least, kindsOf } of ATTACKS)
  test.describe(name, () => {
    const folder = mkdtempSync(join(tmpdir(), 'attacked-'));
    let made: Built;
    let plain: Built;
    let changed: ReadonlySet<string>;

    test.beforeAll(async () => {
      test.setTimeout(900_000);
      const copies = attack(folder, isOf, prepare);
      changed = copies.changed;
      for (let round = 0; takeBack(copies); round += 1) assert.ok(round < 20, 'check never comes to rest');
      const build = (copy: string, of: string): Promise<Built> =>
        onBooksOf(copy, () => builtFolder(join(copy, CLUB), of, { site: 'https://club.example' }));
      made = await build(copies.attacked, 'attacked');
      plain = await build(copies.twin, 'twin');
    });
    test.afterAll(() => {
      delete process.env.ALMANAC_BOOKS;
      rmSync(folder, { recursive: true, force: true });
    });

    test('every kind of file contains harmful text', { tag: '@slow' }, ({}) => {
      const kinds = new Map<string, number>();
      for (const place of changed) kinds.set(kindOf(place), (kinds.get(kindOf(place)) ?? 0) + 1);
      note([...kinds].map(([kind, count]) => `${kind} ${count}`).join(', '));
      assert.ok(changed.size > least, `${changed.size} lines`);
      for (const kind of kindsOf) assert.ok((kinds.get(kind) ?? 0) > 3, kind);
    });

    test('pages and book have the elements of the twin, and no other', { tag: '@slow' }, () => {
      assert.deepEqual(made.pages, plain.pages);
      const seen: string[] = [];
      for (const page of made.pages.map((each) => (each.endsWith('/') ? `${each.slice(1)}index.html` : each.slice(1)))) {
        const [one, other] = [bones(made.read(page)), bones(plain.read(page))];
        const at = one.findIndex((bone, place) => bone !== other[place]);
        if (at >= 0 || one.length !== other.length) seen.push(`${page}: ${one[at] ?? one.length} instead of ${other[at] ?? other.length}`);
      }
      nothing(seen);
      // The book merges notes by their words, so there may be one more or less, but no other kind of element.
      const known = new Set(bones(plain.read('handbook.html')));
      nothing(bones(made.read('handbook.html')).filter((bone) => !known.has(bone)));
    });

    test('files for other programs are well-formed', { tag: '@slow' }, () => {
      for (const file of filesIn(made.folder)) {
        if (/\.(json|webmanifest)$/.test(file)) assert.doesNotThrow(() => JSON.parse(made.read(file)), file);
        if (file.endsWith('.ics')) {
          const events = (built: Built): number => new ICAL.Component(ICAL.parse(built.read(file))).getAllSubcomponents('vevent').length;
          assert.equal(events(made), events(plain), file);
        }
        if (file.endsWith('.csv'))
          assert.equal((parseTable(made.read(file)) as unknown[]).length, (parseTable(plain.read(file)) as unknown[]).length, file);
        if (file.endsWith('.xml')) assert.deepEqual(tagsOf(made.read(file)), tagsOf(plain.read(file)), file);
      }
    });

    test('nothing of it runs or makes a request in a browser', { tag: '@slow' }, async ({ browser }) => {
      const { address, close } = await serve({ folder: made.folder, port: 0 });
      const page = await browser.newPage();
      const told = await watchFor(page);
      const found: string[] = [];
      for (const place of oneOfEachKind(made)) {
        await page.goto(new URL(place, address).href);
        found.push(...[...(await page.evaluate(harmDone)), ...told.splice(0)].map((harm) => `${place}: ${harm}`));
      }
      await close();
      nothing(found);
    });
  });
