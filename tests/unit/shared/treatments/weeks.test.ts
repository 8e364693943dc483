/* The demo club's own rows in four weeks of a year: each state with its reason, and what labels of other places say about such days. */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { fileURLToPath } from 'node:url';
import { judgeAll } from '../../../../src/calculators/treatment-window/model.ts';
import { judgementWords } from '../../../../src/calculators/treatment-window/judgement-words.ts';
import { stateNames } from '../../../../src/calculators/treatment-window/text.en.ts';
import type { Almanac } from '../../../../src/lib/content.ts';
import { heldLabelRows } from '../../../../src/lib/treatment-rows.ts';
import { readFolder } from '../../../../src/source/folder.ts';
import { fourWeeks, today, weeks } from '../../../tables/treatments.ts';

const { entries } = readFolder(fileURLToPath(new URL('../../../../content/demo-club', import.meta.url)));
const of = (name: string) =>
  entries.filter(({ collection }) => collection === name).map(({ id, fields }) => ({ id, data: fields.value as any }));
const sources = new Map(of('sources').map(({ id, data }) => [id, data]));
const held = heldLabelRows({ labelRows: of('treatments'), sources } as unknown as Almanac, []);

for (const { row, place, in: expected, from } of weeks)
  for (const [name, planned] of Object.entries(fourWeeks))
    test(`${name}, ${place}: ${row} (${from})`, () => {
      const found = judgeAll({ ...planned, place }, held, today).find(({ id }) => id === row);
      assert.ok(found, `no row ${row}`);
      const { elsewhere = [], ...judgement } = expected[name as keyof typeof fourWeeks];
      assert.deepEqual(found.judgement, judgement);
      assert.deepEqual(
        found.elsewhere.map(({ id }) => id),
        elsewhere,
      );
    });

test('the table contains every row of the club, so that none is added without its four weeks', () =>
  assert.deepEqual(
    held.map(({ id }) => id).filter((id) => !weeks.some(({ row }) => row === id)),
    [],
  ));

test('no United States row has numbers without its label', () => {
  const numbered = held.filter((row) => row.place === 'United States' && (row.limits.length > 0 || row.daysMost !== undefined));
  assert.deepEqual(
    numbered.map(({ id, registration, labelDate }) => [id, registration, labelDate]),
    [['amitraz/strips', '87243-1', '2013-03-11']],
  );
});

test('formic acid at 91 F, thymol at 36 F and at 91 F, for a keeper in the United States: ask, and why these days speak against it', () => {
  const words = (row: string, week: keyof typeof fourWeeks): string => {
    const found = judgeAll(fourWeeks[week], held, today).find(({ id }) => id === row)!;
    return `${stateNames[found.judgement.state]}. ${judgementWords(found, fourWeeks[week], 'us', 'en-US')}`;
  };
  assert.match(
    words('formic-acid/strips', '10 August'),
    /^Ask\. Ask: no label of this form could be opened\. .* Too warm: .*daily highs of at most 85 °F .*reaches 91 °F\.$/,
  );
  assert.match(words('thymol/us', '10 August'), /^Ask\. .*Too warm: .*daily highs of at most 86 °F .*reaches 91 °F\.$/);
  assert.match(
    words('thymol/us', '25 November'),
    /^Ask\. .*works poorly in such weather.*a mean of day and night of at least 59 °F .*reaches 46 °F\.$/,
  );
  assert.doesNotMatch(words('formic-acid/strips', '12 September'), /Too cold|Ruled out/);
  assert.match(words('oxalic-acid/trickled', '12 September'), /^Ask\. .*It works poorly with brood/);
  assert.doesNotMatch(words('oxalic-acid/trickled', '12 September'), /Ruled out|forbids it/);
});
