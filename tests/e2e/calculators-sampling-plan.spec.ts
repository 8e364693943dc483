// Sampling plan in a browser: published numbers of bees and colonies, odd and wrong shares, no colonies, no figures.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { bees, coloniesToSample, missed } from '../tables/mites.ts';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { agrees, openCalculator, type Sheet } from './calculator-page.ts';

let browser: Browser;
let site: Site;
let sheet: Sheet;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
  sheet = await openCalculator(browser, site, 'sampling-plan');
});

for (const { case: name, given, expect, from } of bees) {
  test(`sampling plan: ${name} (${from})`, async () => {
    await sheet.open(`share=${given.share}&certainty=${given.certainty}`);
    const found = await sheet.values();
    assert.equal(found['bees-needed'], String(expect.bees));
    agrees(found, 'missed-chance', 100 * (1 - given.share / 100) ** expect.bees, 6);
    assert.ok(Number(found['missed-chance']) <= 100 - given.certainty + 1e-9);
    assert.equal(found['colonies-to-sample-least'], undefined);
    assert.equal(await sheet.words('colonies-to-sample-least'), 'Write above how many colonies there are.');
  });
}

for (const { case: name, given, expect, from } of coloniesToSample) {
  test(`sampling plan: an apiary of ${name} (${from})`, async () => {
    await sheet.open(`colonies=${given.colonies}`);
    const found = await sheet.values();
    assert.deepEqual([found['colonies-to-sample-least'], found['colonies-to-sample-most']], [String(expect.least), String(expect.most)]);
    assert.equal(found['bees-needed'], '299');
    const shown = `${await sheet.words('colonies-to-sample-least')} ${await sheet.words('colonies-to-sample-most')}`.trim();
    assert.equal(shown, expect.least === expect.most ? String(expect.least) : `${expect.least} to ${expect.most}`);
  });
}

test('sampling plan: the chart shows the misses of other sample sizes, and the requested one is below the line', async () => {
  const [row] = missed;
  await sheet.open('share=5&certainty=64.15');
  assert.equal((await sheet.values())['bees-needed'], '20', row!.from);
  agrees(await sheet.values(), 'missed-chance', row!.expect.percent, 2);
  await sheet.open('share=1&certainty=95&colonies=12');
  assert.equal(await sheet.said(), 'Look at 299 bees from each of 8 to 10 colonies.');
  assert.equal(await sheet.words('missed-chance'), '4.95 %');
  const drawn = await sheet.page.locator('[data-part="result"] svg text').allTextContents();
  for (const bees of ['75', '150', '224', '299', '449']) assert.ok(drawn.includes(bees), `${bees} in ${drawn.join(' ')}`);
  assert.equal(await sheet.page.locator('[data-part="result"] svg .settled').count(), 2);
});

test('sampling plan: a sample larger than a colony should give is pointed out', async () => {
  await sheet.open('share=0.05&certainty=95');
  assert.equal((await sheet.values())['bees-needed'], '5990');
  assert.match(
    (await sheet.page.locator('[data-text="more"]').textContent())!,
    /^More than a colony should give: take no more than 600\. .* take a usual sample of 300 now and another in two weeks\.$/,
  );
  assert.equal(await sheet.words('bees-needed'), 'over 600 bees.');
  assert.equal(await sheet.said(), 'That would take over 600 bees of one colony: more than it should give.');
  const cells = sheet.page.locator('[data-part="example"] td data');
  const told = await cells.evaluateAll((all) => all.map((cell) => [Number((cell as HTMLDataElement).value), cell.textContent] as const));
  assert.ok(told.some(([bees]) => bees > 600));
  for (const [bees, words] of told) assert.equal(words, bees > 600 ? 'over 600' : String(bees));
  await sheet.open('share=0.5&certainty=95');
  assert.equal(await sheet.page.locator('[data-text="more"]').textContent(), 'That is 2 usual samples of 300.');
});

test('sampling plan: wrong values in the address', async () => {
  const cases: [values: string, says: string][] = [
    ['share=0', 'The share lies over 0 and up to 100 %.'],
    ['share=-1', 'The share lies over 0 and up to 100 %.'],
    ['share=101', 'The share lies over 0 and up to 100 %.'],
    ['share=0.001', 'A share under 0.01 % cannot be found with the bees of one colony.'],
    [`share=0.${'0'.repeat(320)}1`, 'A share under 0.01 % cannot be found with the bees of one colony.'],
    ['certainty=100', 'It lies over 0 and under 100 %. No sample makes it quite certain.'],
    ['certainty=0', 'It lies over 0 and under 100 %. No sample makes it quite certain.'],
    ['colonies=0', 'Write 1 or more colonies, or leave it empty.'],
    ['colonies=-3', '“-3” is under 0. Write how many colonies stand in the apiary.'],
    ['colonies=1.5', '“1.5” is not a whole number. Write how many colonies stand in the apiary.'],
    ['share=', 'Write the share of bees with a mite, such as 1.'],
    ['share=one', '“one” is not a number. Write the share of bees with a mite, such as 1.'],
    ['share=1,5', 'In an address this is written 1.5. Press “Calculate” to use it.'],
  ];
  for (const [values, says] of cases) {
    await sheet.open(values);
    assert.deepEqual(await sheet.faults(), [says], values.slice(0, 40));
    assert.deepEqual(await sheet.values(), {});
    const [name, typed] = values.split('=') as [string, string];
    assert.equal(await sheet.page.locator(`form [name="${name}"]`).inputValue(), typed);
  }
});

test('sampling plan: typed as people type, and the address gives the same again', async () => {
  await sheet.open('');
  await sheet.fill('share', '1,5 %');
  await sheet.fill('certainty', ' 99 percent');
  await sheet.fill('colonies', '9');
  await sheet.press('Calculate');
  assert.deepEqual(await sheet.faults(), []);
  const [hash, found] = [await sheet.hash(), await sheet.values()];
  assert.equal(hash, 'share=1.5&certainty=99&colonies=9');
  assert.equal(found['bees-needed'], '305');
  await sheet.open(hash);
  assert.deepEqual(await sheet.values(), found);
  await sheet.fill('share', 'x');
  assert.deepEqual(await sheet.values(), {});
});

test('sampling plan: a club without figures gets the bees', async () => {
  const other = await fixtureSite('southern');
  const own = await openCalculator(browser, other, 'sampling-plan', 'share=1&certainty=99&colonies=12');
  assert.deepEqual(Object.keys(await own.values()), ['bees-needed', 'missed-chance']);
  assert.equal(await own.words('colonies-to-sample-least'), 'No figure for this club.');
  await own.close();
  await other.close();
});
