// Units in a browser: fields, labels, hints and results in the club's own units, one switch for others, and a stable address.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import { expect, type Browser, type Page } from '@playwright/test';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { openCalculator } from './calculator-page.ts';
import { desk } from './visit.ts';

let browser: Browser;
/** What a label says, in a closed fold, too: the words of the other units are hidden by a style. */
const shownWords = (labels: (HTMLElement | SVGElement)[]): string[] =>
  labels.map((label) => {
    const copy = label.cloneNode(true) as HTMLElement;
    label.querySelectorAll('.in-us, .in-metric').forEach((words, at) => {
      if (getComputedStyle(words).display === 'none') copy.querySelectorAll('.in-us, .in-metric')[at]!.setAttribute('hidden', '');
    });
    copy.querySelectorAll('[hidden]').forEach((words) => words.remove());
    return copy.textContent!.replace(/\s+/g, ' ').trim();
  });

let site: Site;
let metric: Site;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  metric = await fixtureSite('southern');
  browser = launched;
});
test.afterAll(() => metric?.close());

/** By calculator: odd values in the fixed units, and the content of its fields in each system of units. */
const forms: { slug: string; values: string; us: Record<string, string>; metric: Record<string, string> }[] = [
  {
    slug: 'winter-stores',
    values: 'gross-kg=58.9670081&empty-kg=36.5&target-kg=27.2&mix=2:1-weight',
    us: { 'gross-kg': '130', 'empty-kg': '80.5', 'target-kg': '60' },
    metric: { 'gross-kg': '59', 'empty-kg': '36.5', 'target-kg': '27.2' },
  },
  {
    slug: 'syrup',
    values: 'sugar-parts=2&water-parts=1&by=volume&know=sugar&amount=25&unit=lb&temperature=18.3&sugar-per-cup=201.3',
    us: { amount: '25', temperature: '64.9', 'sugar-per-cup': '7.1' },
    metric: { amount: '25', temperature: '18.3', 'sugar-per-cup': '201.3' },
  },
  {
    slug: 'package-calendar',
    values: 'installed=2026-04-18&pounds=2.7&queen=candy&comb=foundation&bees-per-pound=3300',
    us: { pounds: '2.7', 'bees-per-pound': '3300' },
    metric: { pounds: '1.22', 'bees-per-pound': '7280' },
  },
  {
    slug: 'package-order',
    values: 'lines=10x3;4x2.2&allowance=10&bees-per-pound=3500&spare-queens=1&cage-lb=1.5&can-lb=3&syrup-l-each=1',
    us: { pounds: '3', 'cage-lb': '1.5', 'can-lb': '3', 'syrup-l-each': '1.06' },
    metric: { pounds: '1.36', 'cage-lb': '0.68', 'can-lb': '1.36', 'syrup-l-each': '1' },
  },
  {
    slug: 'weight-check',
    values: 'rule=ca&label-g=454&lot=4&weights-g=454,448,447.99,441.99',
    us: { 'label-g': '16', 'weights-g': '16\n15.8\n15.8\n15.6' },
    metric: { 'label-g': '454', 'weights-g': '454\n448\n447.99\n441.99' },
  },
];

const boxes = (page: Page, names: readonly string[]) =>
  page.evaluate(
    (names) => Object.fromEntries(names.map((name) => [name, document.querySelector<HTMLInputElement>(`form [name="${name}"]`)!.value])),
    names,
  );
/** The visible words of the form and of the result, without the text that names a source. */
const words = (page: Page) => page.locator('form.asks').innerText();
const inMetric = /\b(kg|kilograms?|g|L|mL)\b|°C/;
const inUs = /\b(lb|oz|pounds?|US (quarts|gal))\b|°F/;

for (const { slug, values, us, metric: inKilograms } of forms) {
  test(`${slug}: one switch converts fields, labels and results; the address and the exact numbers stay, there and back`, async () => {
    const sheet = await openCalculator(browser, site, slug, values);
    const { page } = sheet;
    const names = Object.keys(us);
    const [hash, found, said] = [await sheet.hash(), await sheet.values(), await sheet.said()];
    for (const part of values.split('&')) assert.ok(decodeURIComponent(hash).includes(decodeURIComponent(part)), `${hash} lacks ${part}`);
    assert.deepEqual(await boxes(page, names), us);
    for (let time = 0; time < 5; time += 1) {
      await sheet.turn('metric');
      assert.deepEqual(await boxes(page, names), inKilograms);
      assert.deepEqual([await sheet.hash(), await sheet.values()], [hash, found]);
      await sheet.turn('us');
      assert.deepEqual(await boxes(page, names), us);
      assert.deepEqual([await sheet.hash(), await sheet.values(), await sheet.said()], [hash, found, said]);
    }
    await sheet.close();
  });

  test(`${slug}: without script the labels of a US club and of a metric club are its own`, async () => {
    for (const [club, own, other] of [
      [site, inUs, inMetric],
      [metric, inMetric, inUs],
    ] as const) {
      const context = await browser.newContext({ javaScriptEnabled: false });
      const page = await context.newPage();
      await page.goto(`${club.address}work-it-out/${slug}/`);
      const labels = (await page.locator('form.asks :is(label, legend)').evaluateAll(shownWords)).filter(
        (label) => !/^US cup|oz \(weight\)/.test(label),
      );
      assert.ok(
        labels.some((label) => own.test(label)),
        labels.join('; '),
      );
      assert.deepEqual(
        labels.filter((label) => other.test(label) && !/US cup/.test(label)),
        [],
      );
      assert.ok(await page.locator('button[data-form="units"]').first().isHidden());
      await context.close();
    }
  });
}

