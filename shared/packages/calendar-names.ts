/**
 * The named dates of a package calendar, as days from the install for each way of starting. calendar.ts computes the calendar itself.
 * Unit: days from the day of install.
 */
import { dayOf, daysBetween } from '../days/day.ts';
import { packageCalendar, type CombStart, type DayRange, type PackageCalendar, type PackageHabits, type QueenStart } from './calendar.ts';

const keys = {
  release: 'release', 'queen-look': 'queenLook', 'first-eggs': 'firstEggs', 'egg-look': 'eggLook', 'look-again': 'lookAgain',
  requeen: 'requeen', capped: 'capped', 'first-bees': 'firstBees', 'first-mite-count': 'firstMiteCount',
} as const satisfies Record<string, keyof PackageCalendar>; // prettier-ignore

export type CalendarName = keyof typeof keys;
export const calendarNames = Object.keys(keys) as CalendarName[];

/** Every way of starting, with the usual one first. */
export const waysOfStarting: readonly { queen: QueenStart; comb: CombStart }[] = [
  { queen: 'candy', comb: 'drawn' },
  { queen: 'candy', comb: 'foundation' },
  { queen: 'released', comb: 'drawn' },
  { queen: 'released', comb: 'foundation' },
];

/** Days from install to the named date, or null where this way of starting has no such date. */
export function calendarDays(name: CalendarName, way: { queen: QueenStart; comb: CombStart }, habits: PackageHabits): DayRange | null {
  const pair = packageCalendar({ installed: someDay, ...way }, habits)[keys[name]];
  return pair ? { least: daysBetween(someDay, pair.earliest), most: daysBetween(someDay, pair.latest) } : null;
}

/** An arbitrary day, because only the difference between days counts. */
const someDay = dayOf(2001, 1, 1);
