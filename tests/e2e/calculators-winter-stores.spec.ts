// Winter stores in a browser: published rows from address and form, odd and wrong input, the link to the syrup page.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { agrees, openCalculator, type Sheet } from './calculator-page.ts';
import { choose } from './visit.ts';
import { framePounds, frames, shortOfTarget, syrupForShortfall } from '../tables/stores.ts';
import { poundsToKilograms } from '../../shared/units/weight.ts';

let browser: Browser;
let site: Site;
let sheet: Sheet;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
  sheet = await openCalculator(browser, site, 'winter-stores');
  // Before the last day for syrup, so that a hive that is short is sent to the syrup page.
  await sheet.page.clock.setFixedTime('2026-09-10T16:00:00Z');
});

const outputs = ['stores-kg', 'short-kg', 'sugar-kg-least', 'sugar-kg-most', 'syrup-l-least', 'syrup-l-most'];

for (const { case: name, given, expect, from } of syrupForShortfall.filter(({ given: { efficiencyLeast } }) => efficiencyLeast === 0.76)) {
  test(`winter stores: ${name} (${from})`, async () => {
    await sheet.open(`gross-kg=25&empty-kg=25&target-kg=${given.shortKg}&mix=${given.mix}`);
    const found = await sheet.values();
    assert.ok(Math.abs(Number(found['syrup-l-least']) - expect.least) <= expect.within, found['syrup-l-least']);
    assert.ok(Math.abs(Number(found['syrup-l-most']) - expect.most) <= expect.within, found['syrup-l-most']);
    for (const output of outputs) assert.ok(Number(found[output]) >= 0, output);
  });
}

for (const { case: name, given, expect, from } of frames) {
  test(`winter stores: ${name} frames (${from})`, async () => {
    await sheet.open(`${given.kind}=${given.count}&target-kg=50`);
    agrees(await sheet.values(), 'stores-kg', poundsToKilograms(framePounds[given.kind] * given.count), 6);
    assert.ok(Math.abs(framePounds[given.kind] * given.count - expect.pounds) <= expect.within);
  });
}

for (const { case: name, given, expect, from } of shortOfTarget) {
  test(`winter stores: the club’s own target and frames, ${name} (${from})`, async () => {
    await sheet.open(`deep=${given.deep}&medium=${given.medium}`);
    const found = await sheet.values();
    agrees(found, 'stores-kg', poundsToKilograms(expect.pounds), 6);
    assert.ok(Math.abs(Number(found['short-kg']) - poundsToKilograms(expect.short)) < 0.00001, found['short-kg']);
    assert.match(await sheet.said(), expect.short === 0 ? /enough/ : new RegExp(`^${expect.short} lb short\\.`));
  });
}

test('winter stores: ideal and rule of practice side by side, in both systems, with the sum', async () => {
  await sheet.open('deep=5&medium=4&shallow=0&target-kg=27.2&mix=2:1-weight');
  const found = await sheet.values();
  agrees(found, 'stores-kg', 20.8652, 3);
  agrees(found, 'short-kg', 6.3348, 3);
  // Sugar 0.82 of the shortfall, and that over 0.76; 2 kg of sugar to 2.261 L of syrup.
  agrees(found, 'sugar-kg-least', 5.1945, 3);
  agrees(found, 'sugar-kg-most', 6.835, 3);
  agrees(found, 'syrup-l-least', 5.873, 2);
  assert.equal(await sheet.words('stores-kg'), '46 lb (20.9 kg)');
  assert.match(await sheet.words('syrup-l-most'), /^to 2\.04 US gal \(7\.73 L, 1\.7 imperial gal\)$/);
  const sum = (await sheet.page.locator('[data-text="sum"]').textContent())!;
  assert.match(sum, /^5 deep × 6 lb \+ 4 medium × 4 lb = 46 lb\. 60 lb wanted − 46 lb = 14 lb short\./);
  assert.match(sum, /14 × 0\.82 ÷ 1\.00 = 11\.5 lb of sugar\. By the rule of practice: 14 × 0\.82 ÷ 0\.76 = 15\.1 lb of sugar\./);
});

