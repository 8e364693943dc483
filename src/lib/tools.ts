/* What the page of a calculator needs besides its sum: title and lead, who to ask, its cautions. */
import { calculators, type Calculator } from '../schemas/calculators.ts';
import { HAZARDS_OF, type Work } from '../schemas/hazards.ts';
import { dayOf, partsOf, type Day } from '../../shared/days/day.ts';
import type { Almanac } from './content.ts';
import { askOf, type Asked } from './page-context.ts';

export function toolOf(slug: Calculator['slug']): Calculator {
  return calculators.find((each) => each.slug === slug)!;
}

/** Who to ask after a calculation: the first of these duties that the club has. */
export function toolContact(almanac: Almanac, duties: readonly string[]): Asked | undefined {
  const duty = duties.find((each) => almanac.club.contacts.some((contact) => contact.duty === each));
  return duty === undefined ? undefined : askOf(almanac, duty);
}

/** A day of an example, given as it is in the north. South of the equator it is half a year later, in the same part of the year. */
export function exampleDay({ club }: Pick<Almanac, 'club'>, edition: Day, month: number, day: number): Day {
  return dayOf(partsOf(edition).year, club.hemisphere === 'south' ? ((month + 5) % 12) + 1 : month, day);
}

/** The work of a calculator's page, where the club has the cautions for it. Checks require cautions only for a club's own pages. */
export function toolWork(almanac: Almanac, work: readonly Work[]): Work[] {
  return work.filter((each) => HAZARDS_OF[each].every((hazard) => almanac.cautions.has(hazard)));
}
