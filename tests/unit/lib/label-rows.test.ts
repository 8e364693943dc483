// Rows of labels as sentences, the rows behind a page, signs by place, and the laws on net contents.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { ringFirst, signsByPlace, troublesOf } from '../../../src/lib/signs.ts';
import { heldLabelRows, placesOf, rowNote, seenOf } from '../../../src/lib/treatment-rows.ts';
import {
  boxesCell,
  broodCell,
  cellOf,
  forbidsWords,
  needsWords,
  poorlyWords,
  protectsWords,
  withBroodWords,
} from '../../../src/lib/treatment-words.ts';
import { record } from '../../../src/lib/treatment-words.en.ts';
import { heldWeightRules } from '../../../src/lib/weight-rules.ts';
import * as tables from '../../tables/weights.ts';
import { near } from '../../near.ts';
import { almanacOf, contact, district, entry, figure, row as figureRow, source } from './almanac.ts';

const label = (fields: object = {}): any => ({
  id: 'strips', form: 'strips', place: 'Ohio', source: 'label', 'kills-under-cappings': 'no', supers: 'off', 'works-poorly-with-brood': false,
  hazards: [], certainty: 'settled', 'check-by': '2027-03-01', ...fields,
}); // prettier-ignore

test('what a row needs, and how it works poorly, follow from its fields alone', () => {
  assert.deepEqual(needsWords(label({ 'forbids-brood': true })), ['A hive without brood.', 'It reaches mites on bees only, none under cappings.']);
  assert.match(needsWords(label({ 'kills-under-cappings': 'not-known' })).join(), /your label says/);
  assert.equal(poorlyWords(label()).length, 0);
  assert.match(poorlyWords(label({ 'works-poorly-with-brood': true })).join(), /That is no rule of a label\.$/);
}); // prettier-ignore

test('the answer for summer, with brood, counts the forms and names one that stands alone', () => {
  const poor = label({ 'works-poorly-with-brood': true });
  const strips = label({ form: 'slow strips', 'kills-under-cappings': 'outlasts-brood' });
  assert.equal(
    withBroodWords([poor, strips, poor]),
    'In summer, with brood, 2 of 3 forms work poorly, because mites under cappings live on. 1 of 3 forms stays in the hive until the brood has emerged: slow strips.',
  );
  assert.equal(withBroodWords([strips, strips]), 'In summer, with brood, it stays in the hive until the brood has emerged.');
  // A label that forbids it comes before what trials found.
  assert.match(withBroodWords([label({ 'forbids-brood': true, 'works-poorly-with-brood': true })]), /it is not allowed by the label\.$/);
  assert.equal(withBroodWords([]), '');
});

test('a cell of a table says what a row rules out, and never that anything is allowed', () => {
  const rows = [label({ 'works-poorly-with-brood': true }), label({ supers: 'on' }), label({ 'forbids-brood': true, supers: 'label' })];
  assert.deepEqual(rows.map(broodCell), ['Works poorly', 'Reaches mites on bees only', 'Not allowed']);
  assert.deepEqual(rows.map(boxesCell), ['Not allowed', 'Not ruled out: read the label', 'The label decides']);
  assert.equal(cellOf([rows[0], rows[0]], broodCell), 'Works poorly');
  assert.equal(cellOf([rows[0], rows[0], rows[2]], broodCell), 'Works poorly (2 of 3 forms). Not allowed (1 of 3 forms)');
});

for (const [supers, first] of [
  ['off', 'Boxes for harvest on the hive.'],
  ['label', 'Boxes for harvest, unless the label lets them stay.'],
  ['on', 'Nothing about boxes for harvest in this row; read the label.'],
] as const)
  test(`boxes for harvest ${supers}: ${first}`, () => assert.equal(forbidsWords(label({ supers }))[0], first));

