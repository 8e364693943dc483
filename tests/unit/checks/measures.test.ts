/* Numbers in a sentence that an authority may revise, and numbers that are free. */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { measuresIn } from '../../../src/checks/measures.ts';
import { rows, type Row } from '../../rows.ts';

const from = 'as people write';
const found: Row<string, string[]>[] = [
  { case: 'warmth with a letter', given: 'Not over 85 F (29.5 C).', expect: ['temperature 85 F', 'temperature 29.5 C'], from },
  { case: 'warmth with a sign', given: 'From 50 °F, or 10°C, on.', expect: ['temperature 50 °F', 'temperature 10°C'], from },
  { case: 'a range of warmth', given: 'Best at 20 to 25 C, they say.', expect: ['temperature 20 to 25 C'], from },
  {
    case: 'warmth in words',
    given: 'Under fifty degrees leave it shut; over 50 degrees Fahrenheit look.',
    expect: ['temperature fifty degrees', 'temperature 50 degrees Fahrenheit'],
    from,
  },
  {
    case: 'per cent in three forms',
    given: 'It found 92.9 %, 93 percent, ninety per cent.',
    expect: ['concentration 92.9 %', 'concentration 93 percent', 'concentration ninety per cent'],
    from,
  },
  { case: 'glued to its sign', given: 'A strength of 70% will do.', expect: ['concentration 70%'], from },
  { case: 'in air', given: 'Up to 5 ppm or 1 mg/m3.', expect: ['concentration 5 ppm', 'concentration 1 mg/m3'], from },
  {
    case: 'doses',
    given: 'Give 5 mL a seam, 50 g, two teaspoons or 1.5 oz.',
    expect: ['dose 5 mL', 'dose 50 g', 'dose two teaspoons', 'dose 1.5 oz'],
    from,
  },
  { case: 'halves', given: 'Take ½ oz, or half an ounce.', expect: ['dose ½ oz', 'dose half an ounce'], from },
  {
    case: 'to a hundred',
    given: 'Act at 3 per 100, at 3 mites per 100 bees, at three in a hundred.',
    expect: ['threshold 3 per 100', 'threshold 3 mites per 100', 'threshold three in a hundred'],
    from,
  },
  {
    case: 'a roll and a board',
    given: 'Over 9 mites in a roll, or 10 mites a day.',
    expect: ['threshold 9 mites in a roll', 'threshold 10 mites a day'],
    from,
  },
  { case: 'a range to a hundred', given: 'Between 2 to 3 mites to 100.', expect: ['threshold 2 to 3 mites to 100'], from },
];
rows('found', found, (text, expected) =>
  assert.deepEqual(
    measuresIn(text).map(({ kind, words }) => `${kind} ${words}`),
    expected,
  ),
);

const free: Row<string, null>[] = [
  'On 12 May 2026, at 18:30, bring 3 frames, 2 boxes and 10 combs.',
  'Wait 7 days, 3 weeks or 24 hours; look again on day 9.',
  'A box of 80 lb, a bucket of 5 gallons, 2 cups of sugar, 4 kg of honey.',
  'Ring 330-555-0101, see 40 CFR 156.64, Bulletin 5C-3, section 9.2, page 50 f.',
  'Two colonies, one in ten beekeepers, 300 bees, 18 mites.',
  'The 100 hives of 5 Combs Lane; 3 Frames; 4 Colonies; 2 C-clamps.',
  'A drop of honey, a cup, a degree of care, percent signs.',
  'Sum the degree-days from 1 January: 44 degree-days.',
  '2:1 syrup, 1/2 of them, a third.',
].map((text) => ({ case: text.slice(0, 30), given: text, expect: null, from }));
rows('free', free, (text) => assert.deepEqual(measuresIn(text), []));

test('each position is inside the sentence, in order and unique', () => {
  const word = fc.constantFrom(
    '3',
    '85',
    '1.5',
    'F',
    'C',
    '%',
    'mL',
    'per 100',
    'three',
    'percent',
    'to',
    'mites',
    'a day',
    'degrees',
    'frames',
    '.',
    ',',
    '½',
  );
  fc.assert(
    fc.property(fc.array(word, { maxLength: 14 }), (words) => {
      const text = words.join(' ');
      let end = 0;
      for (const { words: found, index } of measuresIn(text)) {
        assert.equal(text.slice(index, index + found.length), found);
        assert.ok(index >= end);
        end = index + found.length;
      }
    }),
  );
});
