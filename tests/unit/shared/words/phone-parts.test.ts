// Phone numbers in a sentence. The number is that of the US poison centers (Health Resources and Services Administration).
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { phoneParts } from '../../../../shared/words/phone-parts.ts';

for (const [sentence, expected] of [
  ['No number.', [{ words: 'No number.' }]],
  [
    'Call 1-800-222-1222, label in hand.',
    [{ words: 'Call ' }, { words: '1-800-222-1222', dials: '18002221222' }, { words: ', label in hand.' }],
  ],
  ['+44-131-496-0000', [{ words: '+44-131-496-0000', dials: '+441314960000' }]],
  ['Since 2026-04-18, rinse 15-20 minutes.', [{ words: 'Since 2026-04-18, rinse 15-20 minutes.' }]],
] as const)
  test(sentence, () => assert.deepEqual(phoneParts(sentence), expected));
