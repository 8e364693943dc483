// What was checked is what is drawn: the cli and Astro's bundle, which runs a copy of source/, share one folder.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { openFolder } from '../../../src/source/open-folder.ts';
import { goodClub } from '../../fixtures/invalid/cases.ts';

test('a second copy of the module finds the folder that the first has read, until it reads afresh', async () => {
  const copy = new URL('../../../src/source/open-folder.ts?copy', import.meta.url).href;
  const other = (await import(copy)) as { openFolder: typeof openFolder };
  assert.notEqual(other.openFolder, openFolder);
  const read = openFolder(goodClub, true);
  assert.ok(read.entries.length > 20);
  assert.equal(other.openFolder(goodClub), read);
  const again = other.openFolder(goodClub, true);
  assert.notEqual(again, read);
  assert.deepEqual(again.files, read.files);
  assert.equal(openFolder(goodClub), again);
  assert.notEqual(openFolder(`${goodClub}/words`).directory, goodClub);
});
