// Mite count in a browser: published samples from address and form, odd and wrong input, several colonies.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { verdicts } from '../tables/mites.ts';
import { agrees, openCalculator, type Sheet } from './calculator-page.ts';

let browser: Browser;
let site: Site;
let sheet: Sheet;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
  sheet = await openCalculator(browser, site, 'mite-count');
  // A day in the dearth, which the form chooses by itself.
  await sheet.page.clock.setFixedTime('2026-07-20T12:00Z');
});

const count = (samples: string, rest = 'method=wash&phase=dearth') => sheet.open(`samples=${samples}&${rest}`);

const said = (name: string): Promise<string> => sheet.page.locator(`[data-text="${name}"]`).evaluate((place) => place.textContent);

/** Every verdict names the next step. */
const NEXT = {
  'at-once': /^Treat within days, /,
  act: /^Choose a treatment now /,
  unsure: /two weeks/,
  below: /^This count does not call for a treatment\./,
  none: /^Write the count down\. .* ask before you treat\.$/,
};

const garwood = 'Garwood 1936';
const single: {
  case: string;
  samples: string;
  rest?: string;
  expect: Record<string, number | string | undefined>;
  places?: number;
  from: string;
}[] = [
  {
    case: '9 in 300',
    samples: 'A:9/300',
    expect: {
      'A per-100': 3,
      'A low': 1.37,
      'A high': 5.69,
      verdict: 'act',
      'action-level': 2,
      'at-once-level': 3,
      'colonies-to-act': 'A',
      'weeks-to-level-soonest': undefined,
      'weeks-to-level-latest': undefined,
    },
    places: 2,
    from: garwood,
  },
  {
    case: '0 in 300',
    samples: 'A:0/300',
    expect: {
      'A per-100': 0,
      'A low': 0,
      'A high': 1.23,
      verdict: 'below',
      'weeks-to-level-latest': undefined,
      'bees-to-settle': undefined,
    },
    places: 2,
    from: garwood,
  },
  {
    case: '6 in 300',
    samples: 'A:6/300',
    expect: { 'A per-100': 2, 'A low': 0.73, 'A high': 4.35, verdict: 'act' },
    places: 2,
    from: garwood,
  },
  { case: '1200 on 280', samples: 'A:1200/280', expect: { 'A per-100': 428.57, verdict: 'act' }, places: 2, from: 'a ratio of two counts' },
  { case: '8 in 267', samples: 'A:8/267', expect: { 'A per-100': 2.9963, verdict: 'act' }, places: 4, from: 'the line itself' },
  { case: '19 in 1000', samples: 'A:19/1000', expect: { 'A per-100': '1.9', verdict: 'unsure' }, from: 'no crumbs of the machine' },
  {
    case: '2 in 300',
    samples: 'A:2/300',
    expect: { verdict: 'unsure', 'bees-to-settle': 439 },
    places: 0,
    from: 'our rule, every number tried',
  },
  {
    case: '5 in 300',
    samples: 'A:5/300',
    expect: { verdict: 'unsure', 'bees-to-settle': undefined },
    from: 'more than a colony should give',
  },
  {
    case: '1 in 300',
    samples: 'A:1/300',
    expect: { verdict: 'below', 'weeks-to-level-soonest': 0, 'weeks-to-level-latest': 18 },
    places: 0,
    from: 'ln(2/1.857)/0.036/7 down and ln 6/0.015/7 = 17.06 up',
  },
  {
    case: '3 in 300',
    samples: 'A:3/300',
    expect: { 'weeks-to-level-soonest': 0, 'weeks-to-level-latest': 7 },
    places: 0,
    from: 'ln 2/0.015/7 = 6.60 up',
  },
  {
    case: 'without brood',
    samples: 'A:1/300',
    rest: 'method=wash&phase=winter-rest',
    expect: { verdict: undefined, 'action-level': undefined, 'weeks-to-level-soonest': undefined, 'weeks-to-level-latest': undefined },
    from: 'no level is followed in winter rest, and no brood, no date',
  },
  {
    case: 'no phase chosen',
    samples: 'A:9/300',
    rest: 'method=wash',
    expect: { verdict: 'act', 'action-level': 1 },
    places: 0,
    from: 'the strictest level',
  },
  {
    case: '9 in 300 at 92.9 %',
    samples: 'A:9/300',
    rest: 'method=roll&phase=dearth&recovery=92.9',
    expect: { 'A per-100': 3, 'A per-100-corrected': 3.23 },
    places: 2,
    from: 'Macedo, Wu & Ellis 2002',
  },
  {
    case: 'only the corrected rate reaches it',
    samples: 'A:1870/100000',
    rest: 'method=roll&phase=dearth&recovery=92.9',
    expect: { verdict: 'unsure', 'bees-to-settle': undefined },
    from: 'a correction never makes it act',
  },
];

