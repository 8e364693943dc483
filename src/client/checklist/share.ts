/*
 * One hive's checklist as the fragment of a link, which browsers send to no server: its day, the way of starting, and the short forms of
 * the ticked steps. The hive's name and the notes travel only when the reader adds them. Pure functions.
 */
import { printOf } from '../../../shared/address/print.ts';
import { shortOf } from '../../../shared/address/short.ts';
import { parseDay } from '../../../shared/days/day.ts';
import type { Run } from './record.ts';

/** Messages and browsers carry longer links too, but none of the members' own lists comes near. */
export const LONGEST_LINK = 2000;
const CHOICES = ['candy', 'released', 'drawn', 'foundation'];

/** What a link carries besides the ticks and the day. */
export type Extras = { name: boolean; notes: boolean };

/** `#run=2026-04-18;candy,drawn;abcdef...;NAME;MARK;abcNOTE,defNOTE`. Null when it would be too long. */
export function linkTail(run: Run, extras: Extras): string | null {
  const choices = Object.values(run.choices ?? {}).filter((choice) => CHOICES.includes(choice));
  const notes = extras.notes ? Object.entries(run.notes ?? {}) : [];
  const parts = [
    run.day ?? '',
    choices.join(','),
    Object.keys(run.ticks).map(shortOf).join(''),
    extras.name ? encoded(run.name) : '',
    run.shared ?? '',
    notes.map(([step, note]) => shortOf(step) + encoded(note)).join(','),
  ];
  while (parts.length > 3 && !parts.at(-1)) parts.pop();
  const fragment = `#run=${parts.join(';')}`;
  return fragment.length <= LONGEST_LINK ? fragment : null;
}

const LINK = /^#run=(\d{4}-\d\d-\d\d)?;([a-z,]*);((?:[0-9a-z]{3})*)(?:;([^;]*)(?:;([0-9a-z]{0,8})(?:;([^;]*))?)?)?$/;

/** The hive in a link, matched with the steps of this list. Null when there is none. A link of an older edition ends before its mark. */
export function runFromTail(fragment: string, steps: readonly string[], today: string): { run: Run; unknown: number } | null {
  const match = LINK.exec(fragment);
  if (!match || fragment.length > LONGEST_LINK || (match[1] && !parseDay(match[1]).ok)) return null;
  const [, day, ways = '', ticked = '', name, mark, written] = match;
  const known = new Map(steps.map((step) => [shortOf(step), step]));
  const shorts = ticked.match(/.{3}/g) ?? [];
  const ticks = Object.fromEntries(shorts.flatMap((short) => (known.has(short) ? [[known.get(short)!, { on: today, of: '' }]] : [])));
  const choices = Object.fromEntries(
    ways
      .split(',')
      .filter((each) => CHOICES.includes(each))
      .map((each) => [['candy', 'released'].includes(each) ? 'queen' : 'comb', each]),
  );
  const notes = Object.fromEntries(
    (written ?? '').split(',').flatMap((each) => {
      const step = known.get(each.slice(0, 3));
      const note = decoded(each.slice(3)).slice(0, 200);
      return step && note ? [[step, note]] : [];
    }),
  );
  const run: Run = {
    name: decoded(name).slice(0, 60),
    ticks,
    shared: mark || printOf(fragment),
    ...(day ? { day } : {}),
    ...(Object.keys(choices).length > 0 ? { choices } : {}),
    ...(Object.keys(notes).length > 0 ? { notes } : {}),
  };
  return { run, unknown: shorts.filter((short) => !known.has(short)).length };
}

/** Empty for a text that ends in half a letter, which no link can carry. */
function encoded(text: string): string {
  try {
    return encodeURIComponent(text);
  } catch {
    return '';
  }
}

function decoded(encoded = ''): string {
  try {
    return decodeURIComponent(encoded).trim();
  } catch {
    return '';
  }
}
