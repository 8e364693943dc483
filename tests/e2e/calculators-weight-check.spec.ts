// Weight check in a browser: one list under three laws, the laws in the figures, pasted lists, wrong input, values from memory.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { ca, checks, eu, sampleErrors, sampleSizes, tolerances, us } from '../tables/weights.ts';
import type { Tolerance, WeightRule } from '../../shared/packages/weight-rule.ts';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { agrees, openCalculator, type Sheet } from './calculator-page.ts';

let browser: Browser;
let site: Site;
let sheet: Sheet;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
  sheet = await openCalculator(browser, site, 'weight-check');
});

const address = (rule: string, errors: readonly number[], lot = 48, labelG = 454): string =>
  `rule=${rule}&label-g=${labelG}&lot=${lot}&weights-g=${errors.map((error) => labelG + error).join(',')}`;

for (const { case: name, given, expect, from } of checks) {
  test(`weight check: ${name} (${from})`, async () => {
    await sheet.open(
      address(
        given.rule,
        sampleErrors.map((error) => error + given.shift),
      ),
    );
    const found = await sheet.values();
    agrees(found, 'mean-error', expect.mean, 9);
    agrees(found, 'spread', 2.939, 3);
    assert.ok(Math.abs(Number(found.limit) - expect.limit) <= 0.002, found.limit);
    assert.equal(found.verdict, expect.verdict);
    // Only Canada's 6 g is reached in this sample.
    assert.equal(found['short-once'], String(given.rule === 'ca' ? sampleErrors.filter((error) => error + given.shift < -6).length : 0));
    assert.equal(found['short-twice'], given.rule === 'us' ? undefined : '0');
    assert.match(await sheet.said(), new RegExp({ eu: 'EU and UK rule', ca: 'Canadian rule', us: 'US rule' }[given.rule]));
  });
}

for (const { case: name, given, expect, from } of sampleSizes) {
  test(`weight check: asks for ${name} (${from})`, async () => {
    await sheet.open(address(given.rule, [0, 1], given.lot));
    assert.equal((await sheet.values())['sample-needed'], String(expect.needed));
    assert.equal((await sheet.words('sample-needed')).includes('from memory'), given.rule === 'us');
  });
}

for (const { case: name, given, expect, from } of tolerances.filter(({ given }) => given.rule !== 'us')) {
  test(`weight check: a package may be short, ${name} (${from})`, async () => {
    const grams = expect.grams!;
    await sheet.open(
      address(given.rule, [0, -grams, -grams - 0.01, -2 * grams - 0.01], 4, given.labelG).replace(
        /weights-g=.*/,
        `weights-g=${[0, -grams, -grams - 0.01, -2 * grams - 0.01].map((error) => Number((given.labelG + error).toFixed(4))).join(',')}`,
      ),
    );
    const found = await sheet.values();
    assert.deepEqual([found['short-once'], found['short-twice']], ['2', '1']);
  });
}

test('weight check: the laws in the figures equal those in the tables of the tests', async () => {
  const held = JSON.parse((await sheet.page.locator('[data-part="figures"]').textContent())!) as {
    rules: Record<string, { rule: WeightRule; from: string }>;
  };
  const sorted = (rule: WeightRule) => ({
    ...rule,
    tolerances: rule.tolerances.toSorted((a: Tolerance, b: Tolerance) => a.fromG - b.fromG),
  });
  // The figures have a label of 0 to 60 g, and nothing weighs under 1 g.
  const canada = sorted(held.rules.ca!.rule);
  assert.deepEqual({ ...canada, tolerances: canada.tolerances.map((row, at) => (at === 0 ? { ...row, fromG: 1 } : row)) }, ca);
  assert.deepEqual(sorted(held.rules.eu!.rule), eu);
  assert.deepEqual({ ...held.rules.us!.rule, tolerances: [] }, us);
  assert.match(held.rules.eu!.from, /Directive 76\/211\/EEC/);
});

test('weight check: two rules disagree on the same weights, and each result names its own', async () => {
  const less = sampleErrors.map((error) => error - 1);
  await sheet.open(address('us', less));
  assert.equal(await sheet.said(), 'Fails by the US rule: the mean is 0.088 oz under the label.');
  assert.match((await sheet.page.locator('[data-text="rule"]').textContent())!, /Handbook 133/);
  await sheet.open(address('ca', less));
  assert.equal(await sheet.said(), 'Passes by the Canadian rule: the mean is 0.088 oz under the label.');
  assert.match(
    (await sheet.page.locator('[data-text="sum"]').textContent())!,
    /Mean and room together: 15\.9262 \+ 0\.0929 = 16\.0191 oz, against 16\.0144 oz\.$/,
  );
  await sheet.turn('metric');
  assert.equal(await sheet.said(), 'Passes by the Canadian rule: the mean is 2.5 g under the label.');
  assert.match(
    (await sheet.page.locator('[data-text="sum"]').textContent())!,
    /Mean and room together: 451\.5 \+ 2\.635 = 454\.135 g, against 454 g\.$/,
  );
  await sheet.turn('us');
  assert.match((await sheet.page.locator('[data-text="rule"]').textContent())!, /SOR\/2018-108/);
  assert.match(await sheet.page.locator('[data-part="result"]').innerText(), /not a legal inspection/);
});

