// Treatment window in a browser: published limits, open questions, wrong input, and words that never occur.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { judgeAll, type ShownRow } from '../../src/calculators/treatment-window/model.ts';
import { judgementWords } from '../../src/calculators/treatment-window/judgement-words.ts';
import { headline } from '../../src/calculators/treatment-window/text.en.ts';
import type { Planned } from '../../shared/treatments/label-row.ts';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { openCalculator, type Sheet } from './calculator-page.ts';
import { labels } from '../tables/treatments.ts';
import { aDay } from '../days.ts';

let browser: Browser;
let site: Site;
let sheet: Sheet;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
  sheet = await openOn('2026-12-01');
});

/** Opened on a day of the club's own clock. */
async function openOn(day: string): Promise<Sheet> {
  const own = await openCalculator(browser, site, 'treatment-window');
  await own.page.clock.setFixedTime(`${day}T16:00:00Z`);
  return own;
}

const plan = (other: Record<string, string | number> = {}): string =>
  Object.entries({
    start: '2026-12-10',
    'lowest-high': 18,
    high: 28,
    supers: 'off',
    brood: 'yes',
    place: 'United States',
    registered: 'yes',
    ...other,
  })
    .filter(([, value]) => value !== '')
    .map(([name, value]) => `${name}=${encodeURIComponent(value)}`)
    .join('&');
const states = (found: Record<string, string>): string[] =>
  Object.entries(found)
    .filter(([name]) => name.endsWith(' state'))
    .map(([, value]) => value);

const leaflet = 'British leaflet of formic strips, Vm 40476/4000: daytime highs of 10 to 29.5 C';
const amitraz = 'US registration of amitraz strips, 11 March 2013: 56 days at most, boxes back 14 after';
const cases: { case: string; values: string; expect: Record<string, [state: string, rule: string]>; from: string }[] = [
  {
    case: 'highs of 18 to 28 C in the United States',
    values: plan(),
    expect: {
      'formic-acid/strips': ['ask', 'not-opened'],
      'oxalic-acid/trickled': ['ask', 'not-opened'],
      'thymol/us': ['ask', 'not-opened'],
      'amitraz/strips': ['ask', 'only-quoted'],
    },
    from: 'no US label of the first three could be opened',
  },
  {
    case: '91 F in the United States: never a word of leave',
    values: plan({ high: 32.78 }),
    expect: { 'formic-acid/strips': ['ask', 'not-opened'], 'thymol/us': ['ask', 'not-opened'] },
    from: 'no US label of these could be opened',
  },
  {
    case: 'highs of 64 to 75 F, nights of 46 F, in the United Kingdom',
    values: plan({ 'lowest-high': 17.78, high: 23.89, low: 7.78, place: 'United Kingdom' }),
    expect: { 'formic-acid/strips-united-kingdom': ['ask', 'no-label-date'], amitraz: ['ask', 'other-place'] },
    from: leaflet,
  },
  {
    case: '91 F in the United Kingdom',
    values: plan({ high: 32.78, place: 'United Kingdom' }),
    expect: { 'formic-acid/strips-united-kingdom': ['ruled-out', 'too-warm'] },
    from: leaflet,
  },
  {
    case: 'a coolest day of 49 F in the United Kingdom',
    values: plan({ 'lowest-high': 9.44, place: 'United Kingdom' }),
    expect: { 'formic-acid/strips-united-kingdom': ['ruled-out', 'too-cold'] },
    from: leaflet,
  },
  {
    case: 'thymol wafers in Belgium, the mean not told',
    values: plan({ place: 'Belgium' }),
    expect: { 'thymol/wafers': ['ask', 'mean-not-told'] },
    from: 'summary of the label of thymol wafers: works less where the average falls under 15 C',
  },
  {
    case: 'boxes on',
    values: plan({ supers: 'on' }),
    expect: { 'formic-acid/strips': ['ask', 'not-opened'], 'amitraz/strips': ['ruled-out', 'supers-on'] },
    from: amitraz,
  },
  {
    case: 'harvest on day 69',
    values: plan({ 'harvest-date': '2027-02-17' }),
    expect: { 'amitraz/strips': ['ruled-out', 'harvest-too-soon'], 'coumaphos/strips': ['ask', 'not-opened'] },
    from: amitraz,
  },
  {
    case: 'harvest on day 70',
    values: plan({ 'harvest-date': '2027-02-18' }),
    expect: { 'amitraz/strips': ['ask', 'only-quoted'] },
    from: amitraz,
  },
];

