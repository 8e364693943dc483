// Which row of a figure holds on a day, and how figures and their sources read.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { followedLevels, heldNumber, heldRange } from '../../../src/lib/calculator-figures.ts';
import { figurePlace, figureShelves, followedNow } from '../../../src/lib/figure-shelf.ts';
import { figureWords } from '../../../src/lib/figure-words.ts';
import { cited, figureNote, rowOn, rowsOn, sourceWords } from '../../../src/lib/figures.ts';
import { noteOf } from '../../../src/lib/notes.ts';
import { heldColony, heldHabits, packageDays } from '../../../src/lib/package-figures.ts';
import { heldStores } from '../../../src/lib/stores-figures.ts';
import { aDay } from '../../days.ts';
import { near } from '../../near.ts';
import { almanacOf, figure, row, source } from './almanac.ts';

const day = '2026-05-01';

const revised = figure(
  [
    row('state', { value: 3, until: '2025-12-31' }),
    row('state', { value: 2, from: '2026-01-01' }),
    row('later', { value: 1, from: '2026-06-01' }),
    row('other', { value: 5 }),
  ],
  { follows: 'other' },
);

for (const [on, value] of [
  ['2019-12-31', null],
  ['2020-01-01', 3],
  ['2025-12-31', 3],
  ['2026-01-01', 2],
] as const)
  test(`on ${on} the row in force is ${value ?? 'none, never the nearest'}`, () =>
    assert.equal(rowOn(revised, 'state', on)?.value ?? null, value));

test('of two revisions that both hold, the newer one counts', () => {
  const open = figure([row('state', { value: 3 }), row('state', { value: 2, from: '2026-01-01' })]);
  assert.equal(rowOn(open, 'state', day)?.value, 2);
});

test('rows in force on a day: the followed one first, those to come left out', () =>
  assert.deepEqual(
    rowsOn(revised, day).map(({ id, value }) => [id, value]),
    [
      ['other', 5],
      ['state', 2],
    ],
  ));

for (const [unit, given, first, main, other] of [
  ['F', { value: 57 }, 'us', '57 °F', '14 °C'],
  ['F', { value: 57 }, 'metric', '14 °C', '57 °F'],
  ['C', { value: 29.5 }, 'us', '85.1 °F', '29.5 °C'],
  ['F-difference', { value: 9 }, 'us', '9 °F', '5 °C'],
  ['lb', { least: 55, most: 64 }, 'us', '55 to 64 lb', '25 to 29 kg'],
  ['us-gal', { value: 1 }, 'metric', '3.8 L', '1 US gal'],
  ['lb', { value: 500 }, 'metric', '227 kg', '500 lb'],
  ['us-cup', { value: 0.5 }, 'us', '½ US cup', '118 mL'],
  ['percent', { least: 55, most: 64 }, 'us', '55 to 64 %', ''],
  ['days', { value: 1 }, 'us', '1 day', ''],
  ['days', { least: 1, most: 3 }, 'us', '1 to 3 days', ''],
  ['per-100-bees', { value: 3 }, 'metric', '3 per 100 bees', ''],
  ['ratio', { value: 0.82 }, 'us', '0.82', ''],
] as const)
  test(`${JSON.stringify(given)} ${unit} reads ${main}, first in ${first}`, () => {
    const found = figureWords(given, unit, first);
    assert.deepEqual(
      [found.main, found.other].map((words) => words.replaceAll('\u00a0', ' ')),
      [main, other],
    );
  });

for (const [unit, given, main, other] of [
  ['minutes', { value: 1 }, '1 minuto', ''],
  ['days', { least: 1, most: 3 }, '1 a 3 días', ''],
  ['per-100-bees', { value: 0.67 }, '0.67 por cada 100 abejas', ''],
  ['in', { value: 0.5 }, '½ pulgada', '13 mm'],
  ['F', { least: 65, most: 70 }, '65 a 70 °F', '18 a 21 °C'],
] as const)
  test(`for Spanish readers of an English club it reads ${main}`, () => {
    const found = figureWords(given, unit, 'us', 'es');
    assert.deepEqual(
      [found.main, found.other].map((words) => words.replaceAll('\u00a0', ' ')),
      [main, other],
    );
  });