for (const row of single) {
  test(`mite count: ${row.case} (${row.from})`, async () => {
    await count(row.samples, row.rest);
    const found = await sheet.values();
    for (const [name, value] of Object.entries(row.expect)) {
      if (typeof value === 'number') agrees(found, name, value, row.places ?? 0);
      else assert.equal(found[name], value, name);
    }
    if (row.rest === undefined || !row.rest.includes('recovery')) assert.equal(found['A per-100-corrected'], undefined);
  });
}

test('mite count: figure and verdict never disagree in print', async () => {
  await count('A:8/267');
  assert.equal(await sheet.said(), '2.996 mites per hundred bees: act.');
  await count('A:9/300');
  assert.equal(await sheet.said(), '3.0 mites per hundred bees: act at once.');
  await count('A:1996/100000');
  assert.equal(await sheet.said(), '1.996 mites per hundred bees: unsure.');
});

for (const { case: name, given, expect, from } of verdicts) {
  test(`mite count: ${name}, verdict by the part of the year (${from})`, async () => {
    await count(`A:${given.mites}/${given.bees}`, `method=wash&phase=${given.phase}`);
    const found = await sheet.values();
    assert.equal(found.verdict, expect.verdict);
    const words = { below: 'Below', unsure: 'Unsure', act: expect.atOnce ? 'Act at once' : 'Act' };
    assert.equal(await sheet.words('verdict'), expect.verdict ? words[expect.verdict] : 'No verdict');
    const [next, soonest, settle] = [await said('next'), await sheet.words('weeks-to-level-soonest'), await sheet.words('bees-to-settle')];
    assert.match(next, NEXT[expect.atOnce ? 'at-once' : (expect.verdict ?? 'none')]);
    if (expect.verdict === 'below') assert.doesNotMatch(soonest, /there now/);
    if (expect.verdict === 'unsure') assert.equal(soonest, 'It may be there now.');
    assert.equal(found['bees-to-settle'], typeof expect.bees === 'number' ? String(expect.bees) : undefined);
    if (expect.bees === 'too-many') {
      assert.equal(settle, 'It would take over 600 bees: more than a colony should give.');
      assert.match(next, /^Treat it as “act”, or count again in two weeks: /);
    }
  });
}

test('mite count: just below the level the answer is "within a week at the soonest", never "now"', async () => {
  await count('A:1/300');
  assert.equal(await sheet.words('verdict'), 'Below');
  assert.equal(await sheet.words('weeks-to-level-soonest'), 'Within a week at the soonest.');
  assert.equal(await sheet.words('weeks-to-level-latest'), 'In 18 weeks at the latest.');
});

test('mite count: eight colonies of an open yard (Aurell and others 2025)', async () => {
  await count('1:4/296;2:1/288;3:4/301;4:0/324;5:0/335;6:0/318;7:13/342;8:3/328');
  const found = await sheet.values();
  agrees(found, 'apiary-per-100', 0.9874, 4);
  agrees(found, 'apiary-low', 0.313, 3);
  agrees(found, 'apiary-high', 3.118, 3);
  assert.equal(found.verdict, 'act');
  assert.equal(found['colonies-to-act'], '7');
  agrees(found, '7 per-100', 3.8012, 4);
  assert.equal(await sheet.said(), 'Act at once: colony 7 is at or over 3 mites per hundred bees.');
  // Each row has the mark of its verdict, and its word at the end.
  assert.equal(await sheet.page.locator('[data-part="result"] .chart > svg').count(), 9);
  assert.ok((await sheet.page.locator('[data-part="result"] .chart .act-words').allTextContents()).includes('At once'));
});

test('mite count: an average hides no colony, and below four colonies there is no range', async () => {
  await count('A:0/300;B:0/300;Oak%20tree:9/300');
  const found = await sheet.values();
  assert.equal(found.verdict, 'act');
  assert.equal(found['colonies-to-act'], 'Oak tree');
  assert.equal(found['apiary-per-100'], '1');
  assert.equal(found['apiary-low'], undefined);
  assert.equal(await sheet.words('apiary-low'), 'none under four colonies');
  assert.match(
    (await sheet.page.locator('[data-text="apiary-remarks"]').textContent())!,
    /^A range for all together needs four colonies or more. 3 colonies show an apiary poorly: 8 or more are better\.$/,
  );
});

