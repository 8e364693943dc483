// A page of each kind enlarged, with wide text spacing, and without motion. zoom.slow tests all pages.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import { oneOfEachKind } from './visit.ts';
import { missing, testZoom } from './zoom.ts';

testZoom(oneOfEachKind);

test('the test detects a lost word, also where another copy of it stays', () => {
  assert.deepEqual(missing(['feed', 'the', 'bees', 'the'], ['the', 'feed']), ['bees', 'the']);
  assert.deepEqual(missing(['feed'], ['feed', 'more']), []);
});
