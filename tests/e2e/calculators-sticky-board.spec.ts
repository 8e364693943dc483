// Sticky board in a browser: a daily fall and nothing more, odd and wrong input, the levels for boards.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { board } from '../tables/mites.ts';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { openCalculator, type Sheet } from './calculator-page.ts';

let browser: Browser;
let site: Site;
let sheet: Sheet;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
  sheet = await openCalculator(browser, site, 'sticky-board');
});

for (const { case: name, given, expect, from } of board) {
  test(`sticky board: ${name} (${from})`, async () => {
    await sheet.open(`mites=${given.mites}&days=${given.days}`);
    assert.deepEqual(await sheet.values(), { 'per-day': String(expect.perDay) });
  });
}

test('sticky board: no total of the colony, no verdict, no level per hundred bees', async () => {
  await sheet.open('mites=20&days=5');
  assert.equal(await sheet.said(), '4 mites a day fell on the board.');
  const result = (await sheet.page.locator('[data-part="result"] > :not(.next)').allInnerTexts()).join('\n');
  assert.match(result, /How many mites the colony holds is not worked out\. Published factors for that differ tenfold\./);
  assert.match(result, /Do not compare it with a level per hundred bees\./);
  assert.doesNotMatch(result, /\bact\b|unsure|below the level/i);
});

test('sticky board: levels for boards are shown with body, place and phase', async () => {
  const text = (await sheet.page.locator('main').textContent())!;
  assert.match(text, /Swiss bee health service; Switzerland/);
  assert.match(text, /Ministry of agriculture of Quebec 2011/);
  assert.equal(await sheet.page.locator('main [data-figure="board-action-level"]').count(), 9);
  assert.equal(await sheet.page.locator('main [data-figure="mite-action-level"]').count(), 0);
});

test('sticky board: days as people type them', async () => {
  const cases: [mites: string, days: string, hash: string, perDay: string][] = [
    ['9', '3 days', 'mites=9&days=3', '3'],
    ['24', '48 hours', 'mites=24&days=2', '12'],
    ['7', '1 week', 'mites=7&days=7', '1'],
    ['1', '1½', 'mites=1&days=1.5', '0.6666666667'],
    ['10', '2,5', 'mites=10&days=2.5', '4'],
  ];
  for (const [mites, days, hash, perDay] of cases) {
    await sheet.open('');
    await sheet.fill('mites', mites);
    await sheet.fill('days', days);
    await sheet.press('Calculate');
    assert.deepEqual([await sheet.hash(), (await sheet.values())['per-day']], [hash, perDay], days);
  }
});

test('sticky board: wrong numbers give a sentence and no result', async () => {
  const cases: [values: string, says: string][] = [
    ['mites=20&days=0', 'The days must be more than 0.'],
    ['mites=20&days=-2', 'The days must be more than 0.'],
    ['mites=20&days=400', 'A board lies at most 366 days, and a million mites a day is no count.'],
    ['mites=20', 'Write how many days it was in, such as 3.'],
    ['days=5', 'Write how many mites lay on the board.'],
    ['mites=-1&days=5', '“-1” is under 0. Write how many mites lay on the board.'],
    ['mites=1.5&days=5', '“1.5” is not a whole number. Write how many mites lay on the board.'],
    ['mites=9&days=3%20days', 'In an address this is written 3. Press “Calculate” to use it.'],
    [`mites=9&days=0.${'0'.repeat(320)}1`, 'A board lies at most 366 days, and a million mites a day is no count.'],
  ];
  for (const [values, says] of cases) {
    await sheet.open(values);
    assert.deepEqual(await sheet.faults(), [says], values.slice(0, 40));
    assert.deepEqual(await sheet.values(), {});
  }
});

test('sticky board: a club without board levels gets the fall alone', async () => {
  const other = await fixtureSite('southern');
  const own = await openCalculator(browser, other, 'sticky-board', 'mites=9&days=3');
  assert.deepEqual(await own.values(), { 'per-day': '3' });
  assert.doesNotMatch((await own.page.locator('main').textContent())!, /Levels for boards|no figure/);
  await own.close();
  await other.close();
});
