/**
 * Population curve of a package: bees per day as a band between a poor run and a good run (colony-run.ts). It also gives windows for the
 * low point and for the return to the starting number. The band comes from a model and is not a forecast. After seven or eight weeks it
 * knows too little of room, forage and summer losses to be shown. The return to the start has no published range. Units: bees, days,
 * cells of brood.
 */
import { addDays, type Day } from '../days/day.ts';
import type { DayPair } from './calendar.ts';
import { runColony, type ColonyFigures, type ColonyState, type PackageBees } from './colony-run.ts';

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
  /** `beesMost` belongs to the earliest day, `beesLeast` to the latest. */
  readonly lowPoint: DayPair & { readonly beesLeast: number; readonly beesMost: number };
  /** Absent where that edge does not return within the days asked for. */
  readonly backToStart: { readonly earliest?: Day; readonly latest?: Day };
};

export function populationCurve(start: PackageBees, figures: ColonyFigures, daysAhead: number): PopulationCurve {
  const poor = runColony(start, figures, 'least', daysAhead);
  const good = runColony(start, figures, 'most', daysAhead);
  const [poorLow, goodLow] = [lowPointOf(poor), lowPointOf(good)];
  const dayAt = (sinceInstall: number) => addDays(start.installed, sinceInstall);
  return {
    days: good.map((most, sinceInstall) => bandDay(dayAt(sinceInstall), sinceInstall, poor[sinceInstall] ?? most, most)),
    lowPoint: { earliest: dayAt(goodLow.at), latest: dayAt(poorLow.at), beesLeast: poorLow.bees, beesMost: goodLow.bees },
    backToStart: {
      earliest: backAt(good, goodLow.at, start.beesAtStart, dayAt),
      latest: backAt(poor, poorLow.at, start.beesAtStart, dayAt),
    },
  };
}

function bandDay(day: Day, sinceInstall: number, poor: ColonyState, good: ColonyState): CurveDay {
  return { day, sinceInstall, beesLeast: poor.bees, beesMost: good.bees, broodLeast: poor.brood, broodMost: good.brood };
}

/** The day before the number of bees first rises. */
function lowPointOf(states: readonly ColonyState[]): { at: number; bees: number } {
  const at = states.findIndex(({ bees }, day) => bees < (states[day + 1]?.bees ?? 0));
  const bees = states[at]?.bees;
  if (bees === undefined) throw new RangeError('populationCurve: needs days enough ahead for the first young bees');
  return { at, bees };
}

function backAt(states: readonly ColonyState[], lowAt: number, beesAtStart: number, dayAt: (at: number) => Day): Day | undefined {
  const at = states.findIndex(({ bees }, day) => day > lowAt && bees >= beesAtStart);
  return at < 0 ? undefined : dayAt(at);
}
