/**
 * How many bees a package holds, day by day, as a band between a poor run and a good one (colony-run.ts), with its low point and its
 * return to the number it began with as windows. The band of a model, not a forecast: past seven or eight weeks it
 * knows too little of room, forage and summer losses to be shown.
 * Return to start has no published range: it is the model's alone. Units: bees, days, cells of brood.
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
  /** `beesMost` is read on the earliest day, `beesLeast` on the latest. */
  readonly lowPoint: DayPair & { readonly beesLeast: number; readonly beesMost: number };
  /** Absent where that edge does not come back within the days asked. */
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

/** The day before the bees first rise. */
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