test('what protects, in one order; gloves for acid stand for those of the skin; a silent row names the label', () => {
  assert.deepEqual(protectsWords(label({ hazards: ['eyes', 'skin', 'acid'] })), ['Acid-proof gloves; water in reach.', 'Closed eye cover.']);
  assert.deepEqual(protectsWords(label({ hazards: ['skin', 'dust'] })).length, 2);
  assert.deepEqual(protectsWords(label()), ['Gloves, eye cover and mask as your label names them.']);
  assert.ok(record.some((line) => /lot number/.test(line)));
}); // prettier-ignore

const sources = { label: source('An agency', { year: 2024, seen: 'quoted' }), trial: source('A trial') };

test('a row is seen as its source was; a row without a source is one whose label was not opened', () => {
  const almanac = almanacOf({ sources });
  assert.equal(seenOf(almanac, label()), 'quoted');
  assert.equal(seenOf(almanac, label({ source: undefined })), 'not-opened');
  assert.equal(seenOf(almanac, label({ source: 'gone' })), 'memory');
});

test('under a row stand its label, number and date, or that they were not seen', () => {
  const almanac = almanacOf({ sources });
  assert.deepEqual(rowNote(almanac, label({ registration: '1-1', 'label-date': '2024-05-01', 'efficacy-source': 'trial', note: 'One note.' })), [
    'An agency 2024 (as quoted elsewhere)',
    'Ohio, registration 1-1, label of May\u00a01,\u00a02024',
    'On what works poorly: A trial',
    'One note.',
    'Well established',
  ]); // prettier-ignore
  assert.equal(rowNote(almanac, label())[1], 'Ohio, registration number not seen, date of the label not seen');
  assert.deepEqual(rowNote(almanac, label({ source: undefined })), ['No label of this form was opened', 'Ohio', undefined]);
});

test('rows carry their entry, their limits and a note each; the same note has one number', () => {
  const notes: Parameters<typeof heldLabelRows>[1] = [];
  const limits = [{ of: 'daily-high', 'least-c': 10, 'most-c': 29.5, when: 'on the day' }, { of: 'mean', 'least-c': 15 }];
  const rows = [label({ limits, 'supers-back-days': 14 }), label({ id: 'again' })];
  const held = heldLabelRows(almanacOf({ sources, labelRows: [entry('formic-acid', { title: 'Formic acid', rows })] }), notes);
  assert.deepEqual(held.map(({ id, note }) => [id, note]), [['formic-acid/strips', 1], ['formic-acid/again', 1]]);
  assert.deepEqual(held[0]!.limits, [{ of: 'daily-high', leastC: 10, mostC: 29.5, when: 'on the day' }, { of: 'mean', leastC: 15 }]);
  assert.equal(held[0]!.supersBackDays, 14);
  assert.ok(!('supersBackDays' in held[1]!));
  assert.equal(notes.length, 1);
}); // prettier-ignore

test('places, the one with most rows first, else by name', () =>
  assert.deepEqual(placesOf(['Ohio', 'Canada', 'Belgium', 'Canada'].map((place) => ({ place }))), ['Canada', 'Belgium', 'Ohio']));

const bulletin = (id: string, status: string, signs: [string, string, string][], other: object = {}) =>
  entry(id, {
    title: id,
    status,
    when: 'in main flow',
    signs: signs.map(([sign, strength, shows]) => ({ sign, strength, shows })),
    ...other,
  });
const sign = (id: string, where = 'brood') => entry(id, { title: id, where });
const trouble = almanacOf({
  seasons: [district('valley')],
  signs: [sign('idle'), sign('holes'), sign('rope'), sign('smell', 'smell')],
  bulletins: [
    bulletin('foulbrood', 'law', [['rope', 'strong', 'often'], ['holes', 'weak', 'often'], ['gone', 'strong', 'often']], { law: [{ duty: 'inspector' }] }),
    bulletin('chalk', 'settled', [['holes', 'strong', 'sometimes'], ['rope', 'strong', 'never']], { when: 'any time' }),
    bulletin('wordless', 'watch', []),
  ],
}); // prettier-ignore