test('weight check: values from memory are marked and decide nothing', async () => {
  await sheet.open(address('us', [-21, 0, 0, 0, 30, 0, 0, 0, 0, 0, 0, 0]));
  const found = await sheet.values();
  assert.deepEqual([found['short-once'], found.verdict], ['1', 'passes']);
  assert.match(await sheet.words('short-once'), /^1, by more than 0\.704 oz \(20 g\), from memory, not opened$/);
  await sheet.open(address('us', [-8, 0, 0, 2, 5, 1, 0, 0, 0, 3, 0, 0], 48, 113.4));
  assert.match(await sheet.words('short-once'), /^1, by more than 0\.256 oz \(7\.3 g\)$/);
  await sheet.open(address('us', [0, 1, 2], 3, 700));
  assert.equal(await sheet.words('short-once'), 'No tolerance held for this label.');
  assert.equal(await sheet.page.locator('.table small:has-text("from memory")').count(), 5);
});

test('weight check: the EU count test, its own number of packages beside the mean’s', async () => {
  await sheet.open(
    address(
      'eu',
      Array.from({ length: 30 }, (_, at) => at % 3),
      200,
    ),
  );
  assert.equal(await sheet.words('sample-needed'), '30 of 200, and 50 for the count of short ones');
  assert.equal((await sheet.values()).verdict, 'too-few');
  assert.equal(await sheet.page.locator('[data-text="more"]').textContent(), 'It asks for 50 weights; here are 30.');
  const fifty = (short: number) => Array.from({ length: 50 }, (_, at) => (at < short ? -14 : 3));
  await sheet.open(address('eu', fifty(3), 200));
  assert.equal((await sheet.values()).verdict, 'passes');
  await sheet.open(address('eu', fifty(4), 200));
  assert.equal((await sheet.values()).verdict, 'fails');
  assert.match((await sheet.page.locator('[data-text="more"]').textContent())!, /Too many are short by more than the tolerance\.$/);
});

test('weight check: one weight, and weights all alike', async () => {
  await sheet.open(address('us', [0]));
  const one = await sheet.values();
  assert.deepEqual([one.verdict, one.spread, one.limit], ['too-few', undefined, undefined]);
  await sheet.open(
    address(
      'us',
      Array.from({ length: 12 }, () => 0),
    ),
  );
  const alike = await sheet.values();
  assert.deepEqual([alike.verdict, alike.spread, alike.limit, alike['mean-error']], ['passes', '0', '0', '0']);
  assert.equal(await sheet.said(), 'Passes by the US rule: the mean is on the label.');
  await sheet.open(
    address(
      'us',
      Array.from({ length: 12 }, () => -0.5),
    ),
  );
  assert.equal((await sheet.values()).verdict, 'fails');
});

test('weight check: a column pasted from a spreadsheet, with its heading, 24 weights', async () => {
  await sheet.open('');
  await sheet.turn('metric');
  await sheet.choose('rule', 'ca');
  await sheet.fill('label-g', '1 lb');
  await sheet.fill('lot', '24');
  await sheet.fill('weights-g', `Net weight\r\n${Array.from({ length: 24 }, (_, at) => (450 + (at % 7)).toFixed(1)).join('\n')}\n\n`);
  assert.equal(await sheet.page.locator('[data-read-as="weights-g"]').innerText(), '24 weights');
  await sheet.press('Calculate');
  assert.deepEqual(await sheet.faults(), []);
  const [hash, found] = [await sheet.hash(), await sheet.values()];
  assert.match(hash, /^rule=ca&label-g=453\.59237&lot=24&weights-g=450,451,452,453,454,455,456,450,/);
  assert.equal(found['sample-needed'], '10');
  assert.equal(await sheet.page.locator('[data-part="result"] svg .dot').count(), 25);
  await sheet.open(hash);
  assert.deepEqual(await sheet.values(), found);
  const box = (await sheet.page.locator('form textarea').boundingBox())!;
  assert.ok(box.height > 24 * 20 && box.width > 300, `${box.width} x ${box.height}`);
  await sheet.turn('us');
});

test('weight check: another way to write a list', async () => {
  await sheet.turn('metric');
  for (const text of [
    '451;456;449',
    '451\t456\t449',
    '451 g\n456g\n449 grams',
    '451, 456, 449',
    '451,456,449',
    '451 456 449',
    'A 451\nB\t456\nC;449',
    '451\n0.456 kg\n449',
  ]) {
    await sheet.open('');
    await sheet.choose('rule', 'us');
    await sheet.fill('label-g', '454');
    await sheet.fill('lot', '3');
    await sheet.fill('weights-g', text);
    await sheet.press('Calculate');
    assert.match(await sheet.hash(), /&weights-g=451,456,449$/, text);
  }
  await sheet.turn('us');
});

