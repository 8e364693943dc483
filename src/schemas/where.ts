/*
 * Where a thing holds: `for:` on entries and rows, `place:` of a book, `land:` of a club. ISO 3166-1 codes of countries,
 * ISO 3166-2 codes of their parts, and three words for more than a country. Only the shape of a part's code is checked.
 */
import { z } from 'astro/zod';

/** The land a club lies in, and its half of the world. */
export type Here = { land: string; hemisphere: 'north' | 'south' };

const CODE = /^[A-Z]{2}(?:-[A-Z0-9]{1,3})?$/;
/** Codes that Unicode's list of regions has beside those of ISO 3166-1. */
const NOT_ISO = new Set(['AC', 'CP', 'CQ', 'DG', 'EA', 'EU', 'EZ', 'IC', 'QO', 'TA', 'UN', 'XA', 'XB', 'XK', 'ZZ']);
const names = new Intl.DisplayNames(['en'], { type: 'region', fallback: 'none' });

/** The code that an older or other code stands for: GB for UK. */
export const currentCode = (country: string): string => new Intl.Locale(`und-${country}`).region ?? country;
export const countryOf = (code: string): string => code.slice(0, 2);

const isCode = (code: string): boolean => {
  const country = countryOf(code);
  return CODE.test(code) && !NOT_ISO.has(country) && currentCode(country) === country && names.of(country) !== undefined;
};

/** "New Zealand" for NZ and each part of it. */
const landName = (code: string): string => (CODE.test(code) ? (names.of(countryOf(code)) ?? code) : code);

const CODE_HINT = 'a code of ISO 3166 in capitals, such as NZ or US-OH';
const WIDE = ['anywhere', 'north', 'south'] as const;
export type Where = (typeof WIDE)[number] | (string & {});

/** The code that was probably meant. */
const suggestion = (code: string): string => {
  const upper = code.trim().toUpperCase().replace('_', '-');
  const [country = '', part] = upper.split('-');
  const held = /^[A-Z]{2}$/.test(country) ? [currentCode(country), part].filter(Boolean).join('-') : codeNamed(upper);
  return isCode(held) ? `${held}, the code of ${landWords(held)} in ISO 3166` : CODE_HINT;
};

const LETTERS = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];

/** The code of a country by its English name in capitals; empty for any other words. */
const codeNamed = (upper: string): string =>
  LETTERS.flatMap((first) => LETTERS.map((second) => first + second)).find(
    (code) => isCode(code) && names.of(code)?.toUpperCase() === upper.replace(/^THE /, ''),
  ) ?? '';

const code = (allowed: (text: string) => boolean, hint: string) =>
  z.string({ error: hint }).superRefine((text, context) => {
    if (!allowed(text)) context.addIssue({ code: 'custom', message: suggestion(text) === CODE_HINT ? hint : suggestion(text) });
  });

const WHERE_HINT = `anywhere, north, south, or ${CODE_HINT}`;
const isWhere = (text: string): boolean => (WIDE as readonly string[]).includes(text) || isCode(text);

export const land = () => code(isCode, CODE_HINT).meta({ examples: ['US-OH'] });
export const where = () => code(isWhere, WHERE_HINT).meta({ examples: ['US'] });

/** Fields of whatever may hold in one land and not in another. */
export const holding = {
  for: z
    .union([where(), z.array(where())], { error: `${WHERE_HINT}, or a list of these` })
    .optional()
    .describe('Where it holds, where that is not the place of its book: anywhere, north, south, a code of ISO 3166, or a list.')
    .meta({ examples: ['US'] }),
};

export type For = Where | readonly Where[];

/** Whether something that holds in `places` holds for a club here. What holds in a country holds in each part of it. */
export function holdsHere(places: For, here: Here): boolean {
  return [places]
    .flat()
    .some((place) => place === 'anywhere' || place === here.hemisphere || place === here.land || place === countryOf(here.land));
}

/** In a sentence: "the United States". */
export const landWords = (code = ''): string =>
  CODE.test(code) ? `${/^United|lands$/.test(landName(code)) ? 'the ' : ''}${landName(code)}` : 'this place';

/** From the widest place to the narrowest. */
export const narrowness = (place: Where): number => (place === 'anywhere' ? 0 : /^[a-z]/.test(place) ? 1 : place.length === 2 ? 2 : 3);