test('signs by place: what points at a report first, what means nothing last; a sign that never shows points nowhere', () => {
  const places = signsByPlace(trouble);
  assert.deepEqual(places.map(({ place }) => place).toSorted(), ['brood', 'smell']);
  const brood = places.find(({ place }) => place === 'brood')!.signs;
  assert.deepEqual(brood.map(({ id, pointsTo }) => [id, pointsTo.map((to) => to.id)]), [
    ['rope', ['foulbrood']],
    ['holes', ['chalk', 'foulbrood']],
    ['idle', []],
  ]); // prettier-ignore
});

test('bulletins with signs as the ranking takes them; a sign that was taken down is passed over', () =>
  assert.deepEqual(troublesOf(trouble).map(({ id, mustReport, harmless, shown, phases }) => [id, mustReport, harmless, shown.length, phases]), [
    ['foulbrood', true, false, 2, ['main-flow']],
    ['chalk', false, true, 2, undefined],
  ])); // prettier-ignore

for (const [duties, asked] of [
  [['mentor', 'extension', 'inspector'], 'inspector'],
  [['mentor', 'extension'], 'extension'],
  [['treasurer'], undefined],
] as const)
  test(`of ${duties.join(', ')} the one to call first is ${asked ?? 'nobody'}`, () =>
    assert.equal(ringFirst({ ...trouble, club: { ...trouble.club, contacts: duties.map((duty) => contact(duty)) } }), asked));

const rows = (...all: [id: string, value: number][]) => figure(all.map(([id, value]) => figureRow(id, { value })));
const weights = {
  'net-sample-ca': rows(['lot-11-128', 10], ['lot-129-4000', 32], ['lot-4001-8000', 64]),
  'net-sample-share-ca': rows(['lot-11-128', 25]),
  'net-mean-certainty': rows(['eu', 99.5], ['ca', 99.5], ['us', 97.5]),
  'net-short-twice-ca': rows(['any', 2]),
  'net-tolerance-ca-share': rows(['g-1-60', 10], ['g-600-1000', 1], ['g-1500-3000', 0.66], ['g-4000-10000', 0.5]),
  'net-tolerance-ca-fixed': rows(['g-60-600', 6], ['g-1000-1500', 10], ['g-3000-4000', 20]),
  'net-sample-us': rows(['lot-12-250', 12], ['lot-251-3200', 24], ['lot-over-3200', 48]),
  'net-tolerance-us': rows(['lb-0-94-to-1-08', 0.04], ['lb-0-25', 0.02]),
};

test('a law is put together from the rows of the club, as it is published (Canada, SOR/2018-108, schedule 5)', () => {
  const { ca, us, eu } = heldWeightRules(almanacOf({ figures: weights }), '2026-05-01');
  const { tolerances, ...rule } = ca!.rule;
  const { tolerances: published, ...expected } = tables.ca;
  assert.deepEqual(rule, expected);
  assert.deepEqual(
    tolerances.toSorted((a, b) => a.fromG - b.fromG).map(({ fromG, belowG }) => [fromG, belowG]),
    published.map(({ fromG, belowG }) => [fromG, belowG]),
  );
  assert.deepEqual(us!.rule.lots, tables.us.lots);
  assert.equal(eu, null, 'no rows of that law');
  const [one, range] = [us!.rule.tolerances.find(({ fromG }) => fromG < 200)!, us!.rule.tolerances.find(({ fromG }) => fromG > 200)!];
  // NIST Handbook 44, appendix C: a pound is 453.59237 g. A row of one label covers it however it was rounded.
  near(one.fromG, 0.25 * 453.59237 - 0.5, 1e-9);
  near(range.belowG, 1.08 * 453.59237, 1e-9);
});

test('a law of which a row is lacking is none', () => {
  for (const id of ['net-sample-ca', 'net-sample-share-ca', 'net-short-twice-ca', 'net-mean-certainty'])
    assert.equal(heldWeightRules(almanacOf({ figures: { ...weights, [id]: undefined! } }), '2026-05-01').ca, null, id);
});
