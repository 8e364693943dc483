// Hand-outs: the choice in the address, the order of its pages, and the short names of sources.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { addressOf, choiceIn, moved } from '../../../src/client/hand-out/address.ts';
import { shortSource, shortSources } from '../../../src/client/hand-out/short-source.ts';

test('a choice is read from its address, in order, each page once', () => {
  const { refused, ...choice } = choiceIn(
    '?of=know-how/stings,/lists/package-arrival/,meetings/2026-05-16-yard-day,know-how/stings&title=Yard+day',
  );
  assert.deepEqual(choice, {
    pages: ['know-how/stings', 'lists/package-arrival', 'meetings/2026-05-16-yard-day'],
    title: 'Yard day',
    apart: false,
  });
  assert.deepEqual(refused, []);
  assert.equal(addressOf(choice), '?of=know-how/stings,lists/package-arrival,meetings/2026-05-16-yard-day&title=Yard%20day');
  assert.deepEqual(choiceIn('').pages, []);
  assert.equal(addressOf(choiceIn('')), '');
});

test('what is no path of a page is refused and named', () => {
  const { pages, refused } = choiceIn('?of=../../secret,https://other.example/x,lists//x,pests/varroa,%3Cimg%3E');
  assert.deepEqual(pages, ['pests/varroa']);
  assert.deepEqual(refused, ['../../secret', 'https://other.example/x', 'lists//x', '<img>']);
});

const path = fc.stringMatching(/^[a-z][a-z0-9-]{0,20}\/[a-z0-9][a-z0-9-]{0,40}$/);

test('any choice survives its address, and any text gives a choice', () => {
  fc.assert(
    fc.property(fc.uniqueArray(path), fc.string({ maxLength: 60, unit: 'grapheme' }), fc.boolean(), (pages, words, apart) => {
      const choice = { pages, title: words.trim(), apart };
      assert.deepEqual(choiceIn(addressOf(choice)), { ...choice, refused: [] });
    }),
  );
  fc.assert(fc.property(fc.string(), (search) => choiceIn(`?${search}`).pages.every((page) => !page.includes('..'))));
});

test('a page moves by one place, and not past an end', () => {
  assert.deepEqual(moved(['a', 'b', 'c'], 'b', -1), ['b', 'a', 'c']);
  assert.deepEqual(moved(['a', 'b', 'c'], 'b', 1), ['a', 'c', 'b']);
  assert.deepEqual(moved(['a', 'b', 'c'], 'a', -1), ['a', 'b', 'c']);
  assert.deepEqual(moved(['a', 'b', 'c'], 'c', 1), ['a', 'b', 'c']);
  assert.deepEqual(moved(['a'], 'z', 1), ['a']);
});

test('a source is named by its publisher and year, once', () => {
  for (const [words, short] of [
    [
      'Visscher, Vetter and Camazine 1996, Removing bee stings, Lancet 348:301-302. Anywhere. Likely.',
      'Visscher, Vetter and Camazine 1996',
    ],
    ['State of Queensland, American foulbrood. Queensland. Likely. Checked March 3, 2026.', 'State of Queensland'],
    ['Morse (Cornell University, Department of Entomology), American foulbrood', 'Morse (Cornell University, Department of Entomology)'],
    ['Common practice. No source.', 'Common practice'],
    ['Golden 2007', 'Golden 2007'],
  ] as const)
    assert.equal(shortSource(words), short);
  assert.deepEqual(shortSources(['Golden 2007, A', 'Golden 2007, B', '', 'Muller 2005']), ['Golden 2007', 'Muller 2005']);
});
