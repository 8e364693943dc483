// What the label rows rule out, in a browser: published limits, what must be asked, wrong input, and what is never said.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import type { Browser } from 'playwright-core';
import { judgeAll, type ShownRow } from '../../src/islands/treatment-window/judge.ts';
import { headline, judgementWords } from '../../src/islands/treatment-window/words.ts';
import type { Day } from '../../shared/days/day.ts';
import type { Planned } from '../../shared/treatments/label-row.ts';
import { demoSite, fixtureSite, openBrowser, type Site } from './built-site.ts';
import { openCalculator, type Sheet } from './calculator-page.ts';
import { labels } from '../tables/treatments.ts';

let browser: Browser;
let site: Site;
let sheet: Sheet;
before(async () => {
  site = await demoSite();
  browser = await openBrowser();
  sheet = await openOn('2026-08-01');
});
after(async () => {
  await browser?.close();
  await site?.close();
});

/** Read on a day of the club's own clock. */
async function openOn(day: string): Promise<Sheet> {
  const own = await openCalculator(browser, site, 'treatment-window');
  await own.page.clock.setFixedTime(`${day}T16:00:00Z`);
  return own;
}

const plan = (other: Record<string, string | number> = {}): string =>
  Object.entries({
    start: '2026-08-10',
    low: 18,
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

const strips = 'US label of formic acid strips, 50 to 85 F';
const cases: { case: string; values: string; expect: Record<string, [state: string, rule: string]>; from: string }[] = [
  {
    case: '18 to 28 C',
    values: plan(),
    expect: {
      'formic-acid/strips': ['not-ruled-out', 'none'],
      'formic-acid/older-pad': ['ruled-out', 'too-warm'],
      'oxalic-acid/trickled': ['ruled-out', 'brood'],
      'amitraz/strips': ['not-ruled-out', 'none'],
    },
    from: strips,
  },
  {
    case: '85 F, the line itself',
    values: plan({ high: 29.44 }),
    expect: { 'formic-acid/strips': ['not-ruled-out', 'none'] },
    from: strips,
  },
  {
    case: '90 F',
    values: plan({ high: 32.2 }),
    expect: { 'formic-acid/strips': ['ruled-out', 'too-warm'], 'formic-acid/older-gel': ['not-ruled-out', 'none'] },
    from: strips,
  },
  {
    case: '49 F',
    values: plan({ low: 9.4 }),
    expect: { 'formic-acid/strips': ['ruled-out', 'too-cold'], 'formic-acid/older-gel': ['not-ruled-out', 'none'] },
    from: strips,
  },
  {
    case: 'boxes on',
    values: plan({ supers: 'on' }),
    expect: { 'formic-acid/strips': ['ask', 'supers-by-label'], 'amitraz/strips': ['ruled-out', 'supers-on'] },
    from: 'US label of amitraz strips 2012',
  },
  {
    case: 'without brood',
    values: plan({ brood: 'no' }),
    expect: { 'oxalic-acid/trickled': ['not-ruled-out', 'none'], 'oxalic-acid/vapor': ['not-ruled-out', 'none'] },
    from: 'from memory',
  },
  {
    case: 'harvest on day 69',
    values: plan({ 'harvest-date': '2026-10-18' }),
    expect: { 'amitraz/strips': ['ruled-out', 'harvest-too-soon'], 'coumaphos/strips': ['ask', 'harvest-by-label'] },
    from: 'US label of amitraz strips 2012: 56 days, boxes back 14 after',
  },
  {
    case: 'harvest on day 70',
    values: plan({ 'harvest-date': '2026-10-19' }),
    expect: { 'amitraz/strips': ['not-ruled-out', 'none'] },
    from: 'US label of amitraz strips 2012: 56 days, boxes back 14 after',
  },
  {
    case: 'New Zealand',
    values: plan({ place: 'new zealand' }),
    expect: { 'flumethrin/new-zealand': ['not-ruled-out', 'none'], 'formic-acid': ['ask', 'other-place'], amitraz: ['ask', 'other-place'] },
    from: 'the written rules',
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

test('label rows: read past its check-by, a row says ask and no more', async () => {
  const late = await openOn('2027-03-02');
  await late.open(plan({ start: '2027-08-10' }));
  assert.deepEqual([...new Set(states(await late.values()))], ['ask']);
  await late.close();
  const lastDay = await openOn('2027-03-01');
  await lastDay.open(plan({ start: '2027-03-01' }));
  assert.ok(states(await lastDay.values()).includes('not-ruled-out'));
  // Read before it, but planned for after it.
  await lastDay.open(plan({ start: '2027-03-02' }));
  assert.deepEqual([...new Set(states(await lastDay.values()))], ['ask']);
  await lastDay.close();
});

test('label rows: the address that pages link with: ask, and what is ruled out besides', async () => {
  await sheet.open('start=2026-08-10&low=18&high=34&supers=off&brood=yes&registered=not-checked');
  const row = sheet.page.locator('[data-row="formic-acid/strips"]');
  assert.equal(await row.locator('output[name="state"]').innerText(), 'Ask');
  assert.equal(
    await row.locator('output[name="rule"]').innerText(),
    'Ask whether it is registered for bee colonies where you are. Ask: no place was written, so no row is yours yet. Too warm: the row ends at 85 °F (29.4 °C).',
  );
});

test('label rows: never advice, a brand or a dose, whatever is written; memory is marked', async () => {
  for (const values of [
    plan(),
    plan({ supers: 'on', high: 40, low: -5 }),
    plan({ registered: 'no' }),
    plan({ place: '' }),
    plan({ brood: 'no', 'harvest-date': '2026-09-01' }),
  ]) {
    await sheet.open(values);
    const said = await sheet.page.locator('.result').innerText();
    assert.doesNotMatch(said, /\b(fits?|uses?|used|recommend\w*|safe\w*|suitable|choose|dose|danger|warning|caution)\b/i);
    assert.doesNotMatch(said, /[®™]/);
  }
  assert.match(await sheet.page.locator('[data-row="oxalic-acid/vapor"] th').innerText(), /From memory\./);
  assert.doesNotMatch(await sheet.page.locator('[data-row="formic-acid/strips"] th').innerText(), /memory/);
  const own = await sheet.page.locator('main').evaluate((main) =>
    [...main.querySelectorAll('h1, h2, h3, legend, label, li, p, td, th')]
      .filter((each) => !each.closest('.box, .margin'))
      .map((each) => each.textContent ?? '')
      .filter((words) => /\b(recommended|safe|fits)\b/i.test(words)),
  );
  assert.deepEqual(own, []);
});

test('label rows: acids and fumes have their place on the page', async () => {
  const hazards = await sheet.page.locator('[data-hazard]').evaluateAll((boxes) => boxes.map((box) => (box as HTMLElement).dataset.hazard));
  assert.deepEqual(hazards.sort(), ['acids', 'fumes']);
});

const typed: { fill: Record<string, string>; says?: string[]; hash?: RegExp }[] = [
  {
    fill: {},
    says: [
      'Write the first day of the treatment, such as 18 April 2026.',
      'Write how cold the coldest day gets, such as 10 or 50 F.',
      'Write how warm the warmest day gets, such as 28 or 82 F.',
    ],
  },
  {
    fill: { start: '10 August 2026', low: '50 F', high: '82.4 °F' },
    hash: /^start=2026-08-10&low=10&high=28&supers=on&brood=yes&registered=not-checked$/,
  },
  {
    fill: { start: '10 August 2026', low: '−5', high: '10,5', place: ' United  States ' },
    hash: /low=-5&high=10\.5&supers=on&brood=yes&place=United%20%20States&/,
  },
  {
    fill: { start: '8/10/26', low: '10', high: '20' },
    says: ['“8/10/26” is one day in one country and another day in the next. Write the month in letters, such as 18 April 2026.'],
  },
  { fill: { start: '10 August 2026', low: '30', high: '20' }, says: ['The warmest day cannot be colder than the coldest.'] },
  { fill: { start: '10 August 2026', low: '10', high: '90' }, says: ['Weather lies from −60 to 60 °C (−76 to 140 °F).'] },
  {
    fill: { start: '10 August 2026', low: '10', high: 'hot' },
    says: ['“hot” is not a number. Write how warm the warmest day gets, such as 28 or 82 F.'],
  },
  {
    fill: { start: '10 August 2026', low: '10', high: '20', 'harvest-date': '31 September 2026' },
    says: ['“31 September 2026” is not in the calendar.'],
  },
];

for (const { fill, says, hash } of typed) {
  test(`label rows: ${JSON.stringify(fill)}`, async () => {
    await sheet.open('');
    for (const [name, text] of Object.entries(fill)) await sheet.fill(name, text);
    await sheet.press('Work it out');
    assert.deepEqual(await sheet.faults(), says ?? []);
    if (says) assert.deepEqual(await sheet.values(), {});
    else assert.match(await sheet.hash(), hash!);
  });
}

test('label rows: boxes on, brood and not checked are what stands there first', async () => {
  await sheet.open('start=2026-08-10&low=18&high=28');
  assert.equal(await sheet.hash(), 'start=2026-08-10&low=18&high=28&supers=on&brood=yes&registered=not-checked');
});

test('label rows: a club of another land, with one row', async () => {
  const southern = await fixtureSite('southern');
  const other = await openCalculator(
    browser,
    southern,
    'treatment-window',
    'start=2026-02-10&low=18&high=28&brood=no&supers=off&place=New%20Zealand&registered=yes',
  );
  assert.deepEqual(Object.keys(await other.values()), ['oxalic-acid/trickled state', 'oxalic-acid/trickled rule']);
  await other.close();
  await southern.close();
});

test('label rows: a club without rows says so', () => {
  const planned: Planned = {
    start: '2026-08-10' as Day,
    lowC: 10,
    highC: 20,
    supersOn: false,
    brood: true,
    place: 'Here',
    registered: 'yes',
  };
  assert.equal(headline(judgeAll(planned, [], planned.start)), 'The club holds no label rows: ask.');
});

test('label rows: one ingredient with rows of two places', () => {
  const planned: Planned = {
    start: '2026-08-10' as Day,
    lowC: 18,
    highC: 28,
    supersOn: false,
    brood: true,
    place: 'united states',
    registered: 'yes',
  };
  const rowOf = (id: string, place: string): ShownRow => ({
    ...labels.formicStrips,
    place,
    entry: 'formic-acid',
    id: `formic-acid/${id}`,
    title: 'Formic acid',
    form: 'strips',
    fromMemory: false,
    note: 1,
  });
  const judged = judgeAll(planned, [rowOf('here', 'United States'), rowOf('there', 'New Zealand')], planned.start);
  assert.deepEqual(
    judged.map(({ id, judged: { state } }) => [id, state]),
    [['formic-acid/here', 'not-ruled-out']],
  );
  assert.equal(judgementWords(judged[0]!, planned, 'us'), 'This row rules nothing out. Your label decides.');
});
