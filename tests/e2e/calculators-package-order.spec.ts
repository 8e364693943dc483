// Package order in a browser: totals and lines, missing details of the supplier, wrong lines, the pick-up sheet on one page.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { openCalculator, type Sheet } from './calculator-page.ts';
import { desk } from './visit.ts';

let browser: Browser;
let site: Site;
let sheet: Sheet;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
  sheet = await openCalculator(browser, site, 'package-order');
});

const whole = 'lines=10x3;4x2&allowance=10&hours=5&bees-per-pound=3500&spare-queens=1&cage-lb=1.5&can-lb=3&syrup-l-each=1';

test('package order: all details of the supplier, in total and line by line (3,500 bees a pound: Delaware)', async () => {
  await sheet.open(whole);
  assert.deepEqual(await sheet.values(), {
    'net-lb': '38', 'shake-lb': '41.8', 'gross-lb': '101', bees: '133000', queens: '15', 'syrup-l': '14',
    '1 net-lb': '30', '1 shake-lb': '33', '1 gross-lb': '75', '1 bees': '105000', '1 queens': '10', '1 syrup-l': '10',
    '2 net-lb': '8', '2 shake-lb': '8.8', '2 gross-lb': '26', '2 bees': '28000', '2 queens': '4', '2 syrup-l': '4',
  }); // prettier-ignore
  assert.equal(await sheet.said(), '14 packages: 38 lb (17.2 kg) of bees, about 133,000.');
  assert.equal(await sheet.words('queens'), '15, 1 of them spare');
  assert.equal(await sheet.words('syrup-l'), '3.7 US gal (14 L, 3.08 imperial gal)');
  assert.equal(
    await sheet.page.locator('[data-text="road"]').textContent(),
    'Bees are reckoned at 3,500 to the pound. About 5 hours on the road. Put in over the label for deaths on the way: 10 %.',
  );
  assert.match(
    (await sheet.page.locator('[data-to="syrup"] a').getAttribute('href'))!,
    /\/work-it-out\/syrup\/#sugar-parts=1&water-parts=1&by=weight&know=syrup&amount=14&unit=L$/,
  );
});

test('package order: missing details of the supplier are left out, with the reason', async () => {
  await sheet.open('lines=2x3');
  assert.deepEqual(await sheet.values(), {
    'net-lb': '6',
    bees: '21000',
    queens: '2',
    '1 net-lb': '6',
    '1 bees': '21000',
    '1 queens': '2',
  });
  for (const name of ['shake-lb', 'gross-lb', 'syrup-l']) assert.equal(await sheet.words(name), 'Ask the supplier.', name);
  assert.ok(await sheet.page.locator('[data-to="syrup"]').isHidden());
  assert.match((await sheet.page.locator('[data-text="next"]').textContent())!, /^Ask the supplier/);
  await sheet.open('lines=2x3&cage-lb=1.5');
  assert.equal((await sheet.values())['gross-lb'], undefined);
  await sheet.open('lines=2x3&hours=9&allowance=0');
  const found = await sheet.values();
  assert.deepEqual([found['shake-lb'], found['net-lb']], ['6', '6']);
  await sheet.open('lines=1x2&bees-per-pound=4000');
  assert.equal((await sheet.values()).bees, '8000');
  await sheet.open('lines=1x3&bees-per-pound=3333');
  assert.equal((await sheet.values()).bees, '9999');
});

test('package order: the syrup link opens a syrup with a result', async () => {
  await sheet.open(whole);
  await sheet.page.locator('[data-to="syrup"] a').click();
  await sheet.page.waitForSelector('output[name="sugar-kg"][data-value]');
  assert.equal(await sheet.page.locator('output[name="syrup-l"]').getAttribute('data-value'), '14');
});

test('package order: typed as people type, rows added and pasted, and the address gives the same again', async () => {
  await sheet.open('');
  await sheet.fill('packages', ' 10 ');
  await sheet.press('Add a line');
  await sheet.fill('packages', '4', 1);
  await sheet.fill('pounds', '1 kg', 1);
  await sheet.fill('allowance', '12,5 %');
  await sheet.fill('cage-lb', '24 oz');
  await sheet.fill('can-lb', '3 lb');
  await sheet.fill('syrup-l-each', '½ us gal');
  await sheet.press('Calculate');
  assert.deepEqual(await sheet.faults(), []);
  const [hash, found] = [await sheet.hash(), await sheet.values()];
  assert.equal(
    hash,
    'lines=10x3;4x2.20462262184878&allowance=12.5&bees-per-pound=3500&spare-queens=0&cage-lb=1.5&can-lb=3&syrup-l-each=1.892705892',
  );
  await sheet.open(hash);
  assert.deepEqual(await sheet.values(), found);
  await sheet.press('Remove line 1');
  assert.equal((await sheet.values()).queens, '4');
  await sheet.open('');
  await sheet.page.getByText('Paste a list').click();
  await sheet.fill('lines-list', 'Packages\tPounds\n10 x 3 lb\n4, 2');
  await sheet.press('Calculate');
  assert.match(await sheet.hash(), /^lines=10x3;4x2&/);
});

