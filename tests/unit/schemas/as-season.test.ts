// Three whole clubs, a cold one, a mild one and one of the south, compared with published dates and days worked out by hand.
import assert from 'node:assert/strict';
import { onTestFinished, test } from 'vitest';
import { fileURLToPath } from 'node:url';
import { check } from '../../../src/checks/check.ts';
import { validEntries } from '../../../src/checks/fields.ts';
import { districtsIn } from '../../../src/checks/season.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { dayOfCommonYear } from '../../../shared/days/month-day.ts';
import { spreadIn } from '../../../shared/season/climate.ts';
import { formatDiagnostic } from '../../../src/source/diagnostic.ts';
import type { District } from '../../../src/schemas/as-season.ts';
import type { Club } from '../../../src/schemas/club.ts';
import { near } from '../../near.ts';
import { aDay, aMonthDay } from '../../days.ts';

const folder = (name: string): string => fileURLToPath(new URL(`../../fixtures/clubs/${name}`, import.meta.url));
const districts = (name: string): District[] => districtsIn(validEntries(readFolder(folder(name))));
const day = (text: string): number => dayOfCommonYear(aMonthDay(text));
const bloom = (district: District, plant: string) => {
  const found = district.blooms.find((each) => each.plant === plant)?.bloom;
  return found?.ok ? found.value : assert.fail(`${plant}: ${found?.reason}`);
};

for (const name of ['cold', 'sub-folder', 'southern'])
  test(`${name} has no fault`, () => assert.deepEqual(check(folder(name)).map(formatDiagnostic), []));

test('cold, the normals of Minneapolis 1981-2010: published freezes, fitted spread, crossings by hand', () => {
  const [city, lakeside] = districts('cold') as [District, District];
  near(spreadIn('F', city.climate!.spread!), 8.62, 0.03, 'an independent program');
  assert.equal(city.anchors['last-freeze']?.expected, '04-25', 'NOAA 1981-2010');
  assert.equal(city.anchors['first-freeze']?.expected, '10-10', 'NOAA 1981-2010');
  // The high is 58.0 in mid-October and 41.2 in mid-November: 57 after 2 days, 55 after 6, the bend of the curve aside.
  near(day(city.anchors.cluster!.expected), day('10-18'), 3);
  near(day(city.anchors['last-syrup']!.expected), day('10-22'), 3);
  assert.equal(lakeside.anchors['last-freeze']?.expected, '04-30', 'five days later in spring');
  assert.equal(lakeside.anchors['first-freeze']?.expected, '10-14', 'four days later in fall, by the lake');
  assert.ok(city.days.ok && city.days.value.phases['winter-rest'].from === city.anchors.cluster!.expected, 'normals go before a guess');
});

test('mild, the normals of central England 1981-2010: spread and a sum against the daily record', () => {
  const [vale, ridge] = districts('sub-folder') as [District, District];
  near(vale.climate!.spread!.degreesC, 3.01, 0.03, 'an independent program');
  const blackthorn = bloom(vale, 'blackthorn');
  near(day(blackthorn.middle), 73.8, 2, 'sine over 5 C, 100: mean of the yearly days 73.8');
  assert.equal(day(bloom(ridge, 'blackthorn').middle) - day(blackthorn.middle), 8);
  // The low is 4.3 in mid-April and 7.2 in mid-May: 5.3 about the 26th. 7.3 in mid-October and 4.2 in mid-November: 5.3 about the 5th.
  near(day(vale.anchors['last-freeze']!.expected), day('04-26'), 5);
  near(day(vale.anchors['first-freeze']!.expected), day('11-05'), 5);
});

test('south, the normals of Melbourne 1981-1990: a sum counted from 1 July against the daily record, a flow over New Year', () => {
  const [valley] = districts('southern') as [District];
  near(valley.climate!.spread!.degreesC, 1.83, 0.02, 'an independent program');
  const fromJuly = ((day(bloom(valley, 'manuka').middle) - day('07-01') + 365) % 365) + 1;
  near(fromJuly, 98.1, 2, `simple over 10 C from 1 July, 200: mean of the yearly days 98.1, found ${fromJuly}`);
  assert.equal(valley.anchors['last-freeze'], undefined, 'the normal low never passes 5.3 C');
  assert.ok(valley.days.ok);
  assert.deepEqual(valley.days.value.phases['main-flow'], { from: '11-21', to: '01-20' });
  assert.deepEqual(valley.days.value.phases.dearth, { from: '01-21', to: '02-28' });
});