test('a choice of units is stored for the reader, applies to every form, and works before anything is touched', async () => {
  const sheet = await openCalculator(browser, site, 'winter-stores', '', { viewport: desk });
  const { page } = sheet;
  const pressed = (units: string) => page.locator(`form [data-form="units"][value="${units}"]`).getAttribute('aria-pressed');
  assert.deepEqual([await pressed('us'), await pressed('metric')], ['true', 'false']);
  assert.match(await words(page), /Whole hive, lb[\s\S]*Stores wanted, lb/);
  assert.equal(await page.locator('[name="target-kg"]').inputValue(), '60');
  await sheet.turn('metric');
  await page.locator('.calculator[data-units="metric"]').waitFor();
  assert.match(await words(page), /Whole hive, kg[\s\S]*Stores wanted, kg/);
  assert.equal(await page.locator('[name="target-kg"]').inputValue(), '27.2');
  assert.deepEqual([await pressed('us'), await pressed('metric')], ['false', 'true']);
  await page.goto(`${site.address}work-it-out/package-order/`);
  await page.locator('.calculator[data-units="metric"]').waitFor();
  assert.equal(await page.locator('[name="pounds"]').inputValue(), '1.36');
  assert.equal(await page.locator('[name="bees-per-pound"]').inputValue(), '7720');
  // The page's own numbers are exact: three pounds, not 1.36 kg.
  await sheet.fill('packages', '10');
  await sheet.press('Calculate');
  assert.match(await sheet.hash(), /^lines=10x3&bees-per-pound=3500&/);
  assert.equal((await sheet.values())['net-lb'], '30');
  await sheet.press('Add a line');
  assert.equal(await page.locator('[name="pounds"]').nth(1).inputValue(), '1.36');
  await sheet.press('Clear');
  assert.equal(await page.locator('[name="pounds"]').inputValue(), '1.36');
  await sheet.turn('us');
  assert.equal(await page.locator('[name="pounds"]').inputValue(), '3');
  await sheet.close();
});

test('a bare number is in the unit of its label, a number with a word is in that unit, and both follow the switch', async () => {
  const sheet = await openCalculator(browser, site, 'winter-stores');
  await sheet.fill('gross-kg', '130');
  await sheet.fill('empty-kg', '36 kg');
  await sheet.press('Calculate');
  // 130 lb is 58.9670081 kg: NIST Special Publication 811 (2008), appendix B.8.
  assert.match(await sheet.hash(), /^gross-kg=58\.9670081&empty-kg=36&/);
  await sheet.turn('metric');
  assert.deepEqual(await boxes(sheet.page, ['gross-kg', 'empty-kg']), { 'gross-kg': '59', 'empty-kg': '36' });
  assert.equal(await sheet.page.locator('[data-read-as="gross-kg"]').textContent(), '59 kg (130 lb)');
  // A field that was typed over has exactly the typed text.
  await sheet.fill('gross-kg', '59');
  assert.match(await sheet.hash(), /^gross-kg=59&/);
  await sheet.close();
});

test('weights of a list that nobody touched stay exact when another is changed', async () => {
  const sheet = await openCalculator(browser, site, 'weight-check', forms.at(-1)!.values);
  const box = sheet.page.locator('form textarea');
  await sheet.fill('weights-g', (await box.inputValue()).replace('15.6', '15.7'));
  // 15.7 oz is 445.0875130625 g: NIST Special Publication 811 (2008), appendix B.8.
  assert.match(await sheet.hash(), /&weights-g=454,448,447\.99,445\.08751306/);
  await sheet.close();
});

/** Like a browser that empties a form on Back: before it tells the page, or in a later task. */
for (const { slug, values, us } of forms) {
  for (const persisted of [false, true]) {
    test(`${slug}: fields that were emptied on Back are filled again (${persisted ? 'page restored, emptied before and after' : 'page reloaded'})`, async () => {
      const sheet = await openCalculator(browser, site, slug, values);
      const [found, said, names] = [await sheet.values(), await sheet.said(), Object.keys(us)];
      await sheet.page.evaluate(async (persisted) => {
        const form = document.querySelector<HTMLFormElement>('form.asks')!;
        const empty = (): void => {
          for (const box of form.querySelectorAll<HTMLInputElement>('input[type=text], textarea')) box.value = '';
        };
        empty();
        window.dispatchEvent(new PageTransitionEvent('pageshow', { persisted }));
        if (persisted) await new Promise<void>((emptied) => setTimeout(() => emptied(empty())));
      }, persisted);
      await expect.poll(() => boxes(sheet.page, names)).toEqual(us);
      assert.deepEqual([await sheet.values(), await sheet.said()], [found, said]);
      await sheet.close();
    });
  }
}
