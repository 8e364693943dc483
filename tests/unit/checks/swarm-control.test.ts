/*
 * After a split or a swarm the old hive is opened once more, on day 6 or 7. Bees raise a queen only from a larva of at most three days,
 * and eggs take three days, so no new cell is begun after day 6 (the common table of brood times, from memory). A page that leaves this
 * look out loses a second swarm.
 */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { join } from 'node:path';
import { projectFolder } from '../../../src/cli/paths.ts';
import { readFolder } from '../../../src/source/folder.ts';

const { entries } = readFolder(join(projectFolder, 'content', 'demo-club'));
const leavesOne = /\bleave one\b[^.;]*\bcell\b/i;
const goesBack = /\bday 6 (?:or|to day) 7\b/i;
/** Without the fields of the head, where older rules are told as changes. */
const bodyOf = (text: string): string => text.replace(/^---[\s\S]*?\n---\n/, '');

test('each page that leaves one queen cell goes back on day 6 or 7', () => {
  const telling = entries.filter(({ text }) => leavesOne.test(bodyOf(text)));
  assert.deepEqual(telling.map(({ collection, id }) => `${collection}/${id}`).sort(), [
    'articles/after-a-swarm',
    'articles/splits',
    'articles/swarms',
    'checklists/make-a-split',
    'checklists/swarm-season',
  ]);
  assert.deepEqual(
    telling.filter(({ text }) => !goesBack.test(bodyOf(text))).map(({ path }) => path),
    [],
  );
});

test('the test detects the old advice', () => {
  const old = 'Leave one good cell and close up. Several cells mean more swarms. Stay out for three weeks.';
  assert.ok(leavesOne.test(old) && !goesBack.test(old));
});

test('the list has the look and its four steps on day 6 or 7, and no other look into the old hive before day 21', () => {
  const list = entries.find(({ path }) => path.endsWith('checklists/after-moving-the-queen.mdx'))!.text;
  const steps = [...list.matchAll(/^- \[ \] (.*?) <Task ([^>]*)\/>/gm)].map(([, words, tag]) => ({
    words: words!,
    days: /when="day (\d+) to day (\d+) /.exec(tag!)?.slice(1).map(Number),
  }));
  assert.ok(
    steps.every(({ days }) => days),
    'each step has its days',
  );
  const inLook = steps.filter(({ days }) => days![0] === 6 && days![1] === 7);
  assert.equal(inLook.length, 4);
  assert.match(inLook.at(-1)!.words, /^Take down every cell but the marked one/);
  const between = steps.filter(({ days }) => days![1]! > 7 && days![0]! < 21);
  assert.deepEqual(
    between.filter(({ words }) => /\bold hive\b/.test(words)).map(({ words }) => words),
    ['Keep the old hive shut'],
  );
});
