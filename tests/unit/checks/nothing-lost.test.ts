/*
 * One character inserted anywhere into a good file: either a fault is reported, or every typed letter and digit still reaches a reader,
 * in the words, an address, a tag or a field.
 */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { checkFolder } from '../../../src/checks/check.ts';
import type { Diagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder, readText } from '../../../src/source/folder.ts';
import { goodClub } from '../../fixtures/invalid/cases.ts';
import { lostFrom } from './lost.ts';

const good = readFolder(goodClub);
const SIGNS = [
  '"',
  "'",
  ':',
  ': ',
  ' #',
  '#',
  '-',
  '- ',
  '[',
  ']',
  '(',
  ')',
  '{',
  '}',
  '<',
  '>',
  '/>',
  '*',
  '**',
  '_',
  '__',
  '|',
  '> ',
  '\t',
  '\n',
  '\n\n',
  '---\n',
  '```',
  '~',
  '!',
  '🐝',
  '\\',
  '%',
  '@',
  '`',
  '=',
  '==',
  '  ',
  '? ',
  '[^1]',
  '![](',
  '](',
  '1. ',
  '5',
  '12',
  '+ ',
  '  \n',
  '    ',
  '\n    ',
  '0',
  '$',
  '1) ',
  '\n7. ',
  '\n1986. ',
];

test('typed text is shown, or a fault explains why not', () => {
  let clean = 0;
  const place = fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true });
  fc.assert(
    fc.property(fc.constantFrom(...good.entries), place, fc.constantFrom(...SIGNS), (entry, share, sign) => {
      const at = Math.floor(share * entry.text.length);
      const text = entry.text.slice(0, at) + sign + entry.text.slice(at);
      const faults: Diagnostic[] = [];
      const made = readText(entry.path, entry.collection, entry.id, text, faults);
      if (
        !made ||
        faults.length > 0 ||
        checkFolder({ ...good, entries: good.entries.map((each) => (each === entry ? made : each)) }).length > 0
      )
        return;
      clean += 1;
      assert.equal(lostFrom(made), null, JSON.stringify(text.slice(at - 20, at + 30)));
    }),
    { numRuns: 1500, interruptAfterTimeLimit: 12_000, markInterruptAsFailure: false },
  );
  assert.ok(clean > 0);
});
