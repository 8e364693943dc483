/*
 * Gives each step without a Task id a unique one, made of a few of its first words. Nothing else in the file changes, and its line ends
 * stay.
 */
import { placeOf, type Page } from './place.ts';
import { stepsOf, type Step } from './steps.ts';

const LONGEST = 24;

/** Returns the file's text (with its line ends) with the new ids, and their number. `page` was parsed from the same file. */
export function withIds(text: string, page: Page): { text: string; written: number } {
  const taken = new Set([...text.matchAll(/\bid=["']([^"']*)["']/g)].map((match) => match[1]!));
  const lines = text.split(/(\r\n?|\n)/);
  const bare = stepsOf(page).filter(({ first, tags, words }) => first !== null && tags.length === 0 && words !== '');
  for (const step of bare) {
    const id = idFor(step, taken);
    taken.add(id);
    const line = (endLine(page, step) - 1) * 2;
    lines[line] = `${lines[line]!.trimEnd()} <Task id="${id}" />`;
  }
  return { text: lines.join(''), written: bare.length };
}

/** The line on which the step's own words end. */
function endLine(page: Page, { first }: Step): number {
  const { line } = placeOf(page, first!);
  return line + first!.position!.end.line - first!.position!.start.line;
}

function idFor({ words }: Step, taken: Set<string>): string {
  const parts = words
    .normalize('NFD')
    .replace(/[\u0300-\u036f'’]/g, '')
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter(Boolean);
  let id = (parts[0] ?? 'step').slice(0, LONGEST);
  for (const part of parts.slice(1)) {
    if (`${id}-${part}`.length > LONGEST) break;
    id = `${id}-${part}`;
  }
  if (!taken.has(id)) return id;
  for (let number = 2; ; number += 1) {
    const next = `${id.slice(0, LONGEST - String(number).length - 1).replace(/-$/, '')}-${number}`;
    if (!taken.has(next)) return next;
  }
}