test('mite count: the method and the author of the level', async () => {
  await count('A:9/300', 'method=gas&phase=dearth');
  assert.match(
    (await sheet.page.locator('[data-text="level-from"]').textContent())!,
    /^University of Montreal, faculty of veterinary medicine 2021; Quebec\. Printed for fall.* It does not say that it was set with this method\.$/,
  );
  await count('A:9/300', 'method=wash');
  assert.match(
    (await sheet.page.locator('[data-text="level-from"]').textContent())!,
    /No part of the year was chosen, so this is the strictest of the levels\. It does not say that it was set with this method\.$/,
  );
});

const wrong: { mites: string; bees: string; says: string }[] = [
  { mites: '', bees: '300', says: 'Write how many mites were counted.' },
  { mites: '9', bees: '', says: 'Write how many bees were in the sample.' },
  { mites: '9', bees: '0', says: 'A sample of 0 bees has no rate. Write how many bees were in it.' },
  { mites: '-3', bees: '300', says: '“-3” is under 0. Write how many mites were counted.' },
  { mites: '−3', bees: '300', says: '“−3” is under 0. Write how many mites were counted.' },
  { mites: '1,500', bees: '300', says: '“1,500” can be read two ways. Write 1500, or 1.5.' },
  { mites: '1,5', bees: '300', says: '“1,5” is not a whole number. Write how many mites were counted.' },
  { mites: 'nine', bees: '300', says: '“nine” is not a number. Write how many mites were counted.' },
  { mites: '9', bees: '300 bees', says: '“bees” cannot be read here. Write how many bees were in the sample, as a number alone.' },
  { mites: '99999999', bees: '300', says: 'More than 100,000 mites or 1,000,000 bees is not one sample.' },
  { mites: '9', bees: '1e3', says: '“1e3” is not a number. Write how many bees were in the sample.' },
  { mites: '3 4', bees: '300', says: '“3 4” is more than one number. Write one.' },
  { mites: '12345678901234567890', bees: '300', says: '“12345678901234567890” has too many digits.' },
];

test('mite count: wrong numbers give their sentence twice, and no result', async () => {
  await sheet.open('');
  for (const { mites, bees, says } of wrong) {
    await sheet.fill('mites', mites);
    await sheet.fill('bees', bees);
    await sheet.press('Calculate');
    assert.deepEqual(await sheet.faults(), [says], `${mites} in ${bees}`);
    assert.deepEqual(await sheet.page.locator('[data-part="summary"] a').allInnerTexts(), [says]);
    assert.equal(await sheet.page.evaluate(() => document.activeElement?.getAttribute('data-part')), 'summary');
    assert.deepEqual(await sheet.values(), {});
    assert.ok(await sheet.page.locator('[data-part="result"]').isHidden());
    assert.equal(await sheet.said(), 'No result yet. There is 1 problem.');
    assert.equal(await sheet.page.locator('form [aria-invalid="true"]').count(), 1);
  }
  await sheet.page.locator('[data-part="summary"] a').click();
  assert.equal(await sheet.page.evaluate(() => (document.activeElement as HTMLInputElement).name), 'mites');
});

test('mite count: unusual spellings of numbers are parsed', async () => {
  await sheet.open('');
  for (const [mites, bees] of [
    [' 9 ', '300'],
    ['9.0', '300,0'],
    ['9', '3\u202f000'],
    ['18/2', '300'],
  ] as const) {
    await sheet.fill('mites', mites);
    await sheet.fill('bees', bees);
    await sheet.press('Calculate');
    assert.deepEqual(await sheet.faults(), [], `${mites} in ${bees}`);
    assert.equal((await sheet.values())['1 per-100'], bees.startsWith('3\u202f') ? '0.3' : '3');
  }
});

test('mite count: scrolling over a field changes nothing', async () => {
  await sheet.open('');
  await sheet.fill('mites', '9');
  await sheet.page.locator('form [name="mites"]').hover();
  await sheet.page.mouse.wheel(0, 300);
  assert.equal(await sheet.page.locator('form [name="mites"]').inputValue(), '9');
});

