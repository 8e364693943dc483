// Excerpt of a search result: where it begins, what is marked, and numbers as on the page.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { excerptOf } from '../../../src/client/search/excerpt.ts';

const marked = (text: string, sought: string[]): string =>
  excerptOf({ title: '', text, sections: [] }, sought)
    .pieces.map(({ text: piece, marked }) => (marked ? `[${piece}]` : piece))
    .join('');
const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');
const filler = (words: number): string => Array.from({ length: words }, (_, at) => `word${at}`).join(' ');

test('words are marked in any form, without punctuation', () => {
  assert.equal(marked('Feed syrup. Two hives, fed (feeding).', ['feed', 'hive']), '[Feed] syrup. Two [hives], [fed] ([feeding]).');
});

test('ratios, ranges, fractions and units read as on the page', () => {
  const text = 'Mix 2:1, keep 55 to 64 %, at 50\u00a0°F (10\u00a0°C), 1/2 inch.';
  assert.equal(marked(text, ['2:1', '1/2', '64']), 'Mix [2:1], keep 55 to [64\u00a0%], at 50\u00a0°F (10\u00a0°C), [1/2] inch.');
});

test('a number and its unit stay on one line, where the engine lost the non-breaking space', () => {
  assert.equal(
    marked('at 50 °F (10 °C), 55 to 64 %, ½ in, 3 lb. Two bees', []),
    'at 50\u00a0°F (10\u00a0°C), 55 to 64\u00a0%, ½\u00a0in, 3\u00a0lb. Two bees',
  );
  assert.equal(marked('3 in 10 inches, 2 goats, 5 day-old', []), '3\u00a0in 10 inches, 2 goats, 5\u00a0day-old');
});

test('the excerpt begins with a sentence where most of the words are', () => {
  assert.equal(
    marked(`${filler(40)}. A mite count tells. ${filler(40)}`, ['mite', 'count']).slice(0, 30),
    '… A [mite] [count] tells. word',
  );
});

test('without any match the excerpt is the beginning, and a short text is whole', () => {
  assert.equal(marked('Short and whole.', ['mite']), 'Short and whole.');
  assert.match(marked(filler(60), ['mite']), /^word0 .*\s…$/);
  assert.equal(marked('', ['mite']), '');
});

test('the excerpt is a literal part of the page, for any query', () => {
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom('mite', 'mites.', '<b>', '&amp;', '2:1', '55', 'to', '64\u00a0%', '64 %', '½', 'end.', '…', '"', 'é'), {
        maxLength: 80,
      }),
      fc.array(fc.constantFrom('mite', '2:1', '64', 'b', '1/2'), { maxLength: 3 }),
      (words, sought) => {
        const shown = excerptOf({ title: '', text: words.join(' '), sections: [] }, sought)
          .pieces.map(({ text }) => text)
          .join('')
          .replace(/^… /, '')
          .replace(/\s…$/, '');
        assert.ok(spaced(words.join(' ')).includes(spaced(shown)), shown);
      },
    ),
  );
});

test('a section is where the words are, and not where the title says as much', () => {
  const sections = [
    { id: 'what-you-see', text: 'What you see' },
    { id: 'rope', text: 'The rope test' },
  ];
  const text = `A sick brood. ${filler(40)}. What you see. ${filler(40)}. The rope test. Stir with a match and draw a thread. ${filler(40)}.`;
  const idOf = (...sought: string[]): string | undefined => excerptOf({ title: 'Sick brood', text, sections }, sought).section?.id;
  assert.equal(idOf('match', 'thread'), 'rope');
  assert.equal(idOf('rope'), 'rope', 'its heading has the word');
  assert.equal(idOf('thread'), undefined, 'one word says too little');
  assert.equal(idOf('sick', 'brood'), undefined, 'the title has the words');
  assert.equal(idOf('word3', 'word4'), undefined, 'before the first heading');
});
