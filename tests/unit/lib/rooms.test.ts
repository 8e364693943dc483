// Which rooms of a small club are empty, and what then leads to them: nothing.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { aDay } from '../../days.ts';
import { manifest } from '../../../src/lib/manifest.ts';
import { calculatorsHere, emptyIn, emptyRooms, pageExists } from '../../../src/lib/rooms.ts';
import { pagesByTitle } from '../../../src/lib/search-content.ts';
import { rulesOfLand } from '../../../src/lib/weight-rules.ts';
import { exampleDay } from '../../../src/lib/tools.ts';
import { calculators } from '../../../src/schemas/calculators.ts';
import { almanacOf, contact, entry, figure, row } from './almanac.ts';

const club = (land: string) => ({ name: 'Fern Flat', almanac: 'Fern Flat', language: 'en', land, units: 'metric', words: 'uk', contacts: [contact('mentor')], districts: [{ id: 'valley' }], season: {} }); // prettier-ignore
const bare = (parts: object = {}) => almanacOf({ club: club('NZ-WKO'), ...parts });
const label = (rows: object[]) => entry('thymol', { title: 'Thymol', rows });

test('of a club with nothing yet every room is empty, and with one entry that room is not', () => {
  for (const [place, parts] of [
    ['meetings/', { meetings: [entry('night', { title: 'Night', day: '2026-05-01' })] }],
    ['reading/', { reading: [entry('book', { title: 'A book' })] }],
    [
      'withdrawn/',
      { withdrawn: [{ kind: 'articles', id: 'old', title: 'Old', place: '/know-how/old/', day: '2026-05-01', why: 'Wrong.' }] },
    ],
    ['counts/', { counts: [entry('2026', {})] }],
    ['year/bloom/', { forage: [entry('willow', { title: 'Willow' })] }],
    ['lists/', { checklists: [entry('winter-rest', { title: 'Winter rest' })] }],
    ['notices/', { notices: [entry('ban', { title: 'Ban', until: '2026-05-01' })] }],
    ['figures/', { figures: { 'bees-per-pound': figure([row('a', { value: 3500 })]) } }],
  ] as const) {
    assert.equal(emptyIn(bare(), '2026-05-01').has(place), true, place);
    assert.equal(emptyIn(bare(parts), '2026-05-01').has(place), false, place);
  }
});

test('a notice that is over leaves its room empty', () =>
  assert.equal(emptyIn(bare({ notices: [entry('ban', { until: '2026-04-30' })] }), '2026-05-01').has('notices/'), true));

const slugs = (almanac: ReturnType<typeof bare>) => calculatorsHere(almanac).map(({ slug }) => slug);
const held = Object.fromEntries(
  calculators.flatMap(({ needs }) => needs.map((id) => [id, figure([row('a', { value: 1, from: '1900-01-01' })])])),
);

test('a calculator is only there where the club has the figures that it needs', () => {
  assert.deepEqual(slugs(bare()), ['mite-count', 'count-day', 'sampling-plan', 'sticky-board', 'syrup', 'degree-days']);
  assert.ok(slugs(bare({ figures: held })).includes('winter-stores'));
  for (const { slug, needs } of calculators)
    for (const need of needs) {
      const figures = Object.fromEntries(Object.entries(held).filter(([id]) => id !== need));
      assert.ok(!slugs(bare({ figures })).includes(slug), `${slug} without ${need}`);
    }
});

test('a club without books sees every calculator, and which of its figures are missing', () =>
  assert.equal(slugs(bare({ club: { ...club('NZ'), land: undefined } })).length, calculators.length));

test('a figure whose rows hold elsewhere is none that a calculator can use', () => {
  const elsewhere = { ...held, 'bees-per-pound': { ...figure([row('a', { value: 3500 })]), rows: [] } };
  assert.ok(!slugs(bare({ figures: elsewhere })).includes('package-order'));
});

test('what the label rows rule out is there with a label row of the land alone', () => {
  const foreign = [{ id: 'a', place: 'Belgium' }];
  assert.ok(!slugs(bare({ treatments: [label([])], labelRows: [label(foreign)] })).includes('treatment-window'));
  assert.ok(slugs(bare({ treatments: [label(foreign)], labelRows: [label(foreign)] })).includes('treatment-window'));
});

// Directive 76/211/EEC binds the member states of the European Union (EUR-Lex: 27 states since 1 February 2020); UK SI 2006/659 the kingdom.
test('the law on net weights is that of the land', () => {
  for (const [land, rules] of [
    ['US-KY', ['us']],
    ['CA', ['ca']],
    ['GB-DEV', ['eu']],
    ['IE', ['eu']],
    ['NZ-WKO', []],
    ['CH', []],
    [undefined, ['us', 'ca', 'eu']],
  ] as const)
    assert.deepEqual(rulesOfLand(land), rules, land);
});

test('no page leads to an empty room, to an entry that is not here, or to an unknown calculator', () => {
  const almanac = bare({ checklists: [entry('winter-rest', { title: 'Winter rest' })], moved: [{ from: '/lists/winter/', to: '/lists/winter-rest/', title: 'W' }] }); // prettier-ignore
  const there = ['/', '/lists/', '/lists/winter-rest/#step-a', '/lists/winter/', '/work-it-out/', '/work-it-out/syrup/#amount=2', '/about/', '#steps', 'https://club.example/meetings/', '//club.example/']; // prettier-ignore
  const away = ['/meetings/', '/reading/#a-book', '/lists/spring/', '/know-how/antibiotics/', '/work-it-out/treatment-window/#start=2026-08-10', '/work-it-out/honey/']; // prettier-ignore
  for (const address of there) assert.equal(pageExists(almanac, address), true, address);
  for (const address of away) assert.equal(pageExists(almanac, address), false, address);
});

test('the list of the search page and the shortcuts of the installed page name only what is there', () => {
  const almanac = bare();
  assert.deepEqual(pagesByTitle(almanac).map(({ title }) => title), ['Count day', 'Degree-days', 'Mite count', 'Sampling plan', 'Sticky board', 'Syrup']); // prettier-ignore
  const names = (JSON.parse(manifest(almanac.club, '/', emptyRooms(almanac))) as { shortcuts: { name: string }[] }).shortcuts;
  assert.deepEqual(names.map(({ name }) => name), ['Now', 'Mite count']); // prettier-ignore
});

test('the day of an example is half a year on in the south', () => {
  const [north, south] = (['north', 'south'] as const).map((hemisphere) => ({ club: { hemisphere } }) as Parameters<typeof exampleDay>[0]);
  assert.equal(exampleDay(north!, aDay('2026-11-29'), 4, 18), '2026-04-18');
  assert.equal(exampleDay(south!, aDay('2026-11-29'), 4, 18), '2026-10-18');
  assert.equal(exampleDay(south!, aDay('2026-11-29'), 8, 10), '2026-02-10');
  assert.equal(exampleDay(south!, aDay('2026-11-29'), 12, 1), '2026-06-01');
});
