/* What the page of a calculator needs besides its sum: title and lead, whom to ask, its cautions. */
import { calculatorNames, calculators, type Calculator } from '../schemas/calculators.ts';
import { HAZARDS_OF, type Work } from '../schemas/hazards.ts';
import type { Almanac } from './content.ts';
import { askOf, type Asked } from './page-context.ts';

/** False for the address of a calculator that this almanac does not have. Nothing may link to it. */
export const linkExists = (address: string): boolean => {
  const [, slug] = /^\/work-it-out\/([^/#]+)/.exec(address) ?? [];
  return slug === undefined || calculatorNames.includes(slug);
};

export function toolOf(slug: Calculator['slug']): Calculator {
  return calculators.find((each) => each.slug === slug)!;
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
