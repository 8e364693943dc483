// A page of each kind enlarged, with wide letters, and without motion; the long tests take all pages.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import { oneOfEachKind } from './visit.ts';
import { missing, testZoom } from './zoom.ts';

testZoom(oneOfEachKind);

test('a lost word is told, also where another stays', () => {
  assert.deepEqual(missing(['feed', 'the', 'bees', 'the'], ['the', 'feed']), ['bees', 'the']);
  assert.deepEqual(missing(['feed'], ['feed', 'more']), []);
});
