/*
 * Converts the fields of club.yaml and forage/ into input for shared/season: a place per district, its anchors, and the phases of its
 * year. Checks and pages both use it, so that they see the same dates.
 */
import { addMonthDays, dayOfCommonYear, monthDay, monthDayOf, type MonthDay } from '../../shared/days/month-day.ts';
import { daysBetween } from '../../shared/days/day.ts';
import { anchorIds, anchorsOf, type Anchors, type PlaceGiven, type SeasonFigures } from '../../shared/season/anchors.ts';
import { climateOf, type Climate, type ClimateGiven, type Sum } from '../../shared/season/climate.ts';
import type { Plant } from '../../shared/season/bloom.ts';
import { bloomsHere, type BloomHere } from '../../shared/season/bloom-calendar.ts';
import { daysSeen, type DaysSeen } from '../../shared/season/observed-days.ts';
import { phases } from '../../shared/season/phases.ts';
import { readWhen, type SeasonDays } from '../../shared/season/when.ts';
import { guessesFrom, seasonFrom } from '../../shared/season/year.ts';
import type { Result } from '../../shared/result.ts';
import { celsiusDifferenceToFahrenheit, fahrenheitDifferenceToCelsius, fahrenheitToCelsius } from '../../shared/units/temperature.ts';
import type { ClimateFields } from './climate.ts';
import type { Club } from './club.ts';
import type { Forage } from './forage.ts';

/** The row of a figure in force, by figure id and row id, or the row that the club follows. */
export type FigureOf = (id: string, row?: string) => { value?: number | undefined; most?: number | undefined; unit: string } | null;

export type SeasonFields = { club: Club; forage: readonly { id: string; data: Forage }[]; figureOf: FigureOf };

export type District = {
  id: string;
  name: string;
  laterByDays: number;
  climate: Climate | null;
  /** Members' notes belong to the main district. Another district computes its own dates, or follows the main one. */
  blooms: readonly BloomHere[];
  anchors: Anchors;
  days: Result<SeasonDays, 'no-date' | 'out-of-order'>;
};

export function districtsOf({ club, forage, figureOf }: SeasonFields): District[] {
  const figures = seasonFigures(figureOf);
  const plants = forage.map(plantOf);
  const made: District[] = [];
  for (const [index, { id, name, ...own }] of club.districts.entries()) {
    const main = made[0];
    const noted = index === 0 ? plants : plants.map((plant) => ({ ...plant, seen: [] }));
    const climate = climateFrom(index === 0 ? club.climate : own.climate, noted, figureOf);
    const shift = { laterByDays: own['later-by-days'], fallLaterByDays: own['fall-later-by-days'] ?? own['later-by-days'] };
    const anchors = anchorsOf({
      climate,
      observed: ((index === 0 ? club.observed : own.observed) ?? []) as PlaceGiven['observed'],
      signs: Object.fromEntries(anchorIds.flatMap((anchor) => byBloom(club, anchor, noted))),
      printed: main ? {} : daysIn(Object.entries(club.season.published ?? {}).map(([id, given]) => [id, given?.days])),
      guesses: main ? {} : guessesOf(club),
      figures,
      like: main && { anchors: main.anchors, ...shift },
    });
    const fallFrom = main?.anchors['main-flow-end']?.expected;
    const blooms = bloomsHere(noted, { climate, usual: figures.doubt, like: main && { blooms: main.blooms, ...shift, fallFrom } });
    made.push({ id, name, laterByDays: shift.laterByDays, climate, blooms, anchors, days: seasonFrom(anchors) });
  }
  return made;
}

function byBloom(club: Club, anchor: (typeof anchorIds)[number], plants: readonly Plant[]): [string, Plant][] {
  const plant = plants.find(({ id }) => id === club.season['by-bloom']?.[anchor]);
  return plant ? [[anchor, plant]] : [];
}

export function seasonFigures(figureOf: FigureOf): SeasonFigures {
  const degreesC = (id: string): number | null => {
    const row = figureOf(id);
    const value = row?.value ?? row?.most;
    return value === undefined ? null : row!.unit === 'F' ? fahrenheitToCelsius(value) : value;
  };
  const [days, daysForSmallSums] = ['later', 'early'].map((row) => figureOf('degree-day-window-days', row)?.value);
  return {
    freezeC: degreesC('frost-crossing-temperature'),
    clusterC: degreesC('cluster-temperature'),
    syrupC: degreesC('stop-liquid-feed-temperature'),
    doubt: days === undefined ? null : { days, daysForSmallSums: daysForSmallSums ?? days },
    crossingDays: figureOf('temperature-crossing-days')?.value ?? null,
  };
}

