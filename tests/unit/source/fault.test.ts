// A diagnostic is one line for any file name, and contains nothing that a terminal obeys or that turns the line around.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { formatDiagnostic, quoted } from '../../../src/source/diagnostic.ts';

const named = (path: string, found = quoted(path)): string =>
  formatDiagnostic({ path, line: 1, column: 2, rule: 'file-name', field: 'the name', found, write: 'another' });

test('control and invisible characters are shown by their numbers', () => {
  assert.equal(
    named('a\nb\u001B[31m\u202Ec.yaml', '"a"'),
    'a<U+000A>b<U+001B>[31m<U+202E>c.yaml:1:2 file-name: the name: found "a"; write another',
  );
  assert.equal(
    named('\u{E0041}\u200B\uFEFF', '"a\u0085"'),
    '<U+E0041><U+200B><U+FEFF>:1:2 file-name: the name: found "a<U+0085>"; write another',
  );
});

test('letters of every language, and joiners inside emoji, stay as they are', () => {
  for (const name of ['ōtoru', 'пчела', 'נחיל', '蜂', '👩🏽‍🌾', 'नमस्ते', 'e\u0301'])
    assert.equal(named(name), `${name}:1:2 file-name: the name: found "${name}"; write another`);
});
