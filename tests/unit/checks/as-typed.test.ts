/* Prose as people write it: readers see what was typed, without a lost character and without a diagnostic. */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { parseProse, plainText } from '../../../src/source/prose.ts';
import { rows } from '../../rows.ts';

const same = [
  'Act at <3 mites per 100 bees; store at <= 20 C.',
  'Write {name} on the lid.',
  'Write {colony name} on the lid.',
  'Feed 2~3 l in April and 4~5 l in May.',
  'import the queen with care.',
  'export nothing today.',
  'A box of 5\'10" and 3/4 more.',
  'Ratio 2:1 at 18:30.',
  '#7 is not a heading.',
  'Hive <name> on <date>.',
  'R&D & more; 5 < 6 > 4.',
  'A_b_c and 2_3_4 stay.',
  '-5 °C is cold.',
  '100 % sure (c) 2026...',
  'Price: $5 and $6.',
  'a ^b^ c',
  '{{ twice }}',
  '{/* note */}',
  '<3 <3 <3',
];

rows(
  'shown as typed',
  same.map((text) => ({ case: text, given: text, expect: text, from: 'the words themselves' })),
  (given, expect) => assert.equal(plainText(parseProse(given)), expect),
);

test('lines and columns stay correct after any character', () => {
  const tree = parseProse('{a} < ~ import\n\n🐝🐝 [words](/pests/)\n');
  const paragraph = tree.children[1] as { children: { type: string; position?: { start: { line: number; column: number } } }[] };
  const link = paragraph.children.find(({ type }) => type === 'link');
  assert.deepEqual([link?.position?.start.line, link?.position?.start.column], [3, 6]);
});

test('no text of ordinary characters breaks the parser', () => {
  const piece = fc.constantFrom(
    '<',
    '>',
    '{',
    '}',
    '~',
    '*',
    '_',
    '`',
    '#',
    '[',
    ']',
    '(',
    ')',
    '|',
    '!',
    ':',
    '-',
    '+',
    '\n',
    ' ',
    'import',
    'export',
    'a',
    '5',
    '&',
    '\\',
    '"',
    '/',
    '=',
    '🐝',
    'é',
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 40 }), (pieces) => void plainText(parseProse(pieces.join('')))),
    { numRuns: 3000 },
  );
});
