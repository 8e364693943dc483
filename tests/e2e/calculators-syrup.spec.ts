// Syrup page in a browser: published mixes from address and form, odd units, wrong numbers.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { agrees, openCalculator, type Sheet } from './calculator-page.ts';

let browser: Browser;
let site: Site;
let sheet: Sheet;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
  sheet = await openCalculator(browser, site, 'syrup');
});

const mixture = (sugar: number, water: number, by: string, know: string, amount: number, unit: string) =>
  `sugar-parts=${sugar}&water-parts=${water}&by=${by}&know=${know}&amount=${amount}&unit=${unit}`;

const mixes: { case: string; values: string; expect: Record<string, [printed: number, places: number] | undefined>; from: string }[] = [
  {
    case: '1 to 1 by weight, 1 kg',
    values: mixture(1, 1, 'weight', 'sugar', 1, 'kg'),
    expect: {
      brix: [50, 2],
      density: [1.2297, 3],
      'syrup-l': [1.626, 2],
      'water-kg': [1, 6],
      'grains-below-least': undefined,
      'grains-below-most': undefined,
    },
    from: 'CRC Handbook, derived',
  },
  {
    case: '2 to 1 by weight, 2 kg',
    values: mixture(2, 1, 'weight', 'sugar', 2, 'kg'),
    expect: {
      brix: [66.67, 2],
      density: [1.3268, 3],
      'syrup-l': [2.261, 2],
      'grains-below-least': [17.1, 1],
      'grains-below-most': [19.6, 1],
    },
    from: 'Mohos 2010 and Vavrinecz 1962',
  },
  {
    case: '1 US gallon of 2 to 1',
    values: mixture(2, 1, 'weight', 'syrup', 1, 'us-gal'),
    expect: { 'sugar-kg': [3.348, 2], 'syrup-l': [3.785, 3] },
    from: '7.38 lb in a US gallon',
  },
  {
    case: '1 US gallon of 1 to 1',
    values: mixture(1, 1, 'weight', 'syrup', 1, 'us-gal'),
    expect: { 'sugar-kg': [2.327, 2] },
    from: '5.13 lb in a US gallon',
  },
  {
    case: '1 to 1 by volume',
    values: mixture(1, 1, 'volume', 'sugar', 4, 'us-cup'),
    expect: { brix: [45.85, 1], density: [1.2072, 3], 'sugar-kg': [0.8, 6] },
    from: '200 g to the cup',
  },
  {
    case: '2 to 1 by volume',
    values: mixture(2, 1, 'volume', 'water', 1, 'L'),
    expect: { brix: [62.88, 1], density: [1.3037, 3], 'water-l': [1, 6] },
    from: '200 g to the cup',
  },
  {
    case: '5 to 2 by weight: past the older line',
    values: mixture(5, 2, 'weight', 'sugar', 1, 'kg'),
    expect: { brix: [71.43, 2], 'grains-below-least': undefined },
    from: 'the older line ends at 40 C',
  },
  {
    case: '3 to 1 by weight: cannot all dissolve',
    values: mixture(3, 1, 'weight', 'sugar', 1, 'kg'),
    expect: { brix: [75, 2], 'grains-below-least': undefined, 'grains-below-most': undefined },
    from: 'over 74 Brix',
  },
  {
    case: 'at 10 C',
    values: `${mixture(1, 1, 'weight', 'sugar', 1, 'kg')}&temperature=10`,
    expect: { density: [1.2339, 3] },
    from: 'the polynomial, computed apart',
  },
];

for (const { case: name, values, expect, from } of mixes) {
  test(`syrup: ${name} (${from})`, async () => {
    await sheet.open(values);
    const found = await sheet.values();
    for (const [output, printed] of Object.entries(expect)) {
      if (printed) agrees(found, output, ...printed);
      else assert.equal(found[output], undefined, output);
    }
    for (const output of ['sugar-kg', 'water-kg', 'water-l', 'syrup-kg', 'syrup-l', 'brix', 'density', 'sugar-per-l'])
      assert.ok(Number(found[output]) > 0, output);
  });
}

