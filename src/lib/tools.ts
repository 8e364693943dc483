/* The calculators in list order. Each has a page at /work-it-out/<slug>/. */
import { HAZARDS_OF, type Work } from '../schemas/hazards.ts';
import type { Almanac } from './content.ts';
import { askOf, type Asked } from './page-context.ts';

export type Tool = { slug: string; title: string; lead: string };

export const TOOLS: readonly Tool[] = [
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
];

/** False for the address of a calculator that this almanac does not have. Nothing may link to it. */
export const linkExists = (address: string): boolean => {
  const [, slug] = /^\/work-it-out\/([^/#]+)/.exec(address) ?? [];
  return slug === undefined || TOOLS.some((tool) => tool.slug === slug);
};

export function toolOf(slug: string): Tool {
  const tool = TOOLS.find((each) => each.slug === slug);
  if (!tool) throw new Error(`toolOf: needs one of the calculators, got ${slug}`);
  return tool;
}

/** Whom to ask after a calculation: the first of these duties that the club has. */
export function toolContact(almanac: Almanac, duties: readonly string[]): Asked | undefined {
  const duty = duties.find((each) => almanac.club.contacts.some((contact) => contact.duty === each));
  return duty === undefined ? undefined : askOf(almanac, duty);
}

/** The work of a calculator's page, where the club has the cautions for it. Checks require cautions only for a club's own pages. */
export function toolWork(almanac: Almanac, work: readonly Work[]): Work[] {
  return work.filter((each) => HAZARDS_OF[each].every((hazard) => almanac.cautions.has(hazard)));
}