export function plantOf({ id, data: { bloom, observed = [] } }: SeasonFields['forage'][number]): Plant {
  return {
    id,
    sum: bloom ? (sumOf(bloom) ?? 'no-method') : null,
    seen: observed.map(({ first, last }) => ({
      first: monthDayOf(first),
      lastedDays: last === undefined ? null : daysBetween(first, last),
    })),
  };
}

/** Null where the list does not state its method, or omits a value that its method needs. */
export function sumOf({ method, base, cap, scale, from, ...bloom }: NonNullable<Forage['bloom']>): Sum | null {
  if (method === 'not stated' || (method === 'modified' && cap === undefined)) return null;
  return { sum: bloom['degree-days'], scale, rule: { method, base, ...(cap === undefined ? {} : { cap }) }, from: from };
}

/** The climate as written, before anything is fitted to it. */
export function climateGiven(fields: ClimateFields, seen: ClimateGiven['seen'] = []): ClimateGiven {
  const { 'degree-days': published, freezes } = fields;
  const [last, first] = [freezes && dayOfYear(freezes.last), freezes && dayOfYear(freezes.first)];
  return {
    scale: fields.scale,
    normals: { minByMonth: fields.minima, maxByMonth: fields.maxima },
    publishedSum: published && {
      sum: published.sum,
      rule: { method: published.method, base: published.base, ...(published.cap === undefined ? {} : { cap: published.cap }) },
    },
    regionSpread: fields.spread?.sigma,
    seen,
    freezes: last && first ? { last, first } : undefined,
  };
}

function climateFrom(fields: ClimateFields | undefined, plants: readonly Plant[], figureOf: FigureOf): Climate | null {
  if (!fields || fields.maxima.some((max, month) => max < (fields.minima[month] ?? max))) return null;
  const seen = plants.flatMap((plant) => {
    const days = daysSeen(plant.seen.map(({ first }) => first));
    return days && plant.sum !== null && plant.sum !== 'no-method' ? [{ sum: plant.sum, day: days.middle }] : [];
  });
  const given = climateGiven(fields, seen);
  return climateOf({ ...given, regionSpread: given.regionSpread ?? regionSpread(fields.scale, figureOf) });
}

/** From the figure degree-day-spread, where the club gives no spread with its climate. */
function regionSpread(scale: ClimateFields['scale'], figureOf: FigureOf): number | undefined {
  const row = figureOf('degree-day-spread');
  if (row?.value === undefined) return undefined;
  const degreesC = row.unit === 'F-difference' ? fahrenheitDifferenceToCelsius(row.value) : row.value;
  return scale === 'F' ? celsiusDifferenceToFahrenheit(degreesC) : degreesC;
}

function guessesOf({ season }: Club): PlaceGiven['guesses'] {
  const starts = phases.map((phase) => season.phases && daysOfYear(season.phases[phase])?.from);
  const fromPhases = starts.includes(undefined)
    ? {}
    : guessesFrom(Object.fromEntries(phases.map((phase, index) => [phase, starts[index]])) as Parameters<typeof guessesFrom>[0]);
  return { ...fromPhases, ...daysIn(Object.entries(season.guesses ?? {})) };
}

/** Written days by anchor. Checks report those that cannot be parsed. */
function daysIn(written: readonly (readonly [anchor: string, text: string | undefined])[]): PlaceGiven['guesses'] {
  return Object.fromEntries(
    written.flatMap(([anchor, text]) => {
      const days = text === undefined ? null : daysOfYear(text);
      return days ? [[anchor, middleOf(days)] as const] : [];
    }),
  );
}

function middleOf({ from, to }: { from: MonthDay; to: MonthDay }): DaysSeen {
  const length = (dayOfCommonYear(to) - dayOfCommonYear(from) + 365) % 365;
  return { middle: addMonthDays(from, Math.floor(length / 2)), earliest: from, latest: to };
}

/** "1 April to 20 April" or one day. Null for anything else. */
export function daysOfYear(text: string): { from: MonthDay; to: MonthDay } | null {
  const read = readWhen(text);
  if (!read.ok || read.value.kind !== 'span' || read.value.from.kind !== 'day' || read.value.to.kind !== 'day') return null;
  const [from, to] = [read.value.from, read.value.to].map(({ month, day }) => monthDay(month, day));
  return from && to ? { from, to } : null;
}

export function dayOfYear(text: string): MonthDay | null {
  const days = daysOfYear(text);
  return days && days.from === days.to ? days.from : null;
}