test('package order: wrong lines and numbers are named, and there is no result', async () => {
  const cases: [values: string, says: string][] = [
    ['', 'Write how many packages.'],
    ['lines=0x3', 'Write how many packages, 1 or more.'],
    ['lines=2x3;0x2', 'Line 2: Write how many packages, 1 or more.'],
    ['lines=2x3;1.5x2', 'Line 2: “1.5” is not a whole number. Write how many packages.'],
    ['lines=2x0', 'The weight must be more than 0.'],
    ['lines=2x-3', 'The weight must be more than 0.'],
    ['lines=2x300', 'A package weighs at most 20 lb.'],
    ['lines=20000x3', 'An order has at most 10,000 packages.'],
    ['lines=6000x3;6000x3', 'An order has at most 10,000 packages.'],
    ['lines=9', '“9” in the address is not like 10x3.'],
    ['lines=2x3&allowance=-1', 'It lies from 0 to 100 %.'],
    ['lines=2x3&allowance=ten', '“ten” is not a number. Write what is put in over the label, such as 10.'],
    ['lines=2x3&hours=-1', 'The hours are from 0 to 240.'],
    ['lines=2x3&hours=999', 'The hours are from 0 to 240.'],
    ['lines=2x3&bees-per-pound=0', 'The bees in a pound are more than 0 and at most 10,000.'],
    ['lines=2x3&spare-queens=0.5', '“0.5” is not a whole number. Write how many spare queens, or 0.'],
    ['lines=2x3&cage-lb=21', 'An empty cage weighs from 0 to 20 lb.'],
    ['lines=2x3&can-lb=-1', 'A can weighs from 0 to 20 lb.'],
    ['lines=2x3&syrup-l-each=50', 'A can holds from 0 to 21 US quarts.'],
  ];
  for (const [values, says] of cases) {
    await sheet.open(values);
    if (values === '') await sheet.press('Calculate');
    assert.deepEqual(await sheet.faults(), [says], values);
    assert.deepEqual(await sheet.values(), {});
  }
  await sheet.open(`lines=${Array.from({ length: 13 }, () => '1x3').join(';')}`);
  assert.deepEqual(await sheet.faults(), ['The form takes 12 rows at most, and these are 13.']);
});

for (const format of ['A4', 'Letter'] as const) {
  test(`package order: the pick-up sheet is one page of ${format}`, async () => {
    const own = await openCalculator(browser, site, 'package-order', whole, { viewport: desk });
    const paper = (await own.page.pdf({ format, preferCSSPageSize: true })).toString('latin1');
    assert.equal(paper.match(/\/Type\s*\/Page\b/g)?.length, 1);
    await own.close();
  });
}

test('package order: the content of the sheet', async () => {
  const own = await openCalculator(browser, site, 'package-order', whole, { viewport: desk });
  await own.page.emulateMedia({ media: 'print' });
  const text = await own.page.locator('body').innerText();
  for (const words of [
    'Pick-up sheet',
    'Member',
    'Weight, full',
    'Queen walks',
    'Dead, depth',
    '41.8 lb',
    '101 lb',
    '15, 1 of them spare',
    '3.7 US gal',
    'About 5 hours on the road',
    'Cool: under 46',
    'Pettis and others 2016',
    'Ohio Department of Agriculture',
    'The bees hang in one cluster',
    'photograph them with a ruler',
    'Package coordinator',
    '330-555-0113',
    'Wear a veil',
  ])
    assert.ok(text.includes(words), words);
  assert.equal(await own.page.locator('table.ruled tbody tr').count(), 8);
  for (const away of ['.sidebar', '.stays', '[data-part="example"]', 'form.asks', '.box', '.mark'])
    assert.ok(await own.page.locator(away).first().isHidden(), away);
  await own.page.emulateMedia({ media: 'screen' });
  assert.ok(await own.page.locator('table.ruled').isHidden());
  assert.equal(
    await own.page.locator('[data-text="sheets"]').textContent(),
    'A sheet has lines for 8 members. If each takes one package, print 2 sheets.',
  );
  await own.close();
});

test('package order: printed before any result, the blank form is there', async () => {
  await sheet.open('');
  await sheet.page.emulateMedia({ media: 'print' });
  assert.ok(await sheet.page.locator('form.asks input').first().isVisible());
  assert.ok(await sheet.page.locator('[data-part="example"]').isHidden());
  assert.ok(await sheet.page.locator('.sidebar').isVisible());
  await sheet.page.emulateMedia({ media: 'screen' });
});

test('package order: a club without figures and without that contact still gets its sheet', async () => {
  const other = await fixtureSite('southern');
  const own = await openCalculator(browser, other, 'package-order', 'lines=2x3');
  assert.equal((await own.values()).bees, '21000');
  assert.match((await own.page.locator('main').textContent())!, /no figure for this club/);
  await own.close();
  await other.close();
});
