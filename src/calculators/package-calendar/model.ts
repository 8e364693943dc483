/* Dates and bees of a package with the club's own figures, for the form, the worked example and the calendar file. */
import {
  daysInCage,
  packageCalendar,
  type CombStart,
  type DayPair,
  type PackageCalendar,
  type PackageHabits,
  type QueenStart,
  type ShakenReason,
} from '../../../shared/packages/calendar.ts';
import type { ColonyFigures } from '../../../shared/packages/colony-run.ts';
import { populationCurve, type PopulationCurve } from '../../../shared/packages/curve.ts';
import { beesInPackage, type StartReason } from '../../../shared/packages/start-bees.ts';
import { addDays, type Day } from '../../../shared/days/day.ts';
import { ok, type Result } from '../../../shared/result.ts';
import type { System } from '../form/measures.ts';

export type Package = {
  readonly installed: Day;
  readonly shaken: Day | undefined;
  readonly pounds: number;
  readonly queen: QueenStart;
  readonly comb: CombStart;
  readonly 'bees-per-pound': number;
};

type Habit = keyof PackageHabits;

export type PackageFigures = {
  readonly units: System;
  /** The club's own figures of habit. */
  readonly habits: Partial<PackageHabits>;
  readonly colony: ColonyFigures | null;
  /** The limits of the trials that the curve is based on. */
  readonly trialBees: { readonly least: number; readonly most: number } | null;
  readonly shakenBeforeDays: number | null;
};

export type Plan = {
  readonly beesAtStart: number;
  readonly release?: DayPair;
  readonly firstEggs?: DayPair;
  readonly queenLook?: DayPair;
  readonly eggLook?: DayPair;
  readonly lookAgain?: DayPair;
  readonly requeen?: DayPair;
  readonly capped?: DayPair;
  readonly firstBees?: DayPair;
  readonly firstMiteCount?: DayPair;
  readonly curve?: PopulationCurve;
  /** The reason for a missing curve. */
  readonly noCurve?: 'no-figure' | 'beyond-trials';
};

/** After eight weeks the model knows too little to be shown. */
const daysAhead = 56;

export function planPackage(given: Package, figures: PackageFigures): Result<Plan, ShakenReason | StartReason> {
  const start = beesInPackage(given.pounds, given['bees-per-pound']);
  if (!start.ok) return start;
  const shaken = given.shaken ?? addDays(given.installed, -(figures.shakenBeforeDays ?? 0));
  const caged = daysInCage(shaken, given.installed);
  if (!caged.ok) return caged;
  const dates = datesOf(given, figures.habits);
  return ok({ beesAtStart: start.value, ...dates, ...curveOf(given, shaken, start.value, dates.firstEggs, figures) });
}

/** The dates for which the club has figures. */
function datesOf(given: Package, habits: Partial<PackageHabits>): Partial<PackageCalendar> {
  const none = { least: 0, most: 0 };
  const calendar = packageCalendar(given, {
    candyReleaseDays: none, queenLookDays: none, firstEggDays: none, foundationDays: none, eggLookDays: none, lookAgainDays: 0, requeenDays: 0, firstMiteCountDays: none,
    ...habits,
  }); // prettier-ignore
  const release: Habit[] = given.queen === 'candy' ? ['candyReleaseDays'] : [];
  const eggs: Habit[] = [...release, 'firstEggDays', ...(given.comb === 'foundation' ? (['foundationDays'] as const) : [])];
  const needs: Record<keyof PackageCalendar, readonly Habit[]> = {
    release, queenLook: ['queenLookDays'], firstEggs: eggs, eggLook: [...release, 'eggLookDays'], lookAgain: [...release, 'lookAgainDays'],
    requeen: [...release, 'requeenDays'], capped: eggs, firstBees: eggs, firstMiteCount: ['firstMiteCountDays'],
  }; // prettier-ignore
  const held = Object.entries(calendar).filter(([name]) =>
    needs[name as keyof PackageCalendar].every((habit) => habits[habit] !== undefined),
  );
  return Object.fromEntries(held) as Partial<PackageCalendar>;
}

function curveOf(
  given: Package,
  shaken: Day,
  beesAtStart: number,
  firstEggs: DayPair | undefined,
  { colony, trialBees, shakenBeforeDays }: PackageFigures,
): Pick<Plan, 'curve' | 'noCurve'> {
  if (!colony || !trialBees || !firstEggs || (given.shaken === undefined && shakenBeforeDays === null)) return { noCurve: 'no-figure' };
  if (beesAtStart < trialBees.least || beesAtStart > trialBees.most) return { noCurve: 'beyond-trials' };
  return { curve: populationCurve({ shaken, installed: given.installed, beesAtStart, comb: given.comb, firstEggs }, colony, daysAhead) };
}
