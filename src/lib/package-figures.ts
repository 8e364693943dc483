/* The club's own figures for the package calendar, by their names in shared/packages. Missing figures are left out. */
import type { PackageHabits } from '../../shared/packages/calendar.ts';
import type { ColonyFigures } from '../../shared/packages/colony-run.ts';
import type { Almanac } from './content.ts';
import { calendarDays, calendarNames, waysOfStarting, type CalendarName } from '../../shared/packages/calendar-names.ts';
import { heldNumber, heldRange } from './calculator-figures.ts';

export function heldHabits(almanac: Almanac, day: string): Partial<PackageHabits> {
  const range = (id: string, row?: string) => heldRange(almanac, id, day, row) ?? undefined;
  const number = (id: string) => heldNumber(almanac, id, day) ?? undefined;
  const weeks = range('first-mite-count-weeks');
  return withoutGaps({
    candyReleaseDays: range('queen-candy-release-days'),
    queenLookDays: range('queen-cage-look-days'),
    firstEggDays: range('eggs-after-release-days'),
    foundationDays: range('foundation-extra-days'),
    eggLookDays: range('first-look-days'),
    lookAgainDays: number('no-eggs-look-again-days'),
    requeenDays: number('no-eggs-act-days'),
    firstMiteCountDays: weeks && { least: weeks.least * 7, most: weeks.most * 7 },
  });
}

const HABITS = [
  'candyReleaseDays',
  'queenLookDays',
  'firstEggDays',
  'foundationDays',
  'eggLookDays',
  'lookAgainDays',
  'requeenDays',
  'firstMiteCountDays',
] as const;

/** A date of the calendar as days from the install, for each way of starting. Null where the club lacks a figure. */
export function packageDays(almanac: Almanac, day: string, name: string): string | null {
  const habits = heldHabits(almanac, day);
  if (!calendarNames.includes(name as CalendarName) || HABITS.some((habit) => habits[habit] === undefined)) return null;
  return waysOfStarting
    .flatMap((way) => {
      const days = calendarDays(name as CalendarName, way, habits as PackageHabits);
      return days ? [`${way.queen} ${way.comb} ${days.least} ${days.most}`] : [];
    })
    .join(';');
}

/** Null where one of the figures is missing, because the curve needs them all. */
export function heldColony(almanac: Almanac, day: string): ColonyFigures | null {
  const survival = heldRange(almanac, 'package-survival-day-22', day);
  const eggsPerDay = heldRange(almanac, 'package-eggs-per-day', day);
  const halfLayingAtBees = heldNumber(almanac, 'package-half-laying-bees', day);
  const drawnCells = heldNumber(almanac, 'package-brood-cells', day);
  const cellsBuiltPerDay = heldRange(almanac, 'package-cells-built-per-day', day);
  if (!survival || !eggsPerDay || !halfLayingAtBees || !drawnCells || !cellsBuiltPerDay) return null;
  return {
    survival: { days: 22, leastShare: survival.least / 100, mostShare: survival.most / 100 },
    eggsPerDay,
    halfLayingAtBees,
    drawnCells,
    cellsBuiltPerDay,
  };
}

function withoutGaps<Held extends object>(held: { [Name in keyof Held]: Held[Name] | undefined }): Partial<Held> {
  return Object.fromEntries(Object.entries(held).filter(([, value]) => value !== undefined)) as Partial<Held>;
}