test('weight check: a second pasted column of numbers is detected', async () => {
  await sheet.open(address('us', [0, 1, -453, 2, -452]));
  assert.equal(
    await sheet.page.locator('[data-text="far-off"]').textContent(),
    'Look again: Weights 3 and 5 are under half the label or over twice it. Was another column pasted along?',
  );
  await sheet.open(address('us', sampleErrors));
  assert.equal(await sheet.page.locator('[data-text="far-off"]').textContent(), '');
});

test('weight check: wrong weights are named by their place, and the typed text stays', async () => {
  const typed: [text: string, says: string][] = [
    ['', 'Write the weights, a line each.'],
    ['451\n45x\n449', 'Weight 2: “45x” cannot be read here. Write a weight in ounces, as a number alone.'],
    ['451\n456,5', 'Weight 2: “456,5” can be read two ways. Write one number per line, with a point for decimals.'],
    ['451\n1,451', 'Weight 2: “1,451” can be read two ways. Write 1451, or 1.4510.'],
    ['451\n\n0\n449', 'Weight 2: it must be more than 0 oz and at most 3,500 oz.'],
    ['451\n-3', 'Weight 2: it must be more than 0 oz and at most 3,500 oz.'],
    ['451\n16 st', 'Weight 2: “16 st” cannot be read here. Write a weight in ounces, as a number alone.'],
    [Array.from({ length: 501 }, () => '451').join('\n'), 'The list takes 500 numbers at most, and these are 501.'],
  ];
  await sheet.open('');
  await sheet.choose('rule', 'us');
  await sheet.fill('label-g', '454');
  await sheet.fill('lot', '600');
  for (const [text, says] of typed) {
    await sheet.fill('weights-g', text);
    await sheet.press('Calculate');
    assert.deepEqual(await sheet.faults(), [says], text.slice(0, 40));
    assert.deepEqual(await sheet.values(), {});
    assert.equal(await sheet.page.locator('form textarea').inputValue(), text);
  }
  const addressed: [values: string, faults: string[]][] = [
    ['label-g=454&lot=3&weights-g=451', ['Choose a rule.']],
    ['rule=uk&label-g=454&lot=3&weights-g=451', ['“uk” is not one of the choices.']],
    ['rule=us&label-g=0&lot=3&weights-g=451', ['The label must be more than 0 oz and at most 3,500 oz.']],
    ['rule=us&label-g=454&lot=0&weights-g=451', ['Write how many packages the delivery had, 1 or more.']],
    ['rule=us&label-g=454&lot=1&weights-g=451', ['A delivery of 1 cannot be judged by the US rule.']],
    ['rule=ca&label-g=454&lot=9000&weights-g=451', ['So many packages are beyond the Canadian rule.']],
    ['rule=us&label-g=454&lot=2&weights-g=451,452,453', ['There are 3 weights, but only 2 packages.']],
    ['rule=us&label-g=454&lot=3&weights-g=451,45x,449', ['Weight 2: “45x” is not a number. Write a weight in ounces.']],
    ['rule=us&label-g=454&lot=3&weights-g=451,,449', ['Weight 2: Write a weight in ounces.']],
    ['rule=us&label-g=454&lot=3', ['Write the weights, a line each.']],
  ];
  for (const [values, faults] of addressed) {
    await sheet.open(values);
    assert.deepEqual(await sheet.faults(), faults, values);
    assert.deepEqual(await sheet.values(), {});
  }
  await sheet.open('rule=us&label-g=454&lot=3&weights-g=451,45x,449');
  assert.equal(await sheet.page.locator('form textarea').inputValue(), '451,45x,449');
});

test('weight check: the page explains how to get net weights, without script too', async () => {
  const own = await browser.newContext({ javaScriptEnabled: false });
  const page = await own.newPage();
  await page.goto(`${site.address}work-it-out/weight-check/`);
  const text = await page.locator('main').innerText();
  assert.match(text, /Weigh the full package: bees, box, queen cage and can\./);
  assert.match(text, /Take the second from the first\. That is the net weight of the living\./);
  assert.match(text, /own spot check of what it bought\. It is not a legal inspection\./);
  await own.close();
});

test('weight check: a club without the figures of a law gets mean and spread, and no verdict', async () => {
  const other = await fixtureSite('southern');
  const own = await openCalculator(browser, other, 'weight-check', address('us', sampleErrors));
  assert.deepEqual(Object.keys(await own.values()), ['mean-error', 'spread']);
  assert.equal(await own.words('sample-needed'), 'No figure for this club.');
  assert.equal(await own.said(), 'Not judged: no figures for the US rule. The mean is 1.5 g under the label.');
  await own.close();
  await other.close();
});
