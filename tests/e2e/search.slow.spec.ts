// Search over the whole demo: every number reads as on its page, and results equal the pages whose text contains a word.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { WORDS } from '../../shared/words/search-files.ts';
import type { SearchWords } from '../../shared/words/search-record.ts';
import { termOf } from '../../shared/words/terms.ts';
import { readWordList } from '../../shared/words/word-list.ts';
import type { Site } from '../setup/built-site.ts';
import { numbersUnlike } from './index-numbers.ts';
import { openSearch, placeOf, recordsIn } from './search-engine.ts';
import { nothing } from './visit.ts';

let browser: Browser;
let site: Site;
test.beforeAll(async ({ browser: launched, demo }) => {
  browser = launched;
  site = demo;
});

test('every number in the index reads as on its page, to the last character', { tag: '@slow' }, async () => {
  test.setTimeout(240_000);
  const { found, numbers } = await numbersUnlike({ browser, site }, () => true);
  nothing(found);
  assert.ok(numbers > 500, `${numbers} numbers`);
});

/** Words of the trade, plain words, and some on few pages. */
const WORDS_OF_PAGES = [
  'varroa',
  'syrup',
  'smoker',
  'queen',
  'thermometer',
  'newspaper',
  'matchstick',
  'sacbrood',
  'hospital',
  'veterinarian',
  'refrigerator',
  'candy',
  'chimney',
  'pool',
  'mouse',
  'bears',
  'mesh',
  'excluder',
  'registered',
  'propolis',
  'gloves',
  'strips',
  'drones',
  'robbing',
  'moldy',
];

test('a word finds every page whose text contains it, and no page without a similar word', { tag: '@slow' }, async () => {
  test.setTimeout(120_000);
  const engine = await openSearch(site.folder, site.address);
  const records = recordsIn(site.folder);
  const listed = readWordList((JSON.parse(site.read(WORDS)) as SearchWords).words);
  let held = 0;
  for (const word of WORDS_OF_PAGES) {
    const at = listed.findIndex((other) => termOf(other) === termOf(word));
    const found = new Set(await Promise.all((await engine.pagesWith(at)).map(({ page }) => placeOf(page, engine))));
    const holds = new RegExp(`(?<!\\p{L})${word}(?!\\p{L})`, 'iu');
    const like = new RegExp(`(?<!\\p{L})${word.slice(0, 3)}`, 'iu');
    for (const { place, title, text, content } of records) {
      if (holds.test(`${title} ${text}`)) held += 1;
      if (holds.test(`${title} ${text}`)) assert.ok(found.has(place), `${word} is not found on ${place}`);
      if (found.has(place)) assert.match(content, like, `${word} is found on ${place}`);
    }
  }
  assert.ok(held > 150, `${held} times a page was held against the index`);
});
