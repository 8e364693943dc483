// Search terms: units, fractions, endings, phonetic spellings, and the word lists for the browser.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { canonical, otherForms } from '../../../../shared/words/canonical.ts';
import { slips } from '../../../../shared/words/slips.ts';
import { readWords, termsIn } from '../../../../shared/words/terms.ts';
import { readWordList, writeWords } from '../../../../shared/words/word-list.ts';
import { rows, type Row } from '../../../rows.ts';

const same: Row<[string, string], boolean>[] = (
  [
    // Units and numbers, as typed and as printed.
    ['3 lbs', '3 pounds', true],
    ['2 qts', '2 quarts', true],
    ['41 F', '41 °F', true],
    ['41f', '41 °F', true],
    ['10 C', '10 °C', true],
    ['½ inch', '1/2 inches', true],
    ['18 %', '18 percent', true],
    ['10,000 bees', '10000 bees', true],
    ['2:1', '2:1', true],
    ['2:1', '21', false],
    ['1,5', '15', false],
    ['18:30', '1830', false],
    // Endings that change nothing.
    ['feeding', 'feed', true],
    ['fed', 'feeds', true],
    ['robbed', 'robbing', true],
    ['hives', 'hive', true],
    ['moldy', 'moldy', true],
    ['larvae', 'larva', true],
    ['mice', 'mouse', true],
    ['boxes', 'box', true],
    ['cells', 'cell', true],
    ['bees', 'bee', true],
    ['frozen', 'freezing', true],
    ['died', 'dead', true],
    // British spelling.
    ['colour', 'color', true],
    ['mould', 'mold', true],
    ['neighbours', 'neighbor', true],
    ['litres', 'liter', true],
    ['grey', 'gray', true],
    // Short forms of everyday words.
    ['kids', 'child', true],
    ['vet', 'veterinarian', true],
    ['temp', 'temperature', true],
    // Different things stay different.
    ['queen', 'queens', true],
    ['queen', 'quean', false],
    ['super', 'supersedure', false],
    ['hour', 'or', false],
    ['bee', 'be', false],
    ['sting', 'string', false],
    ['seed', 'see', false],
    ['virus', 'viru', false],
    ['glass', 'glas', false],
  ] as const
).map(([a, b, expect]) => ({ case: `${a} / ${b}`, given: [a, b] as [string, string], expect, from: 'English' }));
rows('one term', same, ([a, b], expect) => assert.equal(termsIn(a).join(' ') === termsIn(b).join(' '), expect));

test('accents, capitals and apostrophes do not count; punctuation alone is no word', () => {
  assert.deepEqual(termsIn("VARROA Réine can't"), termsIn('varroa reine cant'));
  assert.deepEqual(termsIn('?!  <> —'), []);
});

test('names of built-in properties are ordinary words', () => {
  for (const word of ['constructor', 'prototype', '__proto__', 'tostring'])
    for (const term of termsIn(word)) assert.equal(typeof term, 'string');
});

test('a number and its unit stay one word of a result where the page keeps them together', () => {
  assert.deepEqual(
    readWords('at 50\u00a0°F (10\u00a0°C).').map(({ word }) => word),
    ['at', '50\u00a0°F', '(10\u00a0°C).'],
  );
  assert.deepEqual(readWords('at 50\u00a0°F')[1]!.terms, ['50', 'fahrenheit']);
});

const nearer: Row<[typed: string, right: string, other: string], true>[] = (
  [
    ['verroa', 'varroa', 'verify'],
    ['recipie', 'recipe', 'receive'],
    ['begginer', 'beginner', 'bigger'],
    ['tounges', 'tongues', 'tonnes'],
    ['chimny', 'chimney', 'chimp'],
    ['enterance', 'entrance', 'interface'],
    ['nozema', 'nosema', 'eczema'],
    ['recieve', 'receive', 'relieve'],
  ] as const
).map(([typed, right, other]) => ({
  case: `${typed} is ${right}, not ${other}`,
  given: [typed, right, other] as [string, string, string],
  expect: true as const,
  from: 'as typed',
}));
rows('nearer', nearer, ([typed, right, other]) =>
  assert.ok(slips(typed, right) < slips(typed, other), `${slips(typed, right)} and ${slips(typed, other)}`),
);

test('edit distance: nothing is nearer than the word itself, and the minimum of slips never exceeds the cost', () => {
  const word = fc.stringMatching(/^[a-z]{1,9}$/);
  fc.assert(
    fc.property(word, word, (a, b) => {
      assert.equal(slips(a, a), 0);
      if (a !== b) assert.ok(slips(a, b) > 0);
      // Never more than removing all letters and inserting all.
      assert.ok(slips(a, b) <= a.length + b.length + 0.4 + 1e-9);
      const most = 2;
      const bounded = slips(a, b, most);
      assert.ok(bounded > most === slips(a, b) > most, `${a} ${b}: ${bounded} and ${slips(a, b)}`);
    }),
  );
});

test('a compressed list of words comes back unchanged', () =>
  fc.assert(
    fc.property(fc.uniqueArray(fc.stringMatching(/^[a-z0-9/:.,%é]{1,14}$/), { maxLength: 60 }), (words) =>
      assert.deepEqual(readWordList(writeWords(words)), words),
    ),
  ));

const canonicals: Row<string, string>[] = (
  [
    ['lbs', 'pound'],
    ['%', 'percent'],
    ['fed', 'feed'],
    ['dying', 'die'],
    ['vet', 'veterinarian'],
    ['colour', 'color'],
    ['2:1', '2to1'],
    ['1/2', '1over2'],
    // The engine handles endings itself.
    ['feeding', 'feeding'],
    ['2.5', '2.5'],
  ] as const
).map(([given, expect]) => ({ case: `${given} is asked for as ${expect}`, given, expect, from: 'English' }));
rows('as the engine knows it', canonicals, (given, expect) => assert.equal(canonical(given), expect));

test('a text gets the words that the engine would miss, each with its number of occurrences', () => {
  assert.deepEqual(
    [...otherForms('Fed 2:1 twice, fed 2.5 lb. An e-reader, a top-bar hive, 10mm, 2–3 bees.')],
    [
      ['feed', 2],
      ['2to1', 1],
      ['pound', 1],
      ['e', 1],
      ['10', 1],
      ['mm', 1],
      ['2', 1],
      ['3', 1],
    ],
  );
});
