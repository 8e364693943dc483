// The piece of a page that a result shows: where it begins, what is marked, and that its numbers read as on the page.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { excerptOf } from '../../../src/client/search/excerpt.ts';

const told = (text: string, sought: string[]): string =>
  excerptOf(text, sought)
    .map(({ text: piece, marked }) => (marked ? `[${piece}]` : piece))
    .join('');
const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');
const filler = (words: number): string => Array.from({ length: words }, (_, at) => `word${at}`).join(' ');

test('words are marked in any form, without the signs around them', () => {
  assert.equal(told('Feed syrup. Two hives, fed (feeding).', ['feed', 'hive']), '[Feed] syrup. Two [hives], [fed] ([feeding]).');
});

test('ratios, ranges, fractions and units read as on the page', () => {
  const text = 'Mix 2:1, keep 55 to 64 %, at 50\u00a0°F (10\u00a0°C), 1/2 inch.';
  assert.equal(told(text, ['2:1', '1/2', '64']), 'Mix [2:1], keep 55 to [64\u00a0%], at 50\u00a0°F (10\u00a0°C), [1/2] inch.');
});

test('a number and its unit are kept on one line again, where the engine lost the space that must not break', () => {
  assert.equal(
    told('at 50 °F (10 °C), 55 to 64 %, ½ in, 3 lb. Two bees', []),
    'at 50\u00a0°F (10\u00a0°C), 55 to 64\u00a0%, ½\u00a0in, 3\u00a0lb. Two bees',
  );
  assert.equal(told('3 in 10 inches, 2 goats, 5 day-old', []), '3\u00a0in 10 inches, 2 goats, 5\u00a0day-old');
});

test('it begins with a sentence where most of the words stand', () => {
  assert.equal(told(`${filler(40)}. A mite count tells. ${filler(40)}`, ['mite', 'count']).slice(0, 30), '… A [mite] [count] tells. word');
});

test('where none of them stands it is the beginning; a short text is whole', () => {
  assert.equal(told('Short and whole.', ['mite']), 'Short and whole.');
  assert.match(told(filler(60), ['mite']), /^word0 .*\s…$/);
  assert.equal(told('', ['mite']), '');
});

test('it is a piece of the page, letter by letter, whatever is sought', () => {
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom('mite', 'mites.', '<b>', '&amp;', '2:1', '55', 'to', '64\u00a0%', '64 %', '½', 'end.', '…', '"', 'é'), {
        maxLength: 80,
      }),
      fc.array(fc.constantFrom('mite', '2:1', '64', 'b', '1/2'), { maxLength: 3 }),
      (words, sought) => {
        const shown = excerptOf(words.join(' '), sought)
          .map(({ text }) => text)
          .join('')
          .replace(/^… /, '')
          .replace(/\s…$/, '');
        assert.ok(spaced(words.join(' ')).includes(spaced(shown)), shown);
      },
    ),
  );
});