test('the demonstration has a day from every kind of basis, and no day without one', () => {
  const [valley, hill] = districtsIn(validEntries(readFolder(fileURLToPath(new URL('../../../content/demo-club', import.meta.url))))) as [
    District,
    District,
  ];
  const kinds = new Set(Object.values(valley.anchors).map((date) => date?.basis.kind));
  for (const kind of ['observed', 'temperature', 'guess'] as const) assert.ok(kinds.has(kind), kind);
  assert.ok(Object.values(hill.anchors).every((date) => date?.basis.kind === 'shifted'));
  assert.deepEqual(
    [
      valley.anchors.swarm?.expected,
      hill.anchors.swarm?.expected,
      valley.anchors['first-freeze']?.expected,
      hill.anchors['first-freeze']?.expected,
    ],
    ['05-01', '05-10', '10-11', '10-05'],
  );
  assert.ok(valley.blooms.length >= 12);
});

test('any time zone gives the same days', () => {
  const own = process.env.TZ;
  onTestFinished(() => void (own === undefined ? delete process.env.TZ : (process.env.TZ = own)));
  const made = ['UTC', 'Asia/Tokyo', 'America/New_York', 'Australia/Sydney', 'Pacific/Apia'].map((zone) => {
    process.env.TZ = zone;
    return JSON.stringify(['cold', 'sub-folder', 'southern'].map(districts));
  });
  for (const other of made) assert.equal(other, made[0]);
});

/** The cold club with a changed second district. */
function withLakeside(changes: Partial<Club['districts'][number]>): District[] {
  const club = validEntries(readFolder(folder('cold')));
  const entry = club.club!;
  const [city, lakeside] = entry.data.districts as [Club['districts'][number], Club['districts'][number]];
  return districtsIn({ ...club, club: { ...entry, data: { ...entry.data, districts: [city, { ...lakeside, ...changes }] } } });
}

test('a district with its own normals and members uses them, and follows the main one for the rest', () => {
  const { climate } = validEntries(readFolder(folder('cold'))).club!.data;
  const warmer = {
    ...climate!,
    minima: climate!.minima.map((degrees) => degrees + 3),
    maxima: climate!.maxima.map((degrees) => degrees + 3),
    'degree-days': undefined,
    freezes: undefined,
    spread: { sigma: 9, source: 'leaflet' },
  };
  const observed = ['2021-05-30', '2022-06-02', '2023-05-28'].map((swarm) => ({ year: Number(swarm.slice(0, 4)), swarm: aDay(swarm) }));
  const [city, lakeside] = withLakeside({ climate: warmer, observed }) as [District, District];
  assert.equal(lakeside.climate?.spread?.from, 'region');
  assert.deepEqual(lakeside.anchors.swarm?.basis, { kind: 'observed', years: 3 });
  assert.equal(lakeside.anchors.swarm?.expected, '05-30');
  assert.equal(lakeside.anchors['last-freeze']?.basis.kind, 'temperature');
  assert.ok(lakeside.anchors['last-freeze']!.expected < city.anchors['last-freeze']!.expected, 'three degrees warmer');
  assert.equal(lakeside.anchors['main-flow-start']?.basis.kind, 'shifted');
  assert.equal(lakeside.anchors['main-flow-start']?.expected, '06-15');
  const [here, there] = [bloom(city, 'black-locust'), bloom(lakeside, 'black-locust')];
  assert.equal(there.basis.kind, 'degree-days');
  assert.ok(day(there.middle) < day(here.middle));
});

test('one number of days moves spring and fall alike where no other is given', () => {
  const [city, lakeside] = withLakeside({ 'fall-later-by-days': undefined }) as [District, District];
  for (const anchor of ['swarm', 'first-freeze', 'cluster'] as const)
    assert.equal(day(lakeside.anchors[anchor]!.expected) - day(city.anchors[anchor]!.expected), 5, anchor);
});