test('winter stores: a hive at its target has no shortfall and no link to syrup', async () => {
  await sheet.open('gross-kg=60&empty-kg=25&target-kg=20');
  const found = await sheet.values();
  assert.equal(found['stores-kg'], '35');
  for (const output of outputs.slice(1)) assert.equal(found[output], '0', output);
  assert.equal(await sheet.said(), '77.2 lb of stores: enough for the 44.1 lb wanted.');
  assert.ok(await sheet.page.locator('[data-to="syrup"]').isHidden());
});

test('winter stores: the shortfall is carried to the syrup page', async () => {
  await sheet.open('deep=0&medium=0&shallow=0&target-kg=20&mix=3:2-weight');
  const most = Number((await sheet.values())['sugar-kg-most']);
  await sheet.page.locator('[data-to="syrup"] a').click();
  await sheet.page.waitForSelector('output[data-value]');
  assert.match(sheet.page.url(), /work-it-out\/syrup\/#sugar-parts=3&water-parts=2&by=weight&know=sugar&amount=[\d.]+&unit=lb/);
  assert.ok(Math.abs(Number((await sheet.values())['sugar-kg']) - most) < 0.005);
});

// US Department of Agriculture, Production Research Report 169 (1977): complete this feeding by about 15 October in the northern states.
test('winter stores: the last day for syrup is the one in the club’s source, for the reader’s district', async () => {
  await sheet.open('deep=4');
  const valley = (await sheet.values())['feed-by']!;
  assert.equal(valley, '10-15');
  assert.match(await sheet.words('feed-by'), /^October 15 in the valley \(from a published date\)\. .*mild nights/);
  await choose(sheet.page, site, 'district', 'hill');
  await sheet.open('deep=5');
  assert.match(await sheet.words('feed-by'), /^October 9 in the hill \(6 days earlier than in the valley/);
  assert.ok((await sheet.values())['feed-by']! < valley);
  await choose(sheet.page, site, 'district', 'valley');
});

test('winter stores: pages and calculator name the same last day for syrup', async () => {
  await sheet.open('deep=4');
  assert.match(await sheet.words('feed-by'), /^October 15 in the valley/);
  const page = await sheet.page.context().newPage();
  for (const path of [
    'know-how/when-to-stop-syrup/',
    'know-how/fall/',
    'know-how/feeding-and-stores/',
    'know-how/month-by-month/',
    'lists/fall-feeding/',
  ]) {
    await page.goto(site.address + path);
    const days = await page.locator('main [data-windows]').allTextContents();
    assert.ok(
      days.some((words) => /(?:^|\s)October\s(?:\d+ to )?15$/.test(words)),
      `${path}: ${days.join('; ')}`,
    );
  }
  await page.close();
});

test('winter stores: a missing name takes its default; the club’s target is its figure', async () => {
  await sheet.open('deep=4');
  assert.equal(await sheet.hash(), 'deep=4&target-kg=27.2155422&mix=2:1-weight');
  agrees(await sheet.values(), 'short-kg', 27.2155 - 10.8862, 3);
});

const typed: { fill: Record<string, string>; says?: string[]; hash?: string }[] = [
  { fill: {}, says: ['Write what the hive weighs, or how many frames of honey there are.'] },
  { fill: { 'gross-kg': '130', 'empty-kg': '36,5 kg' }, hash: 'gross-kg=58.9670081&empty-kg=36.5&target-kg=27.2155422&mix=2:1-weight' },
  { fill: { deep: '5½', medium: ' 0 ' }, hash: 'deep=5.5&medium=0&target-kg=27.2155422&mix=2:1-weight' },
  {
    fill: { 'gross-kg': '60 kg', 'empty-kg': '25 kg', deep: '0' },
    hash: 'gross-kg=60&empty-kg=25&deep=0&target-kg=27.2155422&mix=2:1-weight',
  },
  { fill: { 'gross-kg': '60', 'empty-kg': '25', deep: '3' }, says: ['Write the weights or the frames, not both. Empty the others.'] },
  { fill: { 'gross-kg': '60' }, says: ['Write what the hive weighs without bees and stores, such as 80.'] },
  { fill: { 'empty-kg': '60' }, says: ['Write what the whole hive weighs, such as 130.'] },
  { fill: { 'gross-kg': '20', 'empty-kg': '25' }, says: ['The empty hive cannot weigh more than the whole.'] },
  { fill: { 'gross-kg': '9000', 'empty-kg': '25' }, says: ['A hive weighs from 0 to 2,200 lb.'] },
  { fill: { 'gross-kg': '50', 'empty-kg': '−25' }, says: ['A hive weighs from 0 to 2,200 lb.'] },
  { fill: { deep: '-1' }, says: ['Frames are from 0 to 100.'] },
  { fill: { medium: '500' }, says: ['Frames are from 0 to 100.'] },
  { fill: { deep: 'many' }, says: ['“many” is not a number. Write how many deep frames of honey there are, such as 5 or 5½.'] },
  { fill: { deep: '5', 'target-kg': '0' }, says: ['The stores wanted must be more than 0 and at most 2,200 lb.'] },
  { fill: { deep: '5', 'target-kg': '' }, says: ['Write the stores wanted, such as 60.'] },
  { fill: { 'gross-kg': '1,500', 'empty-kg': '25' }, says: ['“1,500” can be read two ways. Write 1500, or 1.5.'] },
  {
    fill: { 'gross-kg': '60 stone', 'empty-kg': '25' },
    says: ['“stone” cannot be read here. Write what the whole hive weighs, such as 130, as a number alone.'],
  },
  {
    fill: { deep: '5', medium: 'x', 'target-kg': 'y' },
    says: [
      '“x” is not a number. Write how many medium frames of honey there are, such as 5 or 5½.',
      '“y” is not a number. Write the stores wanted, such as 60.',
    ],
  },
];

for (const { fill, says, hash } of typed) {
  test(`winter stores: ${JSON.stringify(fill)}`, async () => {
    await sheet.open('');
    for (const [name, text] of Object.entries(fill)) await sheet.fill(name, text);
    await sheet.press('Calculate');
    assert.deepEqual(await sheet.faults(), says ?? []);
    if (says) assert.deepEqual(await sheet.values(), {});
    else assert.equal(await sheet.hash(), hash);
  });
}

test('winter stores: parsed values are shown in both systems', async () => {
  await sheet.open('gross-kg=60&empty-kg=25&target-kg=20');
  assert.equal(await sheet.page.locator('[data-read-as="gross-kg"]').textContent(), '132 lb (60 kg)');
  await sheet.press('Clear');
  assert.equal(await sheet.page.locator('[data-read-as="gross-kg"]').textContent(), '');
});

test('winter stores: a wrong mix or an unknown name in the address is reported', async () => {
  await sheet.open('deep=5&mix=2:1&honey=3');
  const says = async (): Promise<void> => {
    assert.deepEqual(await sheet.faults(), ['“2:1” is not one of the choices.']);
    assert.equal(
      await sheet.page.locator('[data-part="passed-over"]').innerText(),
      'The link names something that this form does not have: honey.',
    );
  };
  await says();
  // The browser tells the page that it is shown, before or after the script has come. The form reads the address at both.
  await sheet.page.evaluate(() => window.dispatchEvent(new PageTransitionEvent('pageshow')));
  await says();
});

test('winter stores: a club without the figures says so, and still calculates', async () => {
  const southern = await fixtureSite('southern');
  const other = await openCalculator(browser, southern, 'winter-stores', 'gross-kg=40&empty-kg=25&target-kg=20');
  const found = await other.values();
  assert.equal(found['short-kg'], '5');
  assert.equal(found['sugar-kg-least'], undefined);
  assert.equal(await other.words('sugar-kg-least'), 'No figure for this club.');
  assert.match(
    (await other.page.locator('[data-text="sum"]').textContent())!,
    /^40 kg − 25 kg = 15 kg\. 20 kg wanted − 15 kg = 5 kg short\..*no figure for this club\.$/,
  );
  await other.open('deep=5&target-kg=20');
  assert.deepEqual(Object.keys(await other.values()), []);
  assert.equal(await other.words('feed-by'), 'No figure for this club.');
  assert.match((await other.page.locator('[data-text="sum"]').textContent())!, /^5 deep × no figure = no figure for this club\.$/);
  await other.close();
  await southern.close();
});
