// The tables of stations: those of the books against the published tables they were taken from, and a sentence for impossible normals.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import { checkFolder } from '../../../src/checks/check.ts';
import { stationsOf } from '../../../src/cli/new/land.ts';
import { booksFolder } from '../../../src/source/books-folder.ts';
import { formatDiagnostic, type Diagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder, readText } from '../../../src/source/folder.ts';
import { climateOfStation } from '../../../src/schemas/stations.ts';
import { byMonth, csvLines } from '../../tables/csv.ts';

const text = readFileSync(join(booksFolder(), 'us', 'stations.csv'), 'utf8');
const book = readFolder(join(booksFolder(), 'us'));

/** What check says of the book with another table. */
function faultsOf(table: string): string[] {
  const faults: Diagnostic[] = [];
  const stations = readText('stations.csv', 'stations', 'stations', table, faults);
  return checkFolder({ ...book, stations, faults })
    .filter(({ path }) => path === 'stations.csv')
    .map(formatDiagnostic);
}

/** What NOAA printed, by the place of the station: tests/tables/season/README.md says where it is from. */
const published = new Map(
  csvLines('season/us-stations-1981-2010.csv').map((line) => [`${Number(line.lat).toFixed(2)}, ${Number(line.lon).toFixed(2)}`, line]),
);
const airports = csvLines('season/daily-normals-monthly-inputs.csv');

test('each station has the normals of the published tables', () => {
  const rows = stationsOf('US-KY');
  assert.ok(rows.length > 20, `${rows.length} stations`);
  for (const station of rows) {
    const { minima, maxima, 'degree-days': sum } = climateOfStation(station);
    const line = published.get(`${station.latitude.toFixed(2)}, ${station.longitude.toFixed(2)}`);
    if (line) {
      assert.deepEqual([minima, maxima], [byMonth(line, 'tmin_f_'), byMonth(line, 'tmax_f_')], station.id);
      assert.equal(sum?.sum, Number(line.pub_gdd50_annual), station.id);
    } else {
      // Their positions are not in the table of the airports, so the normals find the line.
      const twelve = (element: string): string[] =>
        airports
          .filter((each) => each.element === element)
          .map((each) => Array.from({ length: 12 }, (_, at) => Number(each[`m${at + 1}`])).join());
      assert.ok(twelve('tmin_f').includes(minima.join()) && twelve('tmax_f').includes(maxima.join()), station.id);
    }
  }
});

test('impossible normals in the table have a sentence each, at their cell', () => {
  assert.deepEqual(faultsOf(text), []);
  const row = text.split('\n').findIndex((line) => line.startsWith('wooster,')) + 1;
  const change = (cell: string, write: string): string => text.replace(/^wooster,.*$/m, (line) => line.replace(`,${cell},`, `,${write},`));
  const said = (table: string): string[] =>
    faultsOf(table).map((fault) => fault.replace(/^stations\.csv:(\d+):\d+/, (_, line) => (Number(line) === row ? 'wooster' : line)));
  assert.deepEqual(said(change('18.2', '48.2')), [
    'wooster climate: wooster, minima 1: found 48.2 for January, over its high of 34.5; write a daily low that is under the daily high',
  ]);
  assert.deepEqual(said(change('83.1', '831')), [
    'wooster climate: wooster, maxima 7: found 831 F for July, which no month has anywhere; write the normal of that month in F',
  ]);
  assert.deepEqual(said(change('40.78', '-40.78')), [
    'wooster climate: wooster, maxima: found July as the warmest month in the south; write twelve numbers that begin with January, or the other hemisphere',
  ]);
  assert.deepEqual(said(change('2816', '281')), [
    'wooster climate: wooster, degree-days, sum: found 281, which the normals alone already pass; write a sum, base and method of this place and these years',
  ]);
  assert.deepEqual(said(change('US-OH', 'Ohio')), [
    'wooster field: line 19, region: found "Ohio"; write a code of ISO 3166 in capitals, such as NZ or US-OH',
  ]);
  assert.deepEqual(said(text.replace(/^albany,/m, 'wooster,')).length, 1);
});
