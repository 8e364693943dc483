/* The numbers of the club's own lines in sentences that every club shares. */
import { deepEqual, equal } from 'node:assert/strict';
import { test } from 'vitest';
import { lineNumber, withLines } from '../../../src/lib/contacts.ts';

// 999 and 111 are the United Kingdom's: gov.uk, "Emergency and urgent care services". Written from memory.
const club = { emergency: { number: '999', name: 'Emergency number', source: 'x' } };

test('each club prints its own numbers, and says so where it gives none', () => {
  equal(lineNumber(club, 'emergency'), '999');
  const poison = { number: '111', name: 'Health line', source: 'x' };
  deepEqual(withLines({ summary: 'Call {emergency}, then {poison}.', says: ['{poison}'], gravity: 4 }, { ...club, poison }), {
    summary: 'Call 999, then 111.',
    says: ['111'],
    gravity: 4,
  });
  equal(withLines('Call the poison line, {poison}.', club), 'Call the poison line, whose number is not given here.');
});

test('other braces stay as they were typed', () => equal(withLines('{name} {emergncy}', club), '{name} {emergncy}'));
