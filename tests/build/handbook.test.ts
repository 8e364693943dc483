// Book in both formats, compared with the pages it was made from.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, test } from 'vitest';
import { EpubCheck } from '@likecoin/epubcheck-ts';
import type { Element, Root } from 'hast';
import { HtmlValidate } from 'html-validate';
import { formatDay } from '../../shared/days/show-day.ts';
import { projectFolder } from '../../src/cli/paths.ts';
import { inOrder, partsOf } from '../../src/integration/book/order.ts';
import { builtPages } from '../../src/integration/built-pages.ts';
import type { EditionRecord } from '../../src/integration/edition-record.ts';
import { builtDemo, builtFixture, type Built } from '../setup/built-site.ts';
import { nothing } from '../e2e/visit.ts';
import { chaptersIn, classed, elements, epubBytes, mainOf, packedIn, parsed, text } from './handbook.ts';
import { aDay } from '../days.ts';

/** The newest day on which anything in the demo club was checked. The book has this date, not that of the clock. */
const newest = aDay(
  ['demo-club', 'books/common', 'books/north', 'books/us', 'books/us-oh']
    .map((folder) => join(projectFolder, 'content', folder))
    .flatMap((folder) => readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((path) => join(folder, path)))
    .filter((path) => /\.(?:mdx|yaml)$/.test(path))
    .flatMap((path) => /^checked: (\S+)$/m.exec(readFileSync(path, 'utf8'))?.[1] ?? [])
    .sort()
    .at(-1)!,
);

/** One and a half times the size for the demo club, so that a doubling is noticed. */
const LARGEST = 1_600_000;

let demo: Built;
let book: Root;
let chapters: Map<string, Element>;
let packed: Map<string, string>;
/** Chapters by the path of their page. */
let chapterAt: Map<string, Element>;
beforeAll(async () => {
  demo = await builtDemo();
  book = parsed(demo.read('handbook.html'));
  chapters = chaptersIn(book);
  packed = packedIn(demo);
  const places = partsOf(
    builtPages(demo.folder).filter(({ file }) => file !== 'handbook.html'),
    demo.base,
  )
    .flatMap(({ leaves }) => inOrder(leaves))
    .map(({ page }) => page.place);
  chapterAt = new Map([...chapters.values()].map((chapter, index) => [places[index]!, chapter]));
});

/** Paths of the pages that the book must contain. */
const held = (): [place: string, title: string][] =>
  Object.entries((JSON.parse(demo.read('edition.json')) as EditionRecord).pages)
    .filter(([place]) => place !== 'search/' && place !== 'hand-out/' && place !== 'hall/' && !place.startsWith('es/'))
    .map(([place, { title }]) => [place, title]);
const pageAt = (place: string): Element => mainOf(demo.read(`${place}index.html`));
const titleOf = (chapter: Element | undefined): string => text(chapter && elements(chapter, ({ tagName }) => tagName === 'h3')[0]);

for (const club of ['demo', 'southern', 'sub-folder', 'hostile']) {
  test(`${club}: the EPUB checker reports no error and no warning`, { tags: club === 'demo' ? [] : ['slow'] }, async () => {
    const { valid, messages } = await EpubCheck.validate(epubBytes(club === 'demo' ? demo : await builtFixture(club)));
    nothing(messages.map(({ severity, id, message, location }) => `${severity} ${id}: ${message} (${location?.path})`));
    assert.ok(valid);
  });
}

test('the EPUB checker detects a fault', async () => {
  const bytes = epubBytes(demo).slice();
  bytes.set([0], 40);
  assert.equal((await EpubCheck.validate(bytes)).valid, false);
});

