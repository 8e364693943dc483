/**
 * How many bees a package holds, day by day, as a band between a poor run and a good one. Bees put in when it was shaken die at one
 * daily rate, that of published survival without brood; from 21 days after the first egg young bees join them and die at that rate
 * too. A queen lays most x N / (half + N) eggs a day among N bees, as long as comb is free. The poor edge takes least survival, latest
 * first egg and least laying; the good edge the opposite of each. All of these are figures handed in.
 * It is a band of a model, not a forecast: it knows no weather, hunger, robbing, sickness or failing queen, and ends with the days asked.
 * Sources of the figures it is meant for: Harbo 1986 and Harbo in Khoury et al. 2013 (survival over 22 days, brood at day 19).
 * Units: bees, days, cells, eggs a day.
 */
import { addDays, daysBetween, type Day } from '../days/day.ts';
import { development } from '../brood/development.ts';
import type { CombStart, DayPair, DayRange } from './calendar.ts';

export type ColonyFigures = {
  /** Of bees shaken, the share alive after so many days without young ones. */
  readonly survival: { readonly days: number; readonly leastShare: number; readonly mostShare: number };
  /** What the queen would lay among bees without number. */
  readonly eggsPerDay: DayRange;
  /** The bees among which she lays half of that. */
  readonly halfLayingAtBees: number;
  /** Cells free for brood where comb was given. */
  readonly drawnCells: number;
  /** Cells built in a day where foundation was given. */
  readonly cellsBuiltPerDay: DayRange;
};

export type PackageBees = {
  readonly shaken: Day;
  readonly installed: Day;
  readonly beesAtStart: number;
  readonly comb: CombStart;
  readonly firstEggs: DayPair;
};

export type CurveDay = {
  readonly day: Day;
  readonly sinceInstall: number;
  readonly beesLeast: number;
  readonly beesMost: number;
  readonly broodLeast: number;
  readonly broodMost: number;
};

export type PopulationCurve = {
  readonly days: readonly CurveDay[];
  /** `beesMost` is read on the earliest day, `beesLeast` on the latest. */
  readonly lowPoint: DayPair & { readonly beesLeast: number; readonly beesMost: number };
  /** Absent where that edge does not come back within the days asked. */
  readonly backToStart: { readonly earliest?: Day; readonly latest?: Day };
};

export function populationCurve(start: PackageBees, figures: ColonyFigures, daysAhead: number): PopulationCurve {
  checkFigures(figures);
  const poor = run(start, edgeOf(start, figures, 'least'), daysAhead);
  const good = run(start, edgeOf(start, figures, 'most'), daysAhead);
  const [poorLow, goodLow] = [lowestOf(poor), lowestOf(good)];
  const dayAt = (at: number | undefined) => (at === undefined ? undefined : addDays(start.installed, at));
  return {
    days: good.map((most, at) => ({
      day: addDays(start.installed, at),
      sinceInstall: at,
      beesLeast: poor[at]?.bees ?? 0,
      beesMost: most.bees,
      broodLeast: poor[at]?.brood ?? 0,
      broodMost: most.brood,
    })),
    lowPoint: {
      earliest: addDays(start.installed, goodLow.at),
      latest: addDays(start.installed, poorLow.at),
      beesLeast: poorLow.bees,
      beesMost: goodLow.bees,
    },
    backToStart: { earliest: dayAt(backAt(good, goodLow.at, start)), latest: dayAt(backAt(poor, poorLow.at, start)) },
  };
}

type Edge = { dailySurvival: number; firstEggAt: number; eggsPerDay: number; halfAt: number; cellsAt: (day: number) => number };
type State = { bees: number; brood: number };

function edgeOf(start: PackageBees, figures: ColonyFigures, edge: 'least' | 'most'): Edge {
  const { survival, cellsBuiltPerDay, drawnCells } = figures;
  const share = edge === 'least' ? survival.leastShare : survival.mostShare;
  return {
    dailySurvival: share ** (1 / survival.days),
    firstEggAt: daysBetween(start.installed, edge === 'least' ? start.firstEggs.latest : start.firstEggs.earliest),
    eggsPerDay: figures.eggsPerDay[edge],
    halfAt: figures.halfLayingAtBees,
    cellsAt: (day) => (start.comb === 'drawn' ? drawnCells : Math.min(drawnCells, cellsBuiltPerDay[edge] * day)),
  };
}

/** One state a day from the install on. */
function run(start: PackageBees, edge: Edge, daysAhead: number): State[] {
  const egglaying: number[] = [];
  const states: State[] = [];
  let bees = start.beesAtStart * edge.dailySurvival ** daysBetween(start.shaken, start.installed);
  let brood = 0;
  for (let day = 0; day <= daysAhead; day += 1) {
    const young = egglaying[day - development.worker.emergesDays.least] ?? 0;
    if (day > 0) bees = bees * edge.dailySurvival + young;
    const room = Math.max(0, edge.cellsAt(day) - brood + young);
    const laid = day < edge.firstEggAt ? 0 : Math.min(room, (edge.eggsPerDay * bees) / (edge.halfAt + bees));
    egglaying.push(laid);
    brood += laid - young;
    states.push({ bees, brood });
  }
  return states;
}

/** The day before the bees first rise: dying slows but never stops, so it is the least of the days up to then. */
function lowestOf(states: readonly State[]): { at: number; bees: number } {
  const rise = states.findIndex(({ bees }, at) => bees < (states[at + 1]?.bees ?? 0));
  const at = rise < 0 ? states.length - 1 : rise;
  return { at, bees: states[at]?.bees ?? 0 };
}

function backAt(states: readonly State[], lowAt: number, start: PackageBees): number | undefined {
  const at = states.findIndex(({ bees }, day) => day > lowAt && bees >= start.beesAtStart);
  return at < 0 ? undefined : at;
}

function checkFigures({ survival, eggsPerDay, halfLayingAtBees, drawnCells, cellsBuiltPerDay }: ColonyFigures): void {
  const rises = (low: number, high: number) => low > 0 && high >= low && Number.isFinite(high);
  const good =
    rises(survival.leastShare, survival.mostShare) &&
    survival.mostShare < 1 &&
    survival.days > 0 &&
    rises(eggsPerDay.least, eggsPerDay.most) &&
    rises(cellsBuiltPerDay.least, cellsBuiltPerDay.most) &&
    halfLayingAtBees > 0 &&
    drawnCells > 0;
  if (!good) throw new RangeError('populationCurve: needs figures over 0, each least before its most, and survival under 1');
}