test('syrup: both systems are shown in words, and every gallon has its country', async () => {
  await sheet.open(mixture(2, 1, 'weight', 'syrup', 1, 'us-gal'));
  assert.equal(await sheet.words('sugar-kg'), '7.38 lb (3.35 kg)');
  assert.equal(await sheet.words('syrup-l'), '1 US gal (3.79 L, 0.833 imperial gal)');
  assert.equal(await sheet.words('grains-below-least'), '62.8 °F (17.1 °C)');
  assert.equal(await sheet.said(), '7.38 lb of sugar and 3.69 lb of water make 1 US gal of syrup.');
  // Whoever gets the result on paper or by a message reads which mix was asked for.
  for (const by of ['weight', 'volume'] as const) {
    await sheet.open(mixture(2, 1, by, 'syrup', 1, 'us-gal'));
    const asked = `2:1 by ${by}, for 1 US gallons of syrup`;
    await sheet.page.emulateMedia({ media: 'print' });
    assert.equal(await sheet.page.locator('.asked-line').innerText(), asked);
    await sheet.page.emulateMedia({ media: null });
    const shared = await sheet.page.evaluate(() => {
      let text: string | undefined;
      Object.defineProperty(navigator, 'share', { configurable: true, value: async (given: ShareData) => void (text = given.text) });
      document.querySelector<HTMLElement>('[data-action=share]')!.click();
      return text;
    });
    assert.equal(shared, `${asked}: ${await sheet.said()}`);
  }
  await sheet.open(mixture(3, 1, 'weight', 'sugar', 1, 'kg'));
  assert.match(await sheet.said(), /^So much sugar cannot all dissolve\./);
  assert.equal(await sheet.words('grains-below-most'), 'It cannot all dissolve.');
});

const typed: { name: string; text: string; says?: string; hash?: RegExp }[] = [
  { name: 'amount', text: '5 kg', hash: /amount=5&unit=kg/ },
  { name: 'amount', text: '2½ lbs', hash: /amount=2\.5&unit=lb/ },
  { name: 'amount', text: '1 1/2 US gal', hash: /amount=1\.5&unit=us-gal/ },
  { name: 'amount', text: '0,125', hash: /amount=0\.125&/ },
  { name: 'amount', text: '1 gallon', says: 'Which “gallon”: US or imperial? Choose it in the list of units.' },
  { name: 'amount', text: '', says: 'Write how much there is, such as 5.' },
  { name: 'amount', text: '0', says: 'The amount must be more than 0.' },
  { name: 'amount', text: '-3', says: 'The amount must be more than 0.' },
  { name: 'amount', text: '1,500', says: '“1,500” can be read two ways. Write 1500, or 1.5.' },
  { name: 'amount', text: '2.125', says: '“2.125” can be read two ways. Write 2125, or 2.1250.' },
  { name: 'amount', text: 'lots', says: '“lots” is not a number. Write how much there is, such as 5.' },
  { name: 'amount', text: '999999999', says: 'That is more than a million: too much to work with.' },
  { name: 'temperature', text: '68', hash: /temperature=20&/ },
  { name: 'temperature', text: '68 F', hash: /temperature=20&/ },
  { name: 'temperature', text: '20 °C', hash: /temperature=20&/ },
  { name: 'temperature', text: '70 C', says: 'The temperature must be from 32 to 140 °F.' },
  { name: 'temperature', text: '-5', says: 'The temperature must be from 32 to 140 °F.' },
  { name: 'sugar-parts', text: '0', says: 'The parts of sugar must be more than 0.' },
  { name: 'water-parts', text: '0', says: 'The parts of water must be more than 0.' },
  { name: 'sugar-parts', text: '1000', says: 'With so much sugar to so little water there is no syrup: it would be over 85 % sugar.' },
  { name: 'sugar-per-cup', text: '500', says: 'A US cup of sugar weighs more than 0 oz and at most 13.2 oz.' },
];

for (const { name, text, says, hash } of typed) {
  test(`syrup: ${name} as “${text}”`, async () => {
    await sheet.open('');
    await sheet.fill('amount', '5');
    await sheet.fill(name, text);
    await sheet.press('Calculate');
    assert.deepEqual(await sheet.faults(), says === undefined ? [] : [says]);
    if (says === undefined) assert.match(await sheet.hash(), hash!);
    else assert.deepEqual(await sheet.values(), {});
  });
}

test('syrup: an address with three decimals comes back unchanged', async () => {
  await sheet.open(mixture(2, 1, 'weight', 'sugar', 2.125, 'kg'));
  assert.equal(await sheet.page.locator('form [name="amount"]').inputValue(), '2.1250');
  assert.equal((await sheet.values())['sugar-kg'], '2.125');
  assert.match(await sheet.hash(), /amount=2\.125&/);
});

test('syrup: from the form, the address gives the same again; a wrong unit or choice is named', async () => {
  await sheet.open('');
  await sheet.fill('sugar-parts', '2');
  await sheet.choose('by', 'volume');
  await sheet.choose('know', 'water');
  await sheet.fill('amount', '3');
  await sheet.choose('unit', 'us-qt');
  await sheet.press('Calculate');
  const [hash, found] = [await sheet.hash(), await sheet.values()];
  assert.equal(hash, 'sugar-parts=2&water-parts=1&by=volume&know=water&amount=3&unit=us-qt&temperature=20&sugar-per-cup=200');
  await sheet.open(hash);
  assert.deepEqual(await sheet.values(), found);
  await sheet.open('sugar-parts=2&water-parts=1&by=eye&know=sugar&amount=1&unit=gal');
  assert.deepEqual(await sheet.faults(), ['“eye” is not one of the choices.', '“gal” is not one of the choices.']);
});
