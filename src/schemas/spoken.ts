/* The language of an entry's words. The collection `spoken` holds one for each entry that was translated, or that is in another language than the club's. */
import type { Tongue } from '../../shared/country/language.ts';
import type { Day } from '../../shared/days/day.ts';

export type Spoken = {
  tongue: Tongue;
  /** Of a translation: who checked it as a speaker who keeps bees, and whether the original has changed since it was made. */
  translated?: { checked?: Day | undefined; by?: string | undefined; isOlder: boolean };
};
