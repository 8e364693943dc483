/*
 * A run as the fragment of an address, at most 500 characters, which browsers send to no server. It contains the day, the way of starting
 * and the short forms of the ticked steps. Names and notes are left out unless the reader adds them. Pure functions.
 */
import { shortOf } from '../../../shared/address/short.ts';
import { parseDay } from '../../../shared/days/day.ts';
import type { Run } from './record.ts';

export const LONGEST_LINK = 500;
const CHOICES = ['candy', 'released', 'drawn', 'foundation'];

/** `#run=2026-04-18;candy;drawn;abcdef...`, with `;name` on request. Null when it would be too long. */
export function linkTail(run: Run, withName: boolean): string | null {
  const choices = Object.values(run.choices ?? {}).filter((choice) => CHOICES.includes(choice));
  const parts = [
    run.day ?? '',
    choices.join(','),
    Object.keys(run.ticks).map(shortOf).join(''),
    ...(withName && run.name ? [encodeURIComponent(run.name)] : []),
  ];
  const fragment = `#run=${parts.join(';')}`;
  return fragment.length <= LONGEST_LINK ? fragment : null;
}

/** The run in an address, matched with the steps of this list. Null when there is none. */
export function runFromTail(fragment: string, steps: readonly string[], today: string): { run: Run; unknown: number } | null {
  const match = /^#run=(\d{4}-\d\d-\d\d)?;([a-z,]*);((?:[0-9a-z]{3})*)(?:;([^;]*))?$/.exec(fragment);
  if (!match || fragment.length > LONGEST_LINK || (match[1] && !parseDay(match[1]).ok)) return null;
  const shorts = match[3]!.match(/.{3}/g) ?? [];
  const known = new Map(steps.map((step) => [shortOf(step), step]));
  const ticks = Object.fromEntries(shorts.flatMap((short) => (known.has(short) ? [[known.get(short)!, { on: today, of: '' }]] : [])));
  const choices = Object.fromEntries(
    match[2]!
      .split(',')
      .filter((each) => CHOICES.includes(each))
      .map((each) => [['candy', 'released'].includes(each) ? 'queen' : 'comb', each]),
  );
  const run: Run = {
    name: nameIn(match[4]),
    ticks,
    ...(match[1] ? { day: match[1] } : {}),
    ...(Object.keys(choices).length > 0 ? { choices } : {}),
  };
  return { run, unknown: shorts.filter((short) => !known.has(short)).length };
}

function nameIn(encoded: string | undefined): string {
  try {
    return decodeURIComponent(encoded ?? '').slice(0, 60);
  } catch {
    return '';
  }
}
