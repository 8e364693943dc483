/* Suggests corrections for a value that a schema refused: a similar word, quotes added or removed, `yes` for `true`. */
import type { z } from 'astro/zod';
import { isDay, type Day } from '../../shared/days/day.ts';
import type { Entry } from '../source/folder.ts';
import { nearName } from '../../shared/words/near-name.ts';
import { lineAt } from './place.ts';

/** The word of a list of choices that the author most likely meant. */
export function choiceMeant(value: unknown, issue: z.core.$ZodIssue): string | null {
  const near = issue.code === 'invalid_value' && typeof value === 'string' ? nearName(value, issue.values.map(String)) : null;
  return near === null ? null : `"${near}"`;
}

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/** The day that a date in another form must be: 28/11/2026 and 28 November 2026, but not 6/7/2026, which could be two days. */
export function dayMeant(value: unknown, issue: z.core.$ZodIssue): string | null {
  return typeof value === 'string' && /\bday\b.*\bsuch as \d{4}-\d{2}-\d{2}$/.test(issue.message) ? dayIn(value) : null;
}

/** The one day that a date in any form can be. Null where it could be two, or none. */
export function dayIn(value: string): Day | null {
  const [, first, second, third] = /^(\d{1,4})[-./ ](\d{1,2})[-./ ](\d{1,4})$/.exec(value.trim()) ?? [];
  const [, before, word, after, year] =
    /^(\d{1,2})?(?:st|nd|rd|th|\.)? ?([A-Za-z]{3,9})\.? ?(\d{1,2})?(?:st|nd|rd|th)?,? (\d{4})$/.exec(value.trim()) ?? [];
  const month = MONTHS.indexOf((word ?? '').slice(0, 3).toLowerCase()) + 1;
  if (month > 0 && (before === undefined) !== (after === undefined)) return written(Number(year), month, Number(before ?? after));
  if (first?.length === 4) return written(Number(first), Number(second), Number(third));
  if (third?.length !== 4) return null;
  const [a, b] = [Number(first), Number(second)];
  if (a !== b && a <= 12 && b <= 12) return null;
  return a > 12 ? written(Number(third), b, a) : written(Number(third), a, b);
}

function written(year: number, month: number, date: number): Day | null {
  const day = `${year}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`;
  return isDay(day) ? day : null;
}

/** Other corrections: remove an optional line without a value, or quote a word that YAML parses as a number. */
export function ending(value: unknown, issue: z.core.$ZodIssue, optional: boolean): string {
  if (value === null || (typeof value === 'string' && value.trim() === '')) return optional ? ', or leave the line out' : '';
  return takenForNumber(value, issue) && !issue.message.includes('quotes') ? ', in quotes' : '';
}

const takenForNumber = (value: unknown, issue: z.core.$ZodIssue): boolean =>
  issue.code === 'invalid_type' && issue.expected === 'string' && (typeof value === 'number' || typeof value === 'boolean');

/**
 * The line with plain characters in place of a word processor's look-alikes: curly quotes, long dashes, wide letters, invisible
 * characters. `fits` tests whether the value would be valid.
 */
export function plainSigns(
  entry: Entry,
  at: { line: number; column: number },
  value: unknown,
  fits: (value: unknown) => boolean,
): string | undefined {
  if (typeof value !== 'string') return undefined;
  const plain = value
    .normalize('NFKC')
    .replace(/[‐‑‒–—−]/g, '-')
    .replace(/["“”„‟«»]|^['‘’‚‛]|['‘’‚‛]$|\p{Cf}/gu, '')
    .trim();
  const line = lineAt(entry, at.line);
  if (plain === value || plain === '' || !line.slice(at.column - 1).startsWith(value)) return undefined;
  const read = /^(?:true|false)$/.test(plain) ? plain === 'true' : /^-?\d+(?:\.\d+)?$/.test(plain) ? Number(plain) : plain;
  return fits(read) || fits(plain) ? line.slice(0, at.column - 1) + plain + line.slice(at.column - 1 + value.length) : undefined;
}

const BOOLEANS: Record<string, string> = {
  yes: 'true',
  on: 'true',
  y: 'true',
  true: 'true',
  no: 'false',
  off: 'false',
  n: 'false',
  false: 'false',
};

/** The line with a number in quotes where a word is required, or with true or false for yes or no. */
export function requoted(entry: Entry, at: { line: number; column: number }, value: unknown, issue: z.core.$ZodIssue): string | undefined {
  if (issue.code !== 'invalid_type') return undefined;
  const line = lineAt(entry, at.line);
  const typed = line.slice(at.column - 1).trimEnd();
  const isBoolean = issue.expected === 'boolean' && BOOLEANS[String(value).toLowerCase()];
  if (isBoolean) return line.slice(0, at.column - 1) + isBoolean;
  if (takenForNumber(value, issue))
    return /^(?:a|the) (?:time|day)\b/.test(issue.message) ? undefined : `${line.slice(0, at.column - 1)}"${typed}"`;
  const plain = /^["']?(-?\d+(?:\.\d+)?)["']?$/.exec(typed)?.[1];
  return issue.expected === 'number' && plain !== undefined ? line.slice(0, at.column - 1) + plain : undefined;
}
