/*
 * Numbers of a text and of its translation. Days are left out, because each language writes them in its own way. A comma and a point may
 * each divide thousands or begin decimals: 1,000 and 1.000 are the same number in two countries.
 */
import type { Tongue } from '../country/language.ts';
import { monthNames } from '../days/month-names.ts';

const SPANISH = [
  'enero',
  'febrero',
  'marzo',
  'abril',
  'mayo',
  'junio',
  'julio',
  'agosto',
  'septiembre',
  'octubre',
  'noviembre',
  'diciembre',
];
const SPAN = '\\d{1,2}(?:(?:–|-| to | al? )\\d{1,2})?';
const ENGLISH_MONTH = `(?:${monthNames.join('|')})`;
const SPANISH_MONTH = `(?:${SPANISH.join('|')})`;
const DAY = new RegExp(
  [
    '\\b\\d{4}-\\d\\d-\\d\\d\\b',
    `\\b${ENGLISH_MONTH}\\s${SPAN}(?!\\d)(?:, \\d{4})?`,
    `\\b${SPAN}\\s${ENGLISH_MONTH}\\b(?:\\s\\d{4})?`,
    `\\b${ENGLISH_MONTH} \\d{4}\\b`,
    `\\b${SPAN} de ${SPANISH_MONTH}\\b(?: del? \\d{4})?`,
    `\\b${SPANISH_MONTH} del? \\d{4}\\b`,
  ].join('|'),
  'gi',
);
const NUMBER = /\d+(?:[.,]\d+|[\u00a0\u202f]\d{3}(?!\d))*|[¼½¾⅓⅔]/g;

/** Each number of a text as it is written. */
const numbersIn = (text: string): string[] => text.replace(DAY, ' ').match(NUMBER) ?? [];

/** What a number may mean. In Spanish 1.250 is 1.25 in one country and 1250 in another; in English it is 1.25. */
function meanings(written: string, tongue: Tongue): string[] {
  const bare = written.replaceAll(/[\u00a0\u202f]/g, '');
  const english = /^\d+(?:\.\d+)?$|^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(bare) ? [bare.replaceAll(',', '')] : [];
  const comma =
    tongue !== 'en' && /^\d+(?:,\d+)?$|^\d{1,3}(?:\.\d{3})+(?:,\d+)?$/.test(bare) ? [bare.replaceAll('.', '').replace(',', '.')] : [];
  const all = [...english, ...comma].map((text) => String(Number(text)));
  return all.length > 0 ? all : [bare];
}

type Said = { texts: readonly string[]; tongue: Tongue };

/** Numbers of one that the other lacks, and those that the other has beyond them, with the place of their text in its list. */
export function otherNumbers(one: Said, other: Said): { missing: string[]; added: { number: string; at: number }[] } {
  const left = one.texts.flatMap(numbersIn);
  const added = other.texts.flatMap((text, at) =>
    numbersIn(text).flatMap((number) => {
      const meant = meanings(number, other.tongue);
      const same = left.findIndex((each) => meanings(each, one.tongue).some((meaning) => meant.includes(meaning)));
      if (same < 0) return [{ number, at }];
      left.splice(same, 1);
      return [];
    }),
  );
  return { missing: left, added };
}
