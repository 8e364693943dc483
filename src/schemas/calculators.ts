/*
 * The one list of calculators, in list order. Each has a page at /work-it-out/<slug>/ where the club has the figures that it `needs`.
 * Two need rows of the club's own land too: lib/rooms says which.
 */
export type Calculator = {
  readonly slug:
    | 'mite-count'
    | 'count-day'
    | 'sampling-plan'
    | 'sticky-board'
    | 'syrup'
    | 'winter-stores'
    | 'package-calendar'
    | 'package-order'
    | 'weight-check'
    | 'brood-dates'
    | 'treatment-window'
    | 'degree-days';
  readonly title: string;
  readonly lead: string;
  /** Figures without which its page has nothing to say. */
  readonly needs: readonly string[];
};

const PACKAGE_DAYS = [
  'queen-candy-release-days',
  'queen-cage-look-days',
  'eggs-after-release-days',
  'foundation-extra-days',
  'first-look-days',
  'capped-day-worker',
  'worker-days',
];

export const calculators: readonly Calculator[] = [
  { slug: 'mite-count', title: 'Mite count', lead: 'Mites per hundred bees, how sure that is, and whether to act.', needs: [] },
  { slug: 'count-day', title: 'Count day', lead: 'The mite counts of one evening together, and the file for the club.', needs: [] },
  { slug: 'sampling-plan', title: 'Sampling plan', lead: 'How many bees and colonies to look at, and how often that misses.', needs: [] },
  { slug: 'sticky-board', title: 'Sticky board', lead: 'Mites that fall in a day, and why a board tells no more.', needs: [] },
  { slug: 'syrup', title: 'Syrup', lead: 'Sugar, water and syrup by weight or volume, and when it would grain.', needs: [] },
  {
    slug: 'winter-stores',
    title: 'Winter stores',
    lead: 'What is in the hive, what is short, and the syrup that makes it up.',
    needs: ['winter-stores-target', 'frame-honey-deep', 'feed-efficiency', 'stores-water-share'],
  },
  {
    slug: 'package-calendar',
    title: 'Package calendar',
    lead: 'What happens when, from the day your package goes in.',
    needs: PACKAGE_DAYS,
  },
  {
    slug: 'package-order',
    title: 'Package order',
    lead: 'What an order of packages weighs and needs, and a sheet for pick-up.',
    needs: ['bees-per-pound'],
  },
  { slug: 'weight-check', title: 'Weight check', lead: 'A spot check of net weights you bought, by a published rule.', needs: [] },
  {
    slug: 'brood-dates',
    title: 'Brood dates',
    lead: 'From what you saw in a cell: when it was laid, is sealed, emerges, and lays.',
    needs: ['worker-days', 'queen-days', 'drone-days', 'capped-day-worker', 'capped-day-queen', 'capped-day-drone'],
  },
  {
    slug: 'treatment-window',
    title: 'What the label rows rule out',
    lead: 'Your weather, boxes and brood against dated rows of labels. Your label decides.',
    needs: [],
  },
  { slug: 'degree-days', title: 'Degree-days', lead: 'Warmth added up day by day, by a method that is named.', needs: [] },
];

export const calculatorNames: readonly string[] = calculators.map(({ slug }) => slug);
