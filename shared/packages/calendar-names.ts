/**
 * The dates of a package by name, and each as days from the install for a way of starting. The calendar itself is worked out in
 * calendar.ts; here it is only told in days. Unit: days from the day of install.
 */
import { daysBetween, parseDay, type Day } from '../days/day.ts';
import { packageCalendar, type CombStart, type DayRange, type PackageCalendar, type PackageHabits, type QueenStart } from './calendar.ts';

const keys = {
  release: 'release', 'queen-look': 'queenLook', 'first-eggs': 'firstEggs', 'egg-look': 'eggLook', 'look-again': 'lookAgain',
  requeen: 'requeen', capped: 'capped', 'first-bees': 'firstBees', 'first-mite-count': 'firstMiteCount',
} as const satisfies Record<string, keyof PackageCalendar>; // prettier-ignore

export type CalendarName = keyof typeof keys;
export const calendarNames = Object.keys(keys) as CalendarName[];

/** Every way of starting, the usual one first. */
export const waysOfStarting: readonly { queen: QueenStart; comb: CombStart }[] = [
  { queen: 'candy', comb: 'drawn' },
  { queen: 'candy', comb: 'foundation' },
  { queen: 'released', comb: 'drawn' },
  { queen: 'released', comb: 'foundation' },
];

/** Days from install until the named date; null where this way of starting has no such date. */
export function calendarDays(name: CalendarName, way: { queen: QueenStart; comb: CombStart }, habits: PackageHabits): DayRange | null {
  const pair = packageCalendar({ installed: someDay, ...way }, habits)[keys[name]];
  return pair ? { least: daysBetween(someDay, pair.earliest), most: daysBetween(someDay, pair.latest) } : null;
}

/** Any day does: only what lies between counts. */
const read = parseDay('2001-01-01');
const someDay: Day = read.ok ? read.value : ('2001-01-01' as Day);
