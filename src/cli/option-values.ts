// Validates the values of options by kind, with a sentence for each error.
import { isDay } from '../../shared/days/day.ts';
import type { Kind } from './commands.ts';

/** @returns the sentence for an invalid value, or undefined */
export function mistakeIn(rawName: string, takes: Kind, value: string | undefined, joined: boolean): string | undefined {
  if (takes === 'flag') return value === undefined ? undefined : `${rawName} takes no value; write ${rawName} alone.`;
  // `--content --out x`: the next option is not a value, unless an equals sign joins it.
  if (value === undefined || value === '' || (!joined && value.startsWith('-'))) return `${rawName} needs ${nounFor(takes)} after it.`;
  if (typeof takes !== 'string') return takes.includes(value) ? undefined : `${rawName} takes ${takes.join(' or ')}, not ${value}.`;
  if (takes === 'day' && !isDay(value)) return `${rawName} takes a day written as 2026-05-01, not ${value}.`;
  if (takes === 'base' && !/^\/(?:[\w.~-]+\/)*$/.test(value))
    return `${rawName} takes a path that begins and ends with a slash, as in /club/, not ${value}.`;
  if (takes === 'site' && !isSite(value)) return `${rawName} takes an address without a path, as in https://club.example, not ${value}.`;
  return undefined;
}

function nounFor(takes: Exclude<Kind, 'flag'>): string {
  if (typeof takes !== 'string') return takes.join(' or ');
  return {
    folder: 'a folder',
    output: 'a folder',
    file: 'a file',
    words: 'words in quotes',
    day: 'a day, as in 2026-05-01,',
    base: 'a path, as in /club/,',
    site: 'an address, as in https://club.example,',
  }[takes];
}

function isSite(text: string): boolean {
  if (!/^https?:\/\//.test(text) || !URL.canParse(text)) return false;
  const { pathname, search, hash, username } = new URL(text);
  return pathname === '/' && !search && !hash && !username;
}
