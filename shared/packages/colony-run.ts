/**
 * Simulates the bees of one package day by day from its install. The shaken bees die at one daily rate, taken from published survival
 * without brood. Young bees join them 21 days after the first egg and die at the same rate. The queen lays most x N / (half + N) eggs a
 * day among N bees while cells are free, and every egg becomes a bee. The poor edge uses the least survival, the latest first egg, the
 * least laying and the least comb. The good edge uses the opposite of each. The caller passes all these figures. The model knows no
 * weather, hunger, robbing, sickness or failing queen. Units: bees, days, cells, eggs a day. Sources of the intended figures: Harbo 1986,
 * and Harbo in Khoury et al. 2013 (survival over 22 days, brood at day 19).
 */
import { development } from '../brood/development.ts';
import { daysBetween, type Day } from '../days/day.ts';
import type { CombStart, DayPair, DayRange } from './calendar.ts';

export type ColonyFigures = {
  /** The share of shaken bees that is alive after so many days without young bees. */
  readonly survival: { readonly days: number; readonly leastShare: number; readonly mostShare: number };
  /** Eggs that the queen would lay among an unlimited number of bees. */
  readonly eggsPerDay: DayRange;
  /** The number of bees at which she lays half of that. */
  readonly halfLayingAtBees: number;
  /** Cells free for brood on drawn comb. */
  readonly drawnCells: number;
  /** Cells built per day on foundation. */
  readonly cellsBuiltPerDay: DayRange;
};

export type PackageBees = {
  readonly shaken: Day;
  readonly installed: Day;
  readonly beesAtStart: number;
  readonly comb: CombStart;
  readonly firstEggs: DayPair;
};

export type Edge = 'least' | 'most';
export type ColonyState = { readonly bees: number; readonly brood: number };

/** One state per day, starting with the day of install. */
export function runColony(start: PackageBees, figures: ColonyFigures, edge: Edge, daysAhead: number): readonly ColonyState[] {
  checkFigures(figures);
  const survival = dailySurvival(figures, edge);
  const firstEggAt = daysBetween(start.installed, edge === 'least' ? start.firstEggs.latest : start.firstEggs.earliest);
  const laid: number[] = [];
  const states: ColonyState[] = [];
  let bees = start.beesAtStart * survival ** daysBetween(start.shaken, start.installed);
  let brood = 0;
  for (let day = 0; day <= daysAhead; day += 1) {
    const young = laid[day - development.worker.emergesDays.least] ?? 0;
    if (day > 0) bees = bees * survival + young;
    brood -= young;
    const free = Math.max(0, cellsAt(day, start.comb, figures, edge) - brood);
    const eggs = day < firstEggAt ? 0 : Math.min(free, (figures.eggsPerDay[edge] * bees) / (figures.halfLayingAtBees + bees));
    laid.push(eggs);
    brood += eggs;
    states.push({ bees, brood });
  }
  return states;
}

function dailySurvival({ survival }: ColonyFigures, edge: Edge): number {
  return (edge === 'least' ? survival.leastShare : survival.mostShare) ** (1 / survival.days);
}

function cellsAt(day: number, comb: CombStart, { drawnCells, cellsBuiltPerDay }: ColonyFigures, edge: Edge): number {
  return comb === 'drawn' ? drawnCells : Math.min(drawnCells, cellsBuiltPerDay[edge] * day);
}

function checkFigures({ survival, eggsPerDay, halfLayingAtBees, drawnCells, cellsBuiltPerDay }: ColonyFigures): void {
  const rises = (low: number, high: number) => low > 0 && high >= low && Number.isFinite(high);
  const sound =
    rises(survival.leastShare, survival.mostShare) &&
    survival.mostShare < 1 &&
    survival.days > 0 &&
    rises(eggsPerDay.least, eggsPerDay.most) &&
    rises(cellsBuiltPerDay.least, cellsBuiltPerDay.most) &&
    halfLayingAtBees > 0 &&
    drawnCells > 0;
  if (!sound) throw new RangeError('populationCurve: needs figures over 0, each least before its most, and survival under 1');
}
