/* Titles of the calculators, and what each is for. */
import type { Calculator } from './calculators.ts';

export const tools: Readonly<Record<Calculator['slug'], { readonly title: string; readonly lead: string }>> = {
  'mite-count': { title: 'Mite count', lead: 'Mites per hundred bees, how sure that is, and whether to act.' },
  'count-day': { title: 'Count day', lead: 'The mite counts of one evening together, and the file for the club.' },
  'sampling-plan': { title: 'Sampling plan', lead: 'How many bees and colonies to look at, and how often that misses.' },
  'sticky-board': { title: 'Sticky board', lead: 'Mites that fall in a day, and why a board tells no more.' },
  syrup: { title: 'Syrup', lead: 'Sugar, water and syrup by weight or volume, and when it would grain.' },
  'winter-stores': { title: 'Winter stores', lead: 'What is in the hive, what is short, and the syrup that makes it up.' },
  'package-calendar': { title: 'Package calendar', lead: 'What happens when, from the day your package goes in.' },
  'package-order': { title: 'Package order', lead: 'What an order of packages weighs and needs, and a sheet for pick-up.' },
  'weight-check': { title: 'Weight check', lead: 'A spot check of net weights you bought, by a published rule.' },
  'brood-dates': { title: 'Brood dates', lead: 'From what you saw in a cell: when it was laid, is sealed, emerges, and lays.' },
  'treatment-window': {
    title: 'What the label rows rule out',
    lead: 'Your weather, boxes and brood against dated rows of labels. Your label decides.',
  },
  'degree-days': { title: 'Degree-days', lead: 'Warmth added up day by day, by a method that is named.' },
};
