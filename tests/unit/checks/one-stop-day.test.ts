// One last day for syrup in the whole demo club: club.yaml contains it once, with its source, and every page uses it.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { test } from 'vitest';
import { validEntries } from '../../../src/checks/fields.ts';
import { districtsIn } from '../../../src/checks/season.ts';
import { readFolder } from '../../../src/source/folder.ts';

const content = fileURLToPath(new URL('../../../content', import.meta.url));
const folder = readFolder(join(content, 'demo-club'));

/** Lines, table cells and sentences that say when syrup ends, and contain a day of the fall written by hand. */
function handWritten(text: string, isSouth = false): string[] {
  const [months, short] = isSouth ? ['March|April|May', 'Mar|Apr'] : ['September|October|November', 'Sept?|Oct|Nov'];
  const day = new RegExp(`\\b(?:\\d{1,2}|mid-?|early|late|end of) ?(?:${months})\\b|\\b(?:${months}|(?:${short})\\.?) \\d`, 'i');
  return text
    .split(/\n|(?<=[.?!:;]) |(?<!\|)\n/)
    .filter((said) => /\bsyrup\b|\bliquid feed\b/i.test(said))
    .filter((said) => /\b(?:stop|end|last|finish\w*|done|complete\w*|until|late|off|no more)\b/i.test(said))
    .filter((said) => day.test(said));
}

test('the test detects a day written by hand, and no other', () => {
  for (const said of [
    '| 10 October | Stop syrup | Cold |',
    'Stop syrup in mid-October.',
    'Be done with syrup by the end of September.',
    'The last syrup goes on 7 November.',
    'Be done with syrup by October 10.',
  ])
    assert.equal(handWritten(said).length, 1, said);
  assert.equal(handWritten('Stop syrup in mid-April.', true).length, 1);
  for (const said of [
    'Be done with syrup by <Day of="last syrup" />.',
    '| 10 September | Weigh or count frames. Feed | Bees still dry syrup well |',
    'Guards go on by 15 October.',
    'Stop syrup when robbing begins.',
  ])
    assert.deepEqual(handWritten(said), [], said);
});

test('no page gives its own day for the last syrup', () => {
  const pages = folder.entries.filter(({ collection }) => !['sources', 'club', 'reading'].includes(collection));
  assert.ok(pages.length > 300, `${pages.length} entries`);
  assert.deepEqual(
    pages.flatMap(({ path, text }) => handWritten(text.replace(/^history:\n(?: .*\n)+/m, '')).map((said) => `${path}: ${said.trim()}`)),
    [],
  );
});

test('no page of a book of another land gives its own day', () => {
  for (const [book, isSouth] of [
    ['uk', false],
    ['nz', true],
    ['south', true],
  ] as const) {
    const files = readdirSync(join(content, 'books', book), { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.mdx'));
    assert.ok(files.length > 1, book);
    const text = (file: string) => readFileSync(join(content, 'books', book, file), 'utf8');
    assert.deepEqual(
      files.flatMap((file) => handWritten(text(file), isSouth).map((said) => `${book}/${file}: ${said.trim()}`)),
      [],
    );
  }
});

test("pages on fall feeding use the day's tag or its anchor", () => {
  for (const path of [
    'articles/when-to-stop-syrup.mdx',
    'articles/fall.mdx',
    'articles/feeding-and-stores.mdx',
    'articles/month-by-month.mdx',
  ])
    assert.match(folder.entries.find((entry) => entry.path.endsWith(path))?.text ?? '', /<Day of="last syrup" \/>/, path);
  assert.match(
    folder.entries.find(({ path }) => path.endsWith('checklists/fall-feeding.mdx'))?.text ?? '',
    /when="10 days before last syrup to last syrup"/,
  );
});

// US Department of Agriculture, Production Research Report 169 (1977): complete this feeding by about 15 October in the northern tier of states.
test('the day is the published one in the valley, and some days earlier on the hill', () => {
  const [valley, hill] = districtsIn(validEntries(folder));
  assert.deepEqual([valley?.anchors['last-syrup']?.expected, valley?.anchors['last-syrup']?.basis.kind], ['10-15', 'printed']);
  assert.deepEqual([hill?.anchors['last-syrup']?.expected, hill?.anchors['last-syrup']?.basis.kind], ['10-09', 'shifted']);
});