for (const { case: name, values, expect, from } of cases) {
  test(`label rows: ${name} (${from})`, async () => {
    await sheet.open(values);
    const found = await sheet.values();
    for (const [id, [state, rule]] of Object.entries(expect))
      assert.deepEqual([found[`${id} state`], found[`${id} rule`]], [state, rule], id);
  });
}

test('label rows: anything but yes for registered, no place, or a place without rows: ask, every row', async () => {
  const others: Record<string, string>[] = [
    { registered: 'no' },
    { registered: 'not-checked' },
    { registered: '' },
    { place: '' },
    { place: 'Atlantis' },
  ];
  for (const other of others) {
    await sheet.open(plan(other));
    const found = states(await sheet.values());
    assert.ok(found.length >= 8);
    assert.deepEqual([...new Set(found)], ['ask'], JSON.stringify(other));
    assert.match(await sheet.said(), /^Ask first, about all \d+ rows\.$/);
  }
});

test('label rows: read past its check-by, or planned for after it, a row says ask and no more', async () => {
  const late = await openOn('2027-03-02');
  await late.open(plan({ start: '2027-08-10', supers: 'on' }));
  assert.deepEqual([...new Set(states(await late.values()))], ['ask']);
  await late.close();
  const lastDay = await openOn('2027-03-01');
  await lastDay.open(plan({ start: '2027-03-01', supers: 'on' }));
  assert.ok(states(await lastDay.values()).includes('ruled-out'));
  await lastDay.open(plan({ start: '2027-03-02', supers: 'on' }));
  assert.deepEqual([...new Set(states(await lastDay.values()))], ['ask']);
  await lastDay.close();
});

test('label rows: 91 F for a keeper in the United States names the label of another place, and says what to do next', async () => {
  await sheet.open(plan({ high: 32.78 }));
  const row = sheet.page.locator('[data-row="formic-acid/strips"]');
  assert.equal(await row.locator('output[name="state"]').innerText(), 'Ask');
  assert.match(await row.innerText(), /Not yet\. Read your label, then ask\./);
  assert.equal(
    await row.locator('output[name="rule"]').innerText(),
    'Ask: no label of this form could be opened. Wait: the label of another place, United Kingdom, strips on the top bars, would rule these days out. Too warm: its label asks for daily highs of at most 85 °F (29.5 °C) on the day it goes in. Your warmest day reaches 91 °F.',
  );
  assert.match(await sheet.page.locator('[data-text="next"]').innerText(), /^Ask: something is not known here\./);
  assert.ok(await sheet.page.locator('.next .call:visible').isVisible());
});

test('label rows: an old address carries the warmest day and the coldest hour over, and asks for the rest', async () => {
  await sheet.open('start=2026-08-10&low=8&high=24&supers=off&brood=yes&registered=not-checked');
  assert.deepEqual(await sheet.faults(), ['Write the daytime high of the coolest day, such as 64.']);
  assert.equal(await sheet.page.locator('[name="low"]').inputValue(), '46.4');
  assert.equal(await sheet.page.locator('[name="high"]').inputValue(), '75.2');
  assert.equal(await sheet.page.locator('[name="lowest-high"]').inputValue(), '');
  await sheet.fill('lowest-high', '64');
  await sheet.press('Calculate');
  assert.match(await sheet.hash(), /^start=2026-08-10&lowest-high=17\.7{5,}8&high=24&low=8&/);
});

