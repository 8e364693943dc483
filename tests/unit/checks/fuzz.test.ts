/*
 * Fuzzing: good files broken at random, cut off anywhere, with lines dropped, doubled or swapped, characters inserted or removed, bytes
 * changed. Check returns diagnostics with positions, or none. It never throws.
 */
import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import fc from 'fast-check';
import { check } from '../../../src/checks/check.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { goodClub, withChanges } from '../../fixtures/invalid/cases.ts';

const FILES = readFolder(goodClub).files.filter((file) => !file.endsWith('.png'));
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
  '<!--',
  '*',
  '**',
  '&a ',
  '*a',
  '|',
  '>',
  '\t',
  '\n',
  '\r\n',
  '\0',
  '---\n',
  '```',
  '~',
  '!',
  '\uFEFF',
  '\uE001',
  '🐝',
  '\\',
  '%',
  '@',
  '`',
  '=',
  '  ',
  '? ',
  '<<: ',
  '[^1]',
  '- [ ] ',
  '<Task id="a" />',
  '<Figure id="',
  '![](',
  '](',
  '&#x41;',
];

const at = fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true });
const mutation = fc.oneof(
  fc.record({ how: fc.constant('cut'), at, to: at, sign: fc.constant('') }),
  fc.record({ how: fc.constantFrom('drop', 'double', 'swap'), at, to: at, sign: fc.constant('') }),
  fc.record({ how: fc.constantFrom('insert', 'replace'), at, to: at, sign: fc.constantFrom(...SIGNS) }),
  fc.record({ how: fc.constant('byte'), at, to: at, sign: fc.constant('') }),
);
type Mutation = { how: string; at: number; to: number; sign: string };

function mutated(bytes: Buffer, { how, at: place, to, sign }: Mutation): Buffer {
  const text = bytes.toString('utf8');
  const [here, there] = [Math.floor(place * text.length), Math.floor(to * text.length)];
  const lines = text.split('\n');
  const [line, other] = [Math.floor(place * lines.length), Math.floor(to * lines.length)];
  if (how === 'cut') return bytes.subarray(0, Math.floor(place * bytes.length));
  if (how === 'drop') lines.splice(line, 1);
  if (how === 'double') lines.splice(line, 0, lines[line]!);
  if (how === 'swap') [lines[line], lines[other]] = [lines[other]!, lines[line]!];
  if (how === 'insert') return Buffer.from(text.slice(0, here) + sign + text.slice(here));
  if (how === 'replace') return Buffer.from(text.slice(0, Math.min(here, there)) + sign + text.slice(Math.min(here, there) + 3));
  if (how === 'byte')
    return Buffer.from(bytes.map((byte, index) => (index === Math.floor(place * bytes.length) ? Math.floor(to * 256) : byte)));
  return Buffer.from(lines.join('\n'));
}

test('a broken file is valid or reported, and never an exception', () => {
  fc.assert(
    fc.property(fc.constantFrom(...FILES), fc.array(mutation, { minLength: 1, maxLength: 3 }), (file, mutations) => {
      withChanges([{ file, savedAs: 'UTF-8 with a mark' }], (directory) => {
        const good = readFileSync(join(goodClub, file));
        writeFileSync(join(directory, file), mutations.reduce(mutated, good));
        for (const fault of check(directory)) {
          assert.ok(fault.line >= 1 && fault.column >= 1 && fault.path !== '', JSON.stringify(fault));
          assert.ok(
            fault.found !== '' && fault.write !== '' && !/undefined|\[object|NaN/.test(fault.found + fault.write + (fault.corrected ?? '')),
            JSON.stringify(fault),
          );
        }
      });
    }),
    { numRuns: 250, interruptAfterTimeLimit: 12_000, markInterruptAsFailure: false },
  );
});
