// Concurrent builds, into one folder or several, from one club or several: each folder is as if its build had been alone.
import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { test } from 'vitest';
import { fingerprint } from '../../src/integration/fingerprint.ts';
import { change, openWorkshop } from './workshop.ts';

const { folder, copy, build } = openWorkshop();
const clubs = [copy('southern'), copy('southern'), copy('hostile')];
change(join(clubs[1]!, 'words', 'autumn.yaml'), 'March to May here.', 'March to early June here.');

async function alone(content: string, name: string): Promise<string> {
  const out = join(folder, name, 'out');
  const ran = await build(content, out);
  assert.equal(ran.code, 0, ran.output);
  return fingerprint({ out });
}

const prints = (async () => [await alone(clubs[0]!, 'one'), await alone(clubs[1]!, 'two'), await alone(clubs[2]!, 'three')])();

test('three clubs into three folders', { timeout: 300_000, tags: ['slow'] }, async () => {
  const expected = await prints;
  const outs = clubs.map((_, index) => join(folder, 'several', `out-${index}`));
  const ran = await Promise.all(clubs.map((club, index) => build(club, outs[index]!)));
  for (const [index, { code, output }] of ran.entries()) assert.equal(code, 0, `${index}: ${output}`);
  assert.deepEqual(
    outs.map((out) => fingerprint({ out })),
    expected,
  );
  assert.deepEqual(readdirSync(join(folder, 'several')).sort(), ['out-0', 'out-1', 'out-2']);
});

test('one club into two folders', { timeout: 300_000, tags: ['slow'] }, async () => {
  const [expected] = await prints;
  const outs = ['a', 'b'].map((name) => join(folder, 'same', name));
  for (const { code, output } of await Promise.all(outs.map((out) => build(clubs[0]!, out)))) assert.equal(code, 0, output);
  assert.deepEqual(
    outs.map((out) => fingerprint({ out })),
    [expected, expected],
  );
});

test(
  'three times into one folder: the editions follow each other, and the last one stays whole',
  { timeout: 300_000, tags: ['slow'] },
  async () => {
    const expected = await prints;
    const out = join(folder, 'shared', 'out');
    for (let round = 0; round < 3; round += 1) {
      const ended: number[] = [];
      const ran = await Promise.all(
        [0, 1, 0].map(async (club) => {
          const done = await build(clubs[club]!, out);
          ended.push(club);
          return done;
        }),
      );
      for (const { code, output } of ran) assert.equal(code, 0, output);
      assert.ok(
        ran.some(({ output }) => /^Another build \(process \d+\) is running\. This one waits for it\.$/m.test(output)),
        'who waits is told',
      );
      assert.equal(fingerprint({ out }), expected[ended.at(-1)!], `round ${round}`);
      assert.deepEqual(readdirSync(dirname(out)), ['out']);
    }
  },
);
