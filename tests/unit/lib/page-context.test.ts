// What a page needs besides its words: notes numbered as read, figures of the day, cautions by gravity, people, windows.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { createPageContext, reviewOf } from '../../../src/lib/page-context.ts';
import { HAZARDS_OF } from '../../../src/schemas/hazards.ts';
import { aDay } from '../../days.ts';
import { almanacOf, contact, district, figure, row, source } from './almanac.ts';

const [work, hazards] = Object.entries(HAZARDS_OF).find(([, all]) => all.length >= 2)!;
const caution = (gravity: number) => ({ line: `Gravity ${gravity}`, says: ['Stop.'], gravity });
const almanac = almanacOf({
  club: {
    language: 'en-US',
    units: 'us',
    contacts: [contact('mentor', { phone: '+1-555-0100', 'public-office': true })],
    districts: [{ id: 'valley' }],
  },
  seasons: [district('valley')],
  figures: {
    level: figure([row('state', { value: 4, until: '2026-05-31' })], { title: 'Level' }),
    rest: figure([row('state', { value: 2 })], { title: 'Rest' }),
    hours: figure([row('lab', { value: 6, source: 'lab', place: 'Iowa' })], { title: 'Hours', unit: 'hours' }),
  },
  sources: { extension: source('A university'), lab: source('A laboratory') },
  // The gravest has the lowest number.
  cautions: Object.fromEntries(hazards.map((hazard, index) => [hazard, caution(hazards.length - index)])),
  drawings: { egg: { id: 'egg', data: { title: 'An egg', words: 'It stands.' }, body: '<svg/>' } },
});
const pageOn = (day: string, ...of: string[]) => createPageContext(almanac, '/bees/', day, of);

test('notes are numbered in reading order, and the same words have the same number', () => {
  const { notes, around } = pageOn('2026-05-01');
  const shown = ['hours', 'level', 'rest', 'hours'].map((id) => around.figure(id));
  assert.deepEqual(shown.map((one) => [one!.main, one!.note]), [['6\u00a0hours', 1], ['4\u00a0days', 2], ['2\u00a0days', 2], ['6\u00a0hours', 1]]); // prettier-ignore
  assert.deepEqual(notes.map(({ number, figure: of }) => [number, of]), [[1, 'hours'], [2, 'level']]); // prettier-ignore
  assert.deepEqual(pageOn('2026-05-01').notes, [], 'another page has notes of its own');
});

test('no figure and no note where there is no figure, no such row, or none on this day', () => {
  const { notes, around } = pageOn('2026-06-01');
  assert.deepEqual([around.figure('gone'), around.figure('hours', 'gone'), around.figure('level'), notes], [null, null, null, []]);
});

test('the cautions of the work, the gravest first', () =>
  assert.deepEqual(
    pageOn('2026-05-01', work).cautions.map(({ hazard }) => hazard),
    [...hazards].reverse(),
  ));

test('for Spanish readers of an English club, figures and days are in Spanish, with the numbers of the club', () => {
  const { around } = createPageContext({ ...almanac, tongue: 'es' }, '/bees/', '2026-05-01', []);
  assert.equal(around.figure('hours')?.main, '6\u00a0horas');
  assert.deepEqual(around.dayOf('dearth'), { words: '6\u00a0de\u00a0julio', windows: 'valley 07-06 07-06', lang: 'es' });
  assert.deepEqual(pageOn('2026-05-01').around.dayOf('dearth'), { words: 'July\u00a06', windows: 'valley 07-06 07-06' });
});

test('people, drawings and windows are those of the club, and null where it has none', () => {
  const { around } = pageOn('2026-05-01');
  assert.equal(around.contact('mentor')?.phone, '+1-555-0100');
  assert.equal(around.contact('inspector'), null);
  assert.deepEqual(around.drawing('egg'), { title: 'An egg', words: 'It stands.', parts: [], lines: '<svg/>' });
  assert.equal(around.drawing('gone'), null);
  assert.deepEqual(around.window('in main flow'), { words: 'May\u00a020 to July\u00a05', windows: 'valley 05-20 07-05' });
  assert.deepEqual([around.window('any time'), around.local('law'), around.caution('gone')], [null, null, null]);
});

test('a page of a book says whose check it is, and what the club compared', () => {
  const fields = { checked: aDay('2026-01-10'), 'next-check': aDay('2027-01-10'), by: 'editor' };
  assert.equal(reviewOf(fields)!.book, undefined);
  const origin = { book: { editors: 'editors of the common book' }, compared: { day: aDay('2026-03-02'), by: 'almanac editor' } };
  assert.deepEqual(reviewOf(fields, origin as Parameters<typeof reviewOf>[1])!.book, {
    editors: 'editors of the common book',
    compared: { day: 'March\u00a02,\u00a02026', by: 'almanac editor' },
  });
});