test('mite count: after the first result, no old answer remains under new numbers', async () => {
  await sheet.open('');
  await sheet.fill('mites', '9');
  assert.equal(await sheet.said(), '');
  await sheet.press('Calculate');
  await sheet.fill('mites', '3');
  assert.equal((await sheet.values())['1 per-100'], '1');
  await sheet.fill('mites', '');
  assert.deepEqual(await sheet.values(), {});
  assert.equal(await sheet.hash(), 'samples=:/300&method=wash&phase=dearth&recovery=100');
  await sheet.press('Clear');
  assert.equal(await sheet.hash(), '');
  assert.equal(await sheet.said(), '');
});

test('mite count: rows are added and removed, and a list is pasted', async () => {
  await sheet.open('');
  await sheet.fill('mites', '9');
  await sheet.press('Add a colony');
  await sheet.page.locator('form [name="label"]').nth(1).and(sheet.page.locator(':focus')).waitFor();
  await sheet.fill('mites', '4', 1);
  await sheet.press('Calculate');
  assert.equal((await sheet.values())['2 per-100'], '1.333333333');
  await sheet.press('Remove colony 1');
  assert.equal(await sheet.hash(), 'samples=:4/300&method=wash&phase=dearth&recovery=100');
  await sheet.open('');
  await sheet.page.getByText('Paste a list').click();
  await sheet.fill('samples-list', 'Hive\tMites\tBees\nA\t9\t300\nB\t4\t310\n\nC\t0');
  await sheet.press('Calculate');
  assert.equal(await sheet.hash(), 'samples=A:9/300;B:4/310;C:0/300&method=wash&phase=dearth&recovery=100');
  await sheet.open('');
  await sheet.page.getByText('Paste a list').click();
  // The paste takes the place of a row that is empty or wrong, and stays after one that is right.
  await sheet.fill('mites', '9');
  await sheet.press('Add a colony');
  await sheet.fill('mites', 'x', 1);
  await sheet.fill('samples-list', 'A, 12, 300\nB 4 310\nC\t0,300\n5 300');
  await sheet.press('Calculate');
  assert.equal(await sheet.hash(), 'samples=:9/300;A:12/300;B:4/310;C:0/300;:5/300&method=wash&phase=dearth&recovery=100');
  await sheet.fill('samples-list', 'D 7 300\n\nE seven 300');
  await sheet.press('Calculate');
  assert.deepEqual(await sheet.faults(), [
    'Line 3: found “E seven 300”. Write a line like “A 12 300”, and separate the columns with a tab, comma or space.',
  ]);
  assert.equal(await sheet.page.locator('[name="samples-list"]').inputValue(), 'D 7 300\n\nE seven 300');
  await sheet.open(`samples=${Array.from({ length: 30 }, (_, at) => `${at}:1/300`).join(';')}`);
  assert.deepEqual(await sheet.faults(), ['The form takes 24 rows at most, and these are 30.']);
});

test('mite count: an address with errors fills the fields as they are, and reports the errors', async () => {
  const cases: [values: string, fault: string, box: string, holds: string][] = [
    ['samples=A:1,5/300', '“1,5” is not a whole number. Write how many mites were counted.', 'mites', '1,5'],
    ['samples=A:9/300%20', 'In an address this is written 300. Press “Calculate” to use it.', 'bees', '300 '],
    ['samples=A:9/300&recovery=92,9', 'In an address this is written 92.9. Press “Calculate” to use it.', 'recovery', '92,9'],
    ['samples=A:9/300&recovery=101', 'The share of mites found lies over 0 and up to 100.', 'recovery', '101'],
    ['samples=A:9/300&method=shake', '“shake” is not one of the choices.', 'recovery', '100'],
    ['samples=A:9/300;B:x/300', 'Colony 2: “x” is not a number. Write how many mites were counted.', 'recovery', '100'],
    ['samples=9', '“9” in the address is not label:mites/bees.', 'samples-list', '9'],
  ];
  for (const [values, fault, box, holds] of cases) {
    await sheet.open(`${values}&phase=dearth`);
    assert.deepEqual(await sheet.faults(), [fault], values);
    assert.deepEqual(await sheet.page.locator('[data-part="summary"] a').allInnerTexts(), [fault]);
    assert.equal(await sheet.page.locator(`form [name="${box}"]`).first().inputValue(), holds, values);
    assert.deepEqual(await sheet.values(), {});
  }
  await sheet.open('samples=A:9/300&recovery=92,9');
  await sheet.press('Calculate');
  agrees(await sheet.values(), 'A per-100-corrected', 3.23, 2);
});

