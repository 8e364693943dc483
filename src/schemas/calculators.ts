/* The one list of calculators, in list order. Each has a page at /work-it-out/<slug>/. */
export const calculators = [
  { slug: 'mite-count', title: 'Mite count', lead: 'Mites per hundred bees, how sure that is, and whether to act.' },
  { slug: 'sampling-plan', title: 'Sampling plan', lead: 'How many bees and colonies to look at, and how often that misses.' },
  { slug: 'sticky-board', title: 'Sticky board', lead: 'Mites that fall in a day, and why a board tells no more.' },
  { slug: 'syrup', title: 'Syrup', lead: 'Sugar, water and syrup by weight or volume, and when it would grain.' },
  { slug: 'winter-stores', title: 'Winter stores', lead: 'What is in the hive, what is short, and the syrup that makes it up.' },
  { slug: 'package-calendar', title: 'Package calendar', lead: 'What happens when, from the day your package goes in.' },
  { slug: 'package-order', title: 'Package order', lead: 'What an order of packages weighs and needs, and a sheet for pick-up.' },
  { slug: 'weight-check', title: 'Weight check', lead: 'A spot check of net weights you bought, by a published rule.' },
  { slug: 'brood-dates', title: 'Brood dates', lead: 'From what you saw in a cell: when it was laid, is sealed, emerges, and lays.' },
  {
    slug: 'treatment-window',
    title: 'What the label rows rule out',
    lead: 'Your weather, boxes and brood against dated rows of labels. Your label decides.',
  },
  { slug: 'degree-days', title: 'Degree-days', lead: 'Warmth added up day by day, by a method that is named.' },
] as const;

export type Calculator = (typeof calculators)[number];
export const calculatorNames: readonly string[] = calculators.map(({ slug }) => slug);