test('the note of a translated figure ends in its language', () => {
  const held = { ...figure([row('state', { note: 'De todo el año' })], { checked: aDay('2026-01-10') }), lang: 'es' as const };
  assert.match(figureNote(held, held.rows[0]!, undefined), /De todo el año\. Probable\. Revisado el 10\sde\senero\sde\s2026\.$/);
  assert.match(figureNote({ ...held, lang: 'en' }, held.rows[0]!, undefined), /Likely\. Checked January\s10,\s2026\.$/);
});

test('a number is not parted from its unit at the end of a line', () =>
  assert.deepEqual(figureWords({ least: 1, most: 3 }, 'days', 'us').main, '1 to 3\u00a0days'));

for (const [fields, words] of [
  [{ year: 2012, title: 'leaflet', where: 'page 3' }, 'A university 2012, leaflet, page 3'],
  [{ seen: 'quoted', year: 2012 }, 'A university 2012 (as quoted elsewhere)'],
  [{ seen: 'memory' }, 'A university (from memory)'],
  [{ kind: 'habit', seen: 'memory', title: 'nothing' }, 'A university'],
] as const)
  test(`a source reads “${words}”`, () => assert.equal(sourceWords(source('A university', fields)), words));

test('a source with an address says where it can be opened and when it was', () => {
  const opened = source('A university', { url: 'https://example.org/a', opened: aDay('2026-04-01') });
  assert.deepEqual(cited(opened), { words: 'A university', url: 'https://example.org/a', opened: 'April\u00a01,\u00a02026' });
  assert.deepEqual(cited(source('A club', { kind: 'club', opened: aDay('2026-04-01') })), { words: 'A club' });
  // A publication that a reader cannot open says so.
  assert.deepEqual(cited(source('An old paper')), { words: 'An old paper', isHidden: true });
  const notes: Parameters<typeof noteOf>[0] = [];
  noteOf(notes, ['A university', 'Ohio'], opened);
  assert.deepEqual(notes, [{ number: 1, words: 'A university. Ohio.', source: cited(opened) }]);
});

test('the note of a figure: who, where, how, how sure and when checked; an unknown source keeps its name', () => {
  const one = row('state', { method: 'alcohol wash', note: 'Only in fall!' });
  const held = figure([one]);
  assert.equal(
    figureNote(held, one, source('A university', { year: 2012 })),
    'A university 2012. Ohio; alcohol wash. Only in fall! Likely. Checked January\u00a010,\u00a02026.',
  );
  assert.match(figureNote(held, one, undefined), /^extension\. Ohio/);
  assert.doesNotMatch(figureNote(held, one, source('Common practice', { kind: 'habit' })), /Likely/);
});

test('a note of the same words has the same number, and empty parts leave no gap', () => {
  const notes: Parameters<typeof noteOf>[0] = [];
  assert.equal(noteOf(notes, ['A leaflet', undefined, 'Ohio']), 1);
  assert.equal(noteOf(notes, ['Another']), 2);
  assert.equal(noteOf(notes, ['A leaflet.', '', 'Ohio.']), 1);
  assert.deepEqual(notes.map(({ words }) => words), ['A leaflet. Ohio.', 'Another.']); // prettier-ignore
});

test('a calculator receives the number or both ends of the row that the club follows, and null where there is none', () => {
  const almanac = almanacOf({ figures: { one: revised, range: figure([row('a', { least: 2, most: 7 })]), past: figure([row('a', { value: 1, until: '2021-01-01' })]) } }); // prettier-ignore
  assert.equal(heldNumber(almanac, 'one', day), 5);
  assert.deepEqual(heldRange(almanac, 'one', day, 'state'), { least: 2, most: 2 });
  assert.deepEqual(heldRange(almanac, 'range', day), { least: 2, most: 7 });
  for (const id of ['past', 'nowhere']) assert.equal(heldRange(almanac, id, day), null, id);
});

