/* Names of lands in a text: countries, parts of countries, and offices that make rules. */
import { countryOf, currentCode } from '../schemas/where.ts';

/**
 * Names that Unicode's list of regions does not have, by their country: parts of countries that have apiary laws of their own, and
 * offices that make rules. More than one land has an EPA.
 */
const NAMES_OF: Readonly<Record<string, string>> = {
  US: 'Alabama|Alaska|Arizona|Arkansas|California|Colorado|Connecticut|Delaware|Florida|Hawaii|Idaho|Illinois|Indiana|Iowa|Kansas|Kentucky|Louisiana|Maine|Maryland|Massachusetts|Michigan|Minnesota|Mississippi|Missouri|Montana|Nebraska|Nevada|New Hampshire|New Jersey|New Mexico|New York|North Carolina|North Dakota|Ohio|Oklahoma|Oregon|Pennsylvania|Rhode Island|South Carolina|South Dakota|Tennessee|Texas|Utah|Vermont|Virginia|Washington|West Virginia|Wisconsin|Wyoming|USDA|FDA|OSHA|NIOSH',
  CA: 'Ontario|Quebec|British Columbia|Alberta|Manitoba|Saskatchewan|Nova Scotia',
  GB: 'England|Scotland|Wales|Northern Ireland|Britain|Defra|APHA|HSE|VMD|FSA',
  AU: 'New South Wales|Queensland|Tasmania|South Australia|Western Australia',
  NZ: 'MPI',
};
const OF_NO_COUNTRY = 'EPA|European Union|European Commission';
const PART_OF = new Map(Object.entries(NAMES_OF).flatMap(([country, names]) => names.split('|').map((name) => [name, country])));
/** Names of countries of ISO 3166-1 too, by Unicode's list of regions. */
const LAND_OF = new Map([...countries(), ...PART_OF]);
/** Any of these names. */
export const LAND_NAMES = wordsIn([...LAND_OF.keys(), ...OF_NO_COUNTRY.split('|')]);

/** The longest name counts, since one may be a part of another. */
function wordsIn(names: Iterable<string>): RegExp {
  return new RegExp(`\\b(?:${[...names].sort((a, b) => b.length - a.length).join('|')})\\b`);
}

function countries(): [name: string, code: string][] {
  const names = new Intl.DisplayNames(['en'], { type: 'region', fallback: 'none' });
  const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
  return letters
    .flatMap((one) => letters.map((other) => one + other))
    .filter((code) => currentCode(code) === code)
    .flatMap((code): [string, string][] => {
      const name = names.of(code);
      return name !== undefined && /^\p{Lu}[\p{L} ]+$/u.test(name) && !/Unknown|Pseudo|World/.test(name) ? [[name, code]] : [];
    });
}

/** Finds the first name in a text that belongs to another country than `place`. */
const foreign = (known: ReadonlyMap<string, string>) => {
  const names = new RegExp(wordsIn(known.keys()), 'g');
  return (text: string, place: string): string | null => text.match(names)?.find((name) => known.get(name) !== countryOf(place)) ?? null;
};
/** A page may name another country for many reasons, and its parts and offices for few. */
export const foreignPart = foreign(PART_OF);
export const foreignLand = foreign(LAND_OF);
