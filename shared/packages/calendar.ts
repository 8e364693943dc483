/**
 * Calendar of a package of bees: what to expect, and when, from the day of install. Every date is an earliest and a latest day, because
 * release, first egg and comb building each take a range of days. The caller passes the figures of habit (days to release, to the first
 * egg, to each inspection) with their sources. A worker's 8 to 9 days to capping and 21 to emergence are in brood/development. Day 0 is
 * the day of install. Does not hold for a failing queen, robbed or starving bees, or a cold spell that stops laying. The low point and
 * the return to the start come from curve.ts. Unit: days.
 */
import { ok, err, type Result } from '../result.ts';
import { addDays, daysBetween, type Day } from '../days/day.ts';
import { development } from '../brood/development.ts';

export type DayPair = { readonly earliest: Day; readonly latest: Day };
export type DayRange = { readonly least: number; readonly most: number };

export type QueenStart = 'candy' | 'released';
export type CombStart = 'drawn' | 'foundation';

export type PackageHabits = {
  /** From install until the bees have eaten the candy. */
  readonly candyReleaseDays: DayRange;
  /** From install until the check that a caged queen is out. */
  readonly queenLookDays: DayRange;
  /** From release to the first egg on drawn comb. */
  readonly firstEggDays: DayRange;
  /** Extra days on foundation. */
  readonly foundationDays: DayRange;
  /** From release to the check for eggs. */
  readonly eggLookDays: DayRange;
  /** From release to the day on which missing eggs mean: look again and ask. */
  readonly lookAgainDays: number;
  /** From release to the day on which missing eggs mean: requeen or combine. */
  readonly requeenDays: number;
  /** From install to the first mite count. */
  readonly firstMiteCountDays: DayRange;
};

export type PackageStart = {
  readonly installed: Day;
  readonly queen: QueenStart;
  readonly comb: CombStart;
};

export type PackageCalendar = {
  readonly release: DayPair;
  /** Absent where the queen was released at install. */
  readonly queenLook?: DayPair;
  readonly firstEggs: DayPair;
  readonly eggLook: DayPair;
  readonly lookAgain: DayPair;
  readonly requeen: DayPair;
  readonly capped: DayPair;
  readonly firstBees: DayPair;
  readonly firstMiteCount: DayPair;
};

export function packageCalendar({ installed, queen, comb }: PackageStart, habits: PackageHabits): PackageCalendar {
  const worker = development.worker;
  const release = after(pairOf(installed), queen === 'candy' ? habits.candyReleaseDays : exactly(0));
  const firstEggs = after(after(release, habits.firstEggDays), comb === 'foundation' ? habits.foundationDays : exactly(0));
  return {
    release,
    ...(queen === 'candy' ? { queenLook: after(pairOf(installed), habits.queenLookDays) } : {}),
    firstEggs,
    eggLook: after(release, habits.eggLookDays),
    lookAgain: after(release, exactly(habits.lookAgainDays)),
    requeen: after(release, exactly(habits.requeenDays)),
    capped: after(firstEggs, { least: worker.sealedDays.least, most: worker.sealedDays.most }),
    firstBees: after(firstEggs, { least: worker.emergesDays.least, most: worker.emergesDays.most }),
    firstMiteCount: after(pairOf(installed), habits.firstMiteCountDays),
  };
}

export type ShakenReason = 'shaken-after-install' | 'shaken-too-long-ago';

/** Bees that were in their cage for longer are no longer a package. */
const longestCageDays = 21;

/** Days between shaking and install, or the reason why the two days cannot both be right. */
export function daysInCage(shaken: Day, installed: Day): Result<number, ShakenReason> {
  const days = daysBetween(shaken, installed);
  if (days < 0) return err('shaken-after-install');
  return days > longestCageDays ? err('shaken-too-long-ago') : ok(days);
}

function after(from: DayPair, days: DayRange): DayPair {
  return { earliest: addDays(from.earliest, days.least), latest: addDays(from.latest, days.most) };
}

function pairOf(day: Day): DayPair {
  return { earliest: day, latest: day };
}

function exactly(days: number): DayRange {
  return { least: days, most: days };
}