test('every published page of the club’s language except the search, the hand-outs and the hall is a chapter of both books, with its title, and in both tables of contents', () => {
  const titles = held();
  assert.ok(titles.length > 150);
  assert.equal(chapters.size, titles.length);
  for (const [place, title] of titles) assert.equal(titleOf(chapterAt.get(place)), title, place);
  const sorted = (list: string[]): string[] => list.sort();
  const expected = sorted(titles.map(([, title]) => title));
  assert.deepEqual(
    sorted(
      elements(book, ({ tagName }) => tagName === 'h3')
        .map(text)
        .filter((words) => !/^(Part \d: .*|Sources)$/.test(words)),
    ),
    expected,
  );
  const contents = elements(book, ({ properties }) => properties.id === 'contents')[0]!;
  const own = /^(Part \d: .*|Sources|Title|Contents|First part)$/;
  assert.deepEqual(
    sorted(
      elements(contents, ({ tagName }) => tagName === 'a')
        .map(text)
        .filter((words) => !own.test(words)),
    ),
    expected,
  );
  assert.deepEqual(
    sorted(
      elements(parsed(packed.get('book/nav.xhtml')!), ({ tagName }) => tagName === 'a')
        .map(text)
        .filter((words) => !own.test(words)),
    ),
    expected,
  );
  const files = [...packed].filter(([name]) => /\.xhtml$/.test(name) && !/\/(nav|title|sources|part-\d+)\.xhtml$/.test(name));
  assert.deepEqual(sorted(files.map(([, file]) => text(elements(parsed(file), ({ tagName }) => tagName === 'h1')[0]))), expected);
});

test('the parts follow the bottom navigation', () => {
  const thumbs = elements(parsed(demo.read('index.html')), (node) => classed(node, 'bottom-nav'))
    .flatMap((nav) => elements(nav, ({ tagName }) => tagName === 'a'))
    .map(text);
  assert.ok(thumbs.length > 3);
  assert.deepEqual(elements(book, ({ tagName }) => tagName === 'h2').map(text), [
    'Contents',
    ...thumbs.map((name, index) => `Part ${index + 1} ${name}`),
    'Sources',
  ]);
});