test('label rows: never advice, a brand, a dose or leave, whatever is written; what was not opened is marked', async () => {
  for (const values of [
    plan(),
    plan({ supers: 'on', high: 40, 'lowest-high': -5 }),
    plan({ registered: 'no' }),
    plan({ place: '' }),
    plan({ place: 'United Kingdom' }),
    plan({ brood: 'no', 'harvest-date': '2027-01-01' }),
  ]) {
    await sheet.open(values);
    const said = await sheet.page.locator('.result').innerText();
    assert.doesNotMatch(said, /\b(fits?|uses?|used|recommend\w*|safe\w*|suitable|choose|dose|danger|warning|caution)\b/i);
    assert.doesNotMatch(said, /not ruled out|[®™]/i);
  }
  await sheet.open(plan());
  assert.match((await sheet.page.locator('[data-row="oxalic-acid/vapor"] th').textContent())!, /Its label could not be opened\./);
  assert.match(
    (await sheet.page.locator('[data-row="amitraz/strips"] th').textContent())!,
    /Registration 87243-1, label of March\s11,\s2013, as others repeat it\./,
  );
  const own = await sheet.page.locator('main').evaluate((main) =>
    [...main.querySelectorAll('h1, h2, h3, legend, label, li, p, td, th')]
      .filter((each) => !each.closest('.box, .sidebar'))
      .map((each) => each.textContent ?? '')
      .filter((words) => /\b(recommended|safe|fits)\b|not ruled out/i.test(words)),
  );
  assert.deepEqual(own, []);
});

test('label rows: acids and fumes have their line on the page, out of sight while nothing may be put in', async () => {
  await sheet.open(plan());
  const lines = sheet.page.locator('[data-hazard]');
  const hazards = await lines.evaluateAll((all) => all.map((line) => (line as HTMLElement).dataset.hazard));
  assert.deepEqual(hazards.sort(), ['acids', 'fumes']);
  for (const line of await lines.all()) assert.ok(await line.isHidden());
});

const far = 'Weather lies from −60 to 60 °C (−76 to 140 °F).';
const typed: { fill: Record<string, string>; says?: string[]; hash?: RegExp }[] = [
  {
    fill: {},
    says: [
      'Write the first day of the treatment, such as April 18.',
      'Write the daytime high of the coolest day, such as 64.',
      'Write the daytime high of the warmest day, such as 82.',
    ],
  },
  {
    // A bare number is in the club's own scale, and the address keeps C.
    fill: { start: '10 August 2026', 'lowest-high': '50', high: '82.4 °F' },
    hash: /^start=2026-08-10&lowest-high=10&high=28&supers=on&brood=yes&registered=not-checked$/,
  },
  {
    fill: { start: '10 August 2026', 'lowest-high': '−5 C', high: '10,5 c', place: ' United  States ' },
    hash: /lowest-high=-5&high=10\.5&supers=on&brood=yes&place=United%20%20States&/,
  },
  {
    fill: { start: '10 August 2026', 'lowest-high': '64', high: '75', mean: '60', low: '46' },
    hash: /lowest-high=17\.7{5,}8&high=23\.8{5,}9&mean=15\.5{5,}6&low=7\.7{5,}8&/,
  },
  { fill: { start: '8/10/26', 'lowest-high': '10 C', high: '20 C' }, hash: /^start=2026-08-10&/ },
  { fill: { start: '10 August 2026', 'lowest-high': '80', high: '70' }, says: ['The warmest day cannot be cooler than the coolest.'] },
  {
    fill: { start: '10 August 2026', 'lowest-high': '60', high: '70', mean: '75' },
    says: ['The mean cannot be above the highest daytime high.'],
  },
  {
    fill: { start: '10 August 2026', 'lowest-high': '60', high: '70', low: '65' },
    says: ['The coldest hour cannot be warmer than the lowest daytime high.'],
  },
  { fill: { start: '10 August 2026', 'lowest-high': '60', high: '190' }, says: [far] },
  { fill: { start: '10 August 2026', 'lowest-high': '10 C', high: '90 C' }, says: [far] },
  {
    fill: { start: '10 August 2026', 'lowest-high': '60', high: 'hot' },
    says: ['“hot” is not a number. Write the daytime high of the warmest day, such as 82.'],
  },
  {
    fill: { start: '10 August 2026', 'lowest-high': '60', high: '70', 'harvest-date': '31 September 2026' },
    says: ['“31 September 2026” is not in the calendar.'],
  },
];