test('mite count: unknown names in the address are ignored in one line', async () => {
  await sheet.open('samples=A:9/300&foo=1&bar=2&foo=3');
  assert.equal(
    await sheet.page.locator('[data-part="passed-over"]').innerText(),
    'The link names something that this form does not have: foo, bar.',
  );
  assert.equal((await sheet.values()).verdict, 'act');
});

test('mite count: an address that a form wrote gives the same result again, and a note beside it does no harm', async () => {
  await sheet.open('');
  await sheet.fill('label', 'Oak: by/the;gate 50%');
  await sheet.fill('mites', '9');
  await sheet.choose('method', 'roll');
  await sheet.choose('phase', 'dearth');
  await sheet.fill('recovery', '92,9 %');
  await sheet.press('Calculate');
  const [hash, found] = [await sheet.hash(), await sheet.values()];
  assert.match(hash, /&method=roll&phase=dearth&recovery=92\.9$/);
  assert.equal(found['Oak: by/the;gate 50% per-100'], '3');
  await sheet.open(hash);
  assert.deepEqual(await sheet.values(), found);
  assert.equal(await sheet.hash(), hash);
  await sheet.page
    .locator('[data-part="result"] .mark a')
    .first()
    .evaluate((mark: HTMLAnchorElement) => (location.hash = mark.hash));
  assert.match(await sheet.hash(), /^note-/);
  assert.deepEqual(await sheet.values(), found);
});

test('mite count: Back finds numbers and result together', async () => {
  await sheet.open('');
  await sheet.fill('mites', '6');
  await sheet.press('Calculate');
  await sheet.page.goto(`${site.address}about/`);
  await sheet.page.goBack();
  await sheet.page.waitForFunction(() => document.querySelector('output[name="per-100"]') !== null);
  assert.equal(await sheet.page.locator('form [name="mites"]').inputValue(), '6');
  assert.equal((await sheet.values())['1 per-100'], '2');
});

/** Presses buttons of a fresh form before its script has arrived. */
async function pressedEarly(mites: string, ...names: string[]): Promise<Awaited<ReturnType<typeof openCalculator>>> {
  const own = await openCalculator(browser, site, 'mite-count');
  let arrive = (): void => undefined;
  const held = new Promise<void>((resolve) => (arrive = resolve));
  await own.page.route('**/assets/form.*.js', async (route) => {
    await held;
    await route.continue();
  });
  await own.page.clock.setFixedTime('2026-07-20T12:00Z');
  const asked = own.page.waitForRequest('**/assets/form.*.js');
  await own.open('');
  await own.page.locator('form [name="mites"]').fill(mites);
  for (const name of names) await own.page.getByRole('button', { name, exact: true }).click();
  await asked;
  arrive();
  return own;
}

test('mite count: presses before the script arrives are repeated', async () => {
  const counted = await pressedEarly('9', 'Calculate');
  await counted.page.waitForSelector('output[data-value="act"]');
  await counted.close();
  const added = await pressedEarly('9', 'Add a colony', 'Add a colony');
  await added.page.locator('form [name="mites"]').nth(2).waitFor();
  assert.equal(await added.page.locator('form [name="mites"]').count(), 3);
  await added.close();
});

test('mite count: by keyboard alone, announced once, in words', async () => {
  await sheet.open('');
  await sheet.page.locator('form [name="mites"]').focus();
  await sheet.page.keyboard.type('9');
  await sheet.page.keyboard.press('Enter');
  await sheet.page.waitForSelector('output[data-value="act"]');
  assert.equal(await sheet.page.locator('main [role="status"]').count(), 1);
  assert.equal(await sheet.page.locator('output:not([aria-live="off"])').count(), 0);
  assert.equal(await sheet.words('verdict'), 'Act at once');
});

test('mite count: a club without figures still gets the arithmetic', async () => {
  const other = await fixtureSite('southern');
  const own = await openCalculator(browser, other, 'mite-count', 'samples=A:9/300;B:4/310;C:1/300;D:2/300&method=wash&phase=dearth');
  const found = await own.values();
  assert.equal(found['A per-100'], '3');
  assert.equal(found.verdict, undefined);
  assert.equal(await own.words('action-level'), 'No level here.');
  assert.equal(await own.words('weeks-to-level-soonest'), 'No figure for this club.');
  assert.ok(found['apiary-high']);
  await own.close();
  await other.close();
});