test('the single file: every link leads to a place in it, every id is unique, and it requests no other file', () => {
  const ids = elements(book, ({ properties }) => properties.id !== undefined).map(({ properties }) => String(properties.id));
  assert.deepEqual(
    ids.filter((id, index) => ids.indexOf(id) !== index),
    [],
  );
  const hrefs = elements(book, ({ properties }) => properties.href !== undefined).map(({ properties }) => String(properties.href));
  assert.ok(hrefs.filter((href) => href.startsWith('#')).length > 2000);
  nothing(
    hrefs.filter((href) =>
      href.startsWith('#') ? !ids.includes(href.slice(1)) : !/^(tel:\+?\d+|mailto:\S+@\S+|https:\/\/\S+)$/.test(href),
    ),
  );
  nothing(
    elements(
      book,
      ({ tagName, properties }) =>
        ['script', 'link', 'img', 'iframe', 'object', 'form', 'input', 'button'].includes(tagName) ||
        properties.src !== undefined ||
        Object.keys(properties).some((name) => /^on/.test(name)),
    ).map(({ tagName }) => `<${tagName}>`),
  );
  assert.doesNotMatch(demo.read('handbook.html'), /url\(|@import/);
});

test('the EPUB contains no script, no form and nothing from other sites', () => {
  const found = [...packed].flatMap(([name, file]) =>
    [...file.matchAll(/<(?:script|form|input|button|iframe|object|img)\b|\son\w+=|javascript:|src=|url\(/g)].map(
      ([fault]) => `${name}: ${fault}`,
    ),
  );
  assert.ok(packed.size > 150);
  nothing(found);
});

test('every step of every list, and every sign, follows an empty box, in order', () => {
  let seen = 0;
  for (const [place] of held()) {
    const steps = elements(pageAt(place), (node) => node.tagName === 'li' && classed(node, 'step')).map((step) =>
      text(elements(step, (node) => classed(node, 'step-words'))[0]).replace(/\d+$/, ''),
    );
    if (steps.length === 0) continue;
    const boxes = elements(
      chapterAt.get(place)!,
      (node) => node.tagName === 'li' && elements(node, (each) => classed(each, 'tick')).length === 1,
    );
    assert.equal(boxes.length, steps.length, place);
    boxes.forEach((box, index) =>
      assert.ok(
        text(box).startsWith('☐') && text(box).includes(steps[index]!.split(' ').slice(0, 4).join(' ')),
        `${place}: ${steps[index]}`,
      ),
    );
    seen += steps.length;
  }
  assert.ok(seen > 300, `${seen} steps`);
});

test('every source of a page is the source with that number at the end of the book', () => {
  const listed = elements(book, (node) => classed(node, 'sources'))
    .flatMap((list) => elements(list, ({ tagName }) => tagName === 'li'))
    .map(text);
  /** "As 13." means the words of 13. */
  const inFull = (number: number): string =>
    listed[number - 1]!.replace(/^As (\d+)\. /, (_, other: string) => `${inFull(Number(other)).replace(/(?<![?!.])$/, '.')} `);
  let seen = 0;
  for (const [place] of held()) {
    const page = pageAt(place);
    const notes = new Map(
      elements(page, ({ properties }) => /^note-\d+$/.test(String(properties.id))).map((note) => [
        `#${String(note.properties.id)}`,
        text(note)
          .replace(/^\d+ /, '')
          .replace(/ See all sources for this figure$/, ''),
      ]),
    );
    // Content of forms, and content that waits for script, is not in the book, and neither is its mark.
    for (const gone of elements(
      page,
      (node) => node.properties.hidden !== undefined || ['asks', 'result', 'outputs'].some((name) => classed(node, name)),
    ))
      gone.children = [];
    const expected = elements(page, ({ properties }) => notes.has(String(properties.href))).map(({ properties }) =>
      notes.get(String(properties.href))!,
    );
    const marks = elements(chapterAt.get(place)!, ({ tagName }) => tagName === 'sup').flatMap((sup) =>
      elements(sup, ({ tagName }) => tagName === 'a'),
    );
    assert.deepEqual(
      marks.map((mark) => inFull(Number(text(mark)))),
      expected,
      place,
    );
    for (const mark of marks) assert.equal(String(mark.properties.href), `#s${text(mark)}`);
    seen += marks.length;
  }
  assert.ok(seen > 400, `${seen} marks`);
  const numbers = [...text(book).matchAll(/Source (\d+)\./g)].map(([, number]) => Number(number));
  assert.ok(numbers.length > 200 && numbers.every((number) => number >= 1 && number <= listed.length));
});

test('the book keeps cautions, next-check days, the emergency number and the notes of a demonstration', () => {
  let boxes = 0;
  for (const [place] of held()) {
    const page = pageAt(place);
    const chapter = text(chapterAt.get(place)!);
    for (const box of elements(page, (node) => String(node.properties.ariaLabelledBy ?? '').startsWith('box-'))) {
      for (const line of elements(box, ({ tagName }) => tagName === 'li'))
        assert.ok(chapter.includes(text(line).replace(/ More on: .+$/, '')), `${place}: ${text(line)}`);
      boxes += 1;
    }
    for (const due of elements(page, ({ properties }) => properties.dataNextCheck !== undefined))
      assert.ok(chapter.includes(text(due)), `${place}: ${text(due)}`);
    for (const [name, file] of packed)
      if (/\.xhtml$/.test(name) && !name.endsWith('nav.xhtml')) assert.ok(file.includes('href="tel:911"'), name);
  }
  assert.ok(boxes > 100);
  for (const words of [
    'Emergency: Call 911',
    'A demonstration: this club does not exist.',
    'this book does not',
    'The titles marked “invented” are made up for the demonstration',
    `edition of ${formatDay(newest, 'en-US').replaceAll('\u00a0', ' ')}`,
  ])
    assert.ok(text(book).includes(words), words);
});

test('days of other districts follow the first one’s', () => {
  const row = elements(chapterAt.get('lists/')!, ({ tagName }) => tagName === 'li')
    .map(text)
    .find((words) => words.startsWith('The first full look in spring'));
  assert.match(row!, /March\s14\s– April\s20 \(the hill: March\s23 to April\s29\)/);
});

test('every drawing is drawn once, with its text version in every place', () => {
  const drawings = held().flatMap(([place]) =>
    elements(pageAt(place), (node) => classed(node, 'drawing')).map((figure) => ({
      place,
      title: text(elements(figure, ({ tagName }) => tagName === 'title')[0]),
    })),
  );
  assert.ok(drawings.length > 15);
  const drawn = elements(book, ({ tagName }) => tagName === 'svg').map((svg) =>
    text(elements(svg, ({ tagName }) => tagName === 'title')[0]),
  );
  for (const { place, title } of drawings) {
    assert.equal(drawn.filter((each) => each === title).length, 1, title);
    assert.ok(text(chapterAt.get(place)!).includes(`${title}.`), `${place}: ${title}`);
  }
});

test('a calculator is its worked example and its tables, without a form', () => {
  for (const [place] of held().filter(([place]) => /^work-it-out\/./.test(place))) {
    const chapter = chapterAt.get(place)!;
    assert.match(text(chapter), /An example/, place);
    assert.ok(elements(chapter, ({ tagName }) => ['table', 'dl'].includes(tagName)).length > 0, place);
    assert.doesNotMatch(text(chapter), /Calculate|needs JavaScript|Put this example/, place);
  }
});

test('the package document describes the book and its accessibility', () => {
  const opf = packed.get('book/package.opf')!;
  for (const fact of [
    '<dc:title>The Tamarack Almanac</dc:title>',
    '<dc:creator>Tamarack County Beekeepers</dc:creator>',
    '<dc:language>en-US</dc:language>',
    `<dc:date>${newest}</dc:date>`,
    `<meta property="dcterms:modified">${newest}T00:00:00Z</meta>`,
    '<meta property="schema:accessMode">textual</meta>',
    '<meta property="schema:accessModeSufficient">textual</meta>',
    '<meta property="schema:accessibilityFeature">tableOfContents</meta>',
    '<meta property="schema:accessibilityHazard">none</meta>',
  ])
    assert.ok(opf.includes(fact), fact);
  assert.match(
    opf,
    /<dc:identifier id="edition">urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}<\/dc:identifier>/,
  );
  assert.match(opf, /accessibilitySummary">[^<]{60,}</);
  assert.deepEqual(
    [...packed.keys()].filter((name) => !/^[A-Za-z0-9./-]+$/.test(name)),
    [],
  );
  assert.equal([...packed.keys()][0], 'mimetype');
});

test('neither book is over 1.6 MB, and the pages state their sizes', (t) => {
  const sizes = { html: Buffer.byteLength(demo.read('handbook.html')), epub: epubBytes(demo).length };
  void t.annotate(`handbook.html ${sizes.html} B, handbook.epub ${sizes.epub} B`);
  for (const [kind, bytes] of Object.entries(sizes)) {
    assert.ok(bytes < LARGEST, `handbook.${kind}: ${bytes} B, ${bytes - LARGEST} B over ${LARGEST}`);
    assert.ok(text(pageAt('about/')).includes(`${(bytes / 1e6).toFixed(2)} MB`), kind);
  }
});

test('search, sitemap and offline copy leave the books out, and the server file knows their type', async () => {
  const { read } = await builtFixture('sub-folder', { base: '/club/', site: 'https://club.example' });
  for (const file of ['sitemap.xml', 'worker.js', 'edition.json', 'search/words.json']) assert.doesNotMatch(read(file), /handbook/, file);
  assert.match(read('_headers'), /\*\.epub\n {2}Content-Type: application\/epub\+zip/);
  assert.match(read('.htaccess'), /AddType "application\/epub\+zip" \.epub/);
});

test('the single file is valid HTML, chapter by chapter', async () => {
  const validator = new HtmlValidate({
    extends: ['html-validate:recommended'],
    rules: {
      'valid-id': ['error', { relaxed: true }],
      'tel-non-breaking': 'off',
      'prefer-native-element': ['error', { exclude: ['region'] }],
      // Quotes that HTML does not require are a hundredth of the file.
      'attr-quotes': ['error', { unquoted: true }],
    },
  });
  const html = demo.read('handbook.html');
  const [before, ...articles] = html.split(/(?=<article id=)/);
  const last = articles.pop()!;
  const shell = before!.slice(0, before!.indexOf('<header'));
  const pieces = [
    `${before}</section></main></body></html>`,
    ...articles.map((article) => `${shell}<main>${article.slice(0, article.indexOf('</article>'))}</article></main></body></html>`),
    `${shell}<main><section>${last}`,
  ];
  // The whole file is too large for the validator. Links between its pieces were tested above.
  const found: string[] = [];
  for (const piece of pieces) {
    const { results } = await validator.validateString(piece);
    for (const { ruleId, message } of results.flatMap(({ messages }) => messages))
      found.push(`${/<article id=(\S+?)>/.exec(piece)?.[1]}: ${ruleId}: ${message}`);
  }
  assert.ok(pieces.length > 150);
  nothing(found.filter((fault) => !/no-missing-references/.test(fault)));
});