for (const { fill, says, hash } of typed) {
  test(`label rows: ${JSON.stringify(fill)}`, async () => {
    await sheet.open('');
    for (const [name, text] of Object.entries(fill)) await sheet.fill(name, text);
    await sheet.press('Calculate');
    assert.deepEqual(await sheet.faults(), says ?? []);
    if (says) assert.deepEqual(await sheet.values(), {});
    else assert.match(await sheet.hash(), hash!);
  });
}

test('label rows: a value typed in F is in the field again when its address is opened', async () => {
  await sheet.open('');
  for (const [name, text] of Object.entries({ start: '12 September 2026', 'lowest-high': '64', high: '75' })) await sheet.fill(name, text);
  await sheet.press('Calculate');
  const address = await sheet.hash();
  await sheet.open(address);
  assert.deepEqual(
    [await sheet.page.locator('[name="lowest-high"]').inputValue(), await sheet.page.locator('[name="high"]').inputValue()],
    ['64', '75'],
  );
  assert.equal(await sheet.hash(), address);
  assert.match((await sheet.page.locator('[data-part="question"]').textContent())!, /highs 64 to 75 °F/);
});

test('label rows: the switch shows fields and answer in the other scale, and leaves the address', async () => {
  const values = 'start=2026-08-10&lowest-high=18&high=28&supers=off&brood=yes&registered=not-checked';
  await sheet.open(values);
  await sheet.press('°C');
  assert.equal(await sheet.page.locator('[name="high"]').inputValue(), '28');
  assert.match((await sheet.page.locator('[data-part="question"]').textContent())!, /highs 18 to 28 °C/);
  assert.equal(await sheet.hash(), values);
  await sheet.press('°F');
  assert.equal(await sheet.page.locator('[name="high"]').inputValue(), '82.4');
});

test('label rows: boxes on, brood and not checked are what stands there first', async () => {
  await sheet.open('start=2026-08-10&lowest-high=18&high=28');
  assert.equal(await sheet.hash(), 'start=2026-08-10&lowest-high=18&high=28&supers=on&brood=yes&registered=not-checked');
});

test('label rows: a club of another land, with one row of a dated label, in its own scale', async () => {
  const southern = await fixtureSite('southern');
  const values = (brood: string) => `start=2026-12-10&lowest-high=18&high=28&brood=${brood}&supers=off&place=New%20Zealand&registered=yes`;
  const other = await openCalculator(browser, southern, 'treatment-window', values('yes'));
  assert.deepEqual(await other.values(), {
    'oxalic-acid/trickled state': 'works-poorly',
    'oxalic-acid/trickled rule': 'poor-with-brood',
  });
  assert.equal(await other.page.locator('[name="high"]').inputValue(), '28');
  await other.page.locator('.asked > summary').click();
  assert.match(await other.page.locator('label[for="box-high"]').innerText(), /°C/);
  await other.open(values('no'));
  assert.equal(await other.words('state'), 'Nothing found against it');
  assert.match(await other.page.locator('.result').innerText(), /This page found nothing against it\. Read your label\./);
  assert.match(await other.page.locator('[data-hazard="acids"]').innerText(), /^Take care: Acid burns/);
  await other.close();
  await southern.close();
});

const planned: Planned = {
  start: aDay('2026-08-10'),
  lowestHighC: 18,
  highestHighC: 28,
  supersOn: false,
  brood: true,
  place: 'united states',
  registered: 'yes',
};

test('label rows: a club without rows says so', () =>
  assert.equal(headline(judgeAll(planned, [], planned.start)), 'The club holds no label rows: ask.'));

test('label rows: one ingredient with rows of two places', () => {
  const rowOf = (id: string, place: string): ShownRow => ({
    ...labels.formicStrips,
    place,
    entry: 'formic-acid',
    id: `formic-acid/${id}`,
    title: 'Formic acid',
    form: 'strips',
    note: 1,
  });
  const judged = judgeAll(planned, [rowOf('here', 'United States'), rowOf('there', 'New Zealand')], planned.start);
  assert.deepEqual(
    judged.map(({ id, judgement: { state } }) => [id, state]),
    [['formic-acid/here', 'nothing-found']],
  );
  assert.equal(judgementWords(judged[0]!, planned, 'us', 'en-US'), 'This page found nothing against it. Read your label.');
});