test('action levels: each followed row in force, of a range the stricter end, with the method that it speaks of', () => {
  const rows = [
    row('spring', { least: 1, most: 2, phases: ['build-up'], method: 'alcohol wash' }),
    row('fall', { value: 3, method: 'ether roll' }),
    row('past', { value: 9, until: '2021-01-01' }),
    row('unfollowed', { value: 5 }),
  ];
  const levels = figure(rows, { 'also-follows': ['fall', 'past'] });
  const found = followedLevels(almanacOf({ figures: { level: levels }, sources: { extension: source('A university', { year: 2012 }) } }), 'level', day); // prettier-ignore
  assert.deepEqual(
    found.map(({ levelPer100, phases, method }) => [levelPer100, phases.length, method]),
    [
      [1, 1, 'wash'],
      [3, 6, undefined],
    ],
  );
  assert.equal(found[0]!.words, 'A university 2012; Ohio; alcohol wash.');
});

test('a subject shows its figures with the followed row marked; a row of another time does not hold', () => {
  const almanac = almanacOf({ figures: { level: { ...revised, subject: 'mites' }, none: figure([row('a', { value: 1 })]) }, sources: { extension: source('A university') } }); // prettier-ignore
  const shelves = figureShelves(almanac, day);
  assert.deepEqual(shelves.map(({ subject }) => subject), ['mites', 'other']); // prettier-ignore
  assert.deepEqual(followedNow(shelves[0]!.figures[0]!).map(({ row: { id } }) => id), ['other']); // prettier-ignore
  assert.deepEqual([figurePlace(almanac, 'level'), figurePlace(almanac, 'none')], ['figures/mites/#level', 'figures/other/#none']);
});

const habits = {
  'queen-candy-release-days': [2, 7], 'queen-cage-look-days': [4, 7], 'eggs-after-release-days': [1, 3], 'foundation-extra-days': [2, 5],
  'first-look-days': [7, 9], 'first-mite-count-weeks': [6, 8],
}; // prettier-ignore
const packageFigures: Record<string, ReturnType<typeof figure>> = {
  ...Object.fromEntries(Object.entries(habits).map(([id, [least, most]]) => [id, figure([row('a', { least, most })])])),
  'no-eggs-look-again-days': figure([row('a', { value: 9 })]),
  'no-eggs-act-days': figure([row('a', { value: 14 })]),
};

test('the package calendar receives its figures by name, weeks as days, and lacks what the club lacks', () => {
  const { 'first-look-days': _, ...without } = packageFigures;
  assert.deepEqual(heldHabits(almanacOf({ figures: packageFigures }), day).firstMiteCountDays, { least: 42, most: 56 });
  assert.ok(!('eggLookDays' in heldHabits(almanacOf({ figures: without }), day)));
  assert.equal(packageDays(almanacOf({ figures: without }), day, 'queen-look'), null);
  assert.equal(packageDays(almanacOf({ figures: packageFigures }), day, 'no-such-date'), null);
});

test('a colony is drawn from all of its figures or not at all; shares are parts of one', () => {
  const figures = {
    'package-survival-day-22': figure([row('a', { least: 55, most: 64 })]),
    'package-eggs-per-day': figure([row('a', { least: 2050, most: 2900 })]),
    'package-half-laying-bees': figure([row('a', { value: 12_500 })]),
    'package-brood-cells': figure([row('a', { value: 40_000 })]),
    'package-cells-built-per-day': figure([row('a', { least: 1000, most: 2500 })]),
  };
  const survival = heldColony(almanacOf({ figures }), day)!.survival;
  assert.equal(survival.days, 22);
  near(survival.leastShare, 0.55, 0);
  near(survival.mostShare, 0.64, 0);
  for (const id of Object.keys(figures)) assert.equal(heldColony(almanacOf({ figures: { ...figures, [id]: undefined! } }), day), null, id);
});

test('stores: the larger end of a target, the smaller of a frame, in kilograms; another unit is no weight', () => {
  const stores = heldStores(
    almanacOf({
      figures: {
        'winter-stores-target': figure([row('a', { least: 50, most: 60 })], { unit: 'lb' }),
        'frame-honey-deep': figure([row('a', { least: 2.5, most: 3 })], { unit: 'kg' }),
        'frame-honey-medium': figure([row('a', { value: 4 })], { unit: 'parts' }),
      },
    }),
    day,
  );
  near(stores.targetKg, 60 * 0.45359237, 0);
  assert.deepEqual(stores.frameKg, { deep: 2.5, medium: null, shallow: null });
  assert.equal(stores.feeding, null);
});
