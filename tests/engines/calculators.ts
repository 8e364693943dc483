/*
 * Each calculator worked once by typing: a wrong value, then right ones with an answer that can be checked by hand. The answer is an
 * output by its name, in the unit of the name.
 */

export interface Worked {
  slug: string;
  /** A field by its name, and a text that is no value of it. */
  wrong: readonly [field: string, text: string];
  right: readonly (readonly [field: string, text: string])[];
  /** Radio buttons and options, as field and value. */
  choose?: readonly (readonly [field: string, value: string])[];
  answer: readonly [output: string, value: string];
  /** Why this is the answer. */
  from: string;
}

export const worked: readonly Worked[] = [
  {
    slug: 'mite-count',
    wrong: ['mites', '1,5'],
    right: [
      ['label', 'Oak'],
      ['mites', '9'],
    ],
    answer: ['per-100', '3'],
    from: '9 mites in 300 bees are 3 in 100',
  },
  {
    slug: 'count-day',
    wrong: ['mites', '1,5'],
    right: [
      ['label', 'Oak'],
      ['mites', '9'],
      ['date', 'August 15, 2026'],
    ],
    answer: ['all-per-100', '3'],
    from: '9 mites in 300 bees are 3 in 100',
  },
  {
    slug: 'sampling-plan',
    wrong: ['certainty', '100'],
    right: [
      ['share', '1'],
      ['certainty', '95'],
    ],
    answer: ['bees-needed', '299'],
    from: 'ln 0.05 / ln 0.99 = 298.07, rounded up',
  },
  {
    slug: 'sticky-board',
    wrong: ['days', 'x'],
    right: [
      ['mites', '20'],
      ['days', '5'],
    ],
    answer: ['per-day', '4'],
    from: '20 mites in 5 days',
  },
  {
    slug: 'syrup',
    wrong: ['amount', 'x'],
    right: [
      ['sugar-parts', '2'],
      ['water-parts', '1'],
      ['amount', '25'],
    ],
    answer: ['water-kg', '5.669904625'],
    from: 'half of 25 lb by weight is 12.5 lb, of 0.45359237 kg each',
  },
  {
    slug: 'package-calendar',
    wrong: ['installed', 'soon'],
    right: [['installed', 'April 18, 2026']],
    answer: ['bees-at-start', '10500'],
    from: '3 lb of 3,500 bees each',
  },
  {
    slug: 'package-order',
    wrong: ['allowance', 'x'],
    right: [
      ['packages', '10'],
      ['pounds', '3'],
      ['allowance', '10'],
    ],
    answer: ['net-lb', '30'],
    from: '10 packages of 3 lb',
  },
  {
    slug: 'weight-check',
    wrong: ['label-g', 'x'],
    choose: [['rule', 'us']],
    right: [
      ['label-g', '16'],
      ['lot', '48'],
      ['weights-g', '16.1, 16.2, 16, 16.1, 16.1, 16.1, 16.2, 16, 16.1, 16.1, 16.1, 16.1'],
    ],
    answer: ['mean-error', '2.834952312'],
    from: 'the mean of the twelve is 0.1 oz over 16 oz, and 1 oz is 28.349523125 g',
  },
  {
    slug: 'winter-stores',
    wrong: ['deep', 'x'],
    right: [
      ['deep', '5'],
      ['medium', '4'],
    ],
    answer: ['short-kg', '6.35029318'],
    from: 'the row of 5 deep and 4 medium frames in tables/stores.ts: 14 lb short of 60, of 0.45359237 kg each',
  },
  {
    slug: 'brood-dates',
    wrong: ['date', 'soon'],
    choose: [['seen', 'sealed']],
    right: [['date', 'May 20, 2026']],
    answer: ['emerges-latest', '2026-06-02'],
    from: 'the row of sealed worker brood in tables/brood.ts: 13 days later at the latest',
  },
  {
    slug: 'treatment-window',
    wrong: ['high', 'warm'],
    right: [
      ['start', 'August 10, 2026'],
      ['lowest-high', '65'],
      ['high', '82'],
    ],
    answer: ['state', 'ask'],
    from: 'our rule: where nobody has checked the registration, ask first',
  },
  {
    slug: 'degree-days',
    wrong: ['base', 'x'],
    choose: [['method', 'simple']],
    right: [
      ['days', '43/63'],
      ['base', '50'],
    ],
    answer: ['total', '3'],
    from: '(43 + 63) / 2 - 50',
  },
];
