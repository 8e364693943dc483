/* The name that was meant by a misspelt one, or none where none is near. One patience for fields, options, files and references. */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { nearName, nearOrAll } from '../../../../shared/words/near-name.ts';
import { rows } from '../../../rows.ts';

rows(
  'the nearest name by letters, or none',
  [
    { case: 'one letter in a short name', given: ['lit', ['list', 'wax']], expect: 'list', from: 'the words themselves' },
    { case: 'two letters of four are another word', given: ['feed', ['weeds', 'need-it']], expect: null, from: 'the words themselves' },
    { case: 'two neighbours changed places', given: ['varora', ['varroa', 'nosema']], expect: 'varroa', from: 'the words themselves' },
    { case: 'swarms is not stings', given: ['swarms', ['stings', 'sugar']], expect: null, from: 'the words themselves' },
    { case: 'two equally near', given: ['row-ab', ['row-1b2', 'row-a1c']], expect: null, from: 'the words themselves' },
    { case: 'two equally near by one letter', given: ['row-3', ['row-1', 'row-2']], expect: null, from: 'the words themselves' },
    {
      case: 'a third of the letters is another word',
      given: ['bumblebee', ['bumble', 'bee']],
      expect: null,
      from: 'the words themselves',
    },
    { case: 'capitals are no difference', given: ['VARROA', ['varroa', 'varrod']], expect: 'varroa', from: 'the words themselves' },
    {
      case: 'a quarter of a long name',
      given: ['kills-under-capings', ['kills-under-cappings']],
      expect: 'kills-under-cappings',
      from: 'the words themselves',
    },
    { case: 'none at all', given: ['anything', []], expect: null, from: 'the words themselves' },
  ] as { case: string; given: [string, string[]]; expect: string | null; from: string }[],
  ([typed, names], expect) => assert.equal(nearName(typed, names), expect),
);

test('instead of a misspelt name: the one that is near, or all that there are', () => {
  assert.equal(nearOrAll('varora', ['varroa', 'nosema']), '"varroa"');
  assert.equal(nearOrAll('wasps', ['varroa', 'nosema']), 'one of: varroa, nosema');
  assert.equal(nearOrAll('anywhere', ['river']), '"river"');
});
