// What to do next after a result: every kind of every calculator has links that exist in the club's content, and somebody to call.
import assert from 'node:assert/strict';
import { test, vi } from 'vitest';
import { next as brood } from '../../../src/calculators/brood-dates/next.ts';
import { next as degreeDays } from '../../../src/calculators/degree-days/next.ts';
import { next as countDay } from '../../../src/calculators/count-day/next.ts';
import { next as mites } from '../../../src/calculators/mite-count/next.ts';
import { next as packageCalendar } from '../../../src/calculators/package-calendar/next.ts';
import { next as packageOrder } from '../../../src/calculators/package-order/next.ts';
import { next as sampling } from '../../../src/calculators/sampling-plan/next.ts';
import { next as board } from '../../../src/calculators/sticky-board/next.ts';
import { next as syrup } from '../../../src/calculators/syrup/next.ts';
import { next as treatment } from '../../../src/calculators/treatment-window/next.ts';
import { next as weights } from '../../../src/calculators/weight-check/next.ts';
import { next as stores } from '../../../src/calculators/winter-stores/next.ts';
import { almanacOf, type Almanac } from '../../../src/lib/almanac.ts';
import { nextWays, type NextStep } from '../../../src/lib/next-steps.ts';
import { pageExists } from '../../../src/lib/rooms.ts';
import { calculatorNames } from '../../../src/schemas/calculators.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { aDay } from '../../days.ts';
import { fixtureFolder } from '../../setup/built-site.ts';

// Figures are in force on the day of an edition, and a test has none.
vi.mock('../../../src/lib/settings.ts', async (original) => ({
  ...(await original<object>()),
  edition: { day: '2026-11-29', fingerprint: 'unbuilt' },
}));

const tables: Record<string, Readonly<Record<string, NextStep>>> = {
  'mite-count': mites,
  'count-day': countDay,
  'sampling-plan': sampling,
  'sticky-board': board,
  syrup,
  'winter-stores': stores,
  'package-calendar': packageCalendar,
  'package-order': packageOrder,
  'weight-check': weights,
  'brood-dates': brood,
  'treatment-window': treatment,
  'degree-days': degreeDays,
};

test('each calculator has a table of next steps', () => assert.deepEqual(Object.keys(tables), [...calculatorNames]));

function clubIn(folder: string): Almanac {
  const { club, entries } = readFolder(folder);
  return almanacOf(
    (name) =>
      [club!, ...entries].filter(({ collection }) => collection === name).map(({ id, fields }) => ({ id, data: fields.value, body: '' })),
    aDay('2026-11-29'),
  );
}

const demo = clubIn('content/demo-club');

for (const [slug, table] of Object.entries(tables)) {
  for (const [kind, step] of Object.entries(table)) {
    test(`${slug}, ${kind}: two links to pages of the demo club, the first choices, and a number to call`, () => {
      const { links, call } = nextWays(demo, step);
      assert.equal(links.length, 2, links.map(({ path }) => path).join(', '));
      for (const { path, title } of links) {
        assert.ok(pageExists(demo, `/${path}`), path);
        assert.notEqual(title, path);
      }
      assert.equal(links[0]!.path, step.links[0]![0]);
      assert.ok(call?.reached.phone, `nobody of ${step.ask.join(', ')} has a number`);
    });
  }
}

test('every page that a next step names is written for the demo club, so no name is a slip of the pen', () => {
  const named = Object.values(tables).flatMap((table) => Object.values(table).flatMap(({ links }) => links.flat()));
  assert.deepEqual(
    [...new Set(named)].filter((path) => !pageExists(demo, `/${path}`)),
    [],
  );
});

test('a club that lacks those pages gets the next best, and never none', () => {
  const bare: Almanac = { ...demo, checklists: [], articles: [], bulletins: [], moved: [], withdrawn: [] };
  const southern = clubIn(fixtureFolder('southern'));
  for (const club of [bare, southern]) {
    for (const [slug, table] of Object.entries(tables)) {
      for (const [kind, step] of Object.entries(table)) {
        const { links } = nextWays(club, step);
        assert.ok(links.length > 0, `${slug}, ${kind}`);
        for (const { path } of links) assert.ok(pageExists(club, `/${path}`), `${slug}, ${kind}: ${path}`);
      }
    }
  }
});
