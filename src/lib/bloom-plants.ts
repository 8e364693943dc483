/* Props of the degree-day page: plants with a published sum of degree-days, and the club's own climate. */
import { dayOfCommonYear, monthDayOf, type MonthDay } from '../../shared/days/month-day.ts';
import { spreadIn } from '../../shared/season/climate.ts';
import type { DegreeDayMethod } from '../../shared/season/degree-day.ts';
import type { Almanac } from './content.ts';
import { heldNumber, heldRow } from './calculator-figures.ts';
import { sourceWords, sureness } from './figures.ts';
import { noteOf } from './notes.ts';
import type { Note } from './page-context.ts';

export type BloomPlant = {
  readonly id: string;
  readonly name: string;
  readonly sum: number;
  readonly scale: 'F' | 'C';
  readonly base: number;
  readonly cap?: number;
  readonly from: MonthDay;
  readonly method: DegreeDayMethod | 'not stated';
  readonly stage: string;
  readonly place: string;
  readonly fromMemory: boolean;
  readonly note: number;
  /** Days of the year on which the club's members saw it, one per year. */
  readonly observed: readonly number[];
};

/** Twelve monthly means of the highest and of the lowest temperature, and the spread of daily means, all in one scale. */
export type ClubNormals = {
  readonly maxima: readonly number[];
  readonly minima: readonly number[];
  readonly scale: 'F' | 'C';
  readonly spread: number;
  /** Place and years of the normals, for members. */
  readonly words: string;
  readonly note: number;
};

/** Groups the plants of one base, in the order of their sums. */
export function bloomPlants(almanac: Almanac, notes: Note[]): BloomPlant[] {
  return almanac.forage.flatMap(({ id, data }): BloomPlant[] => {
    const { bloom } = data;
    if (!bloom) return [];
    const source = almanac.sources.get(bloom.source);
    return [{
      id, name: data.title, sum: bloom['degree-days'], scale: bloom.scale, base: bloom.base, ...(bloom.cap === undefined ? {} : { cap: bloom.cap }), from: bloom.from, method: bloom.method, stage: bloom.stage, place: bloom.place,
      fromMemory: bloom.certainty === 'memory', note: noteOf(notes, [source ? sourceWords(source) : bloom.source, bloom.place, capital(sureness(bloom.certainty))], source), observed: (data.observed ?? []).map(({ first }) => dayOfCommonYear(monthDayOf(first))),
    }];
  }).sort((a, b) => (a.scale === b.scale ? a.base - b.base : a.scale < b.scale ? -1 : 1) || a.sum - b.sum); // prettier-ignore
}

/** The normals of the main district, or null where the club has none or no spread. */
export function heldNormals({ club, seasons, sources }: Almanac, notes: Note[]): ClubNormals | null {
  const [fields, spread] = [club.climate, seasons[0]?.climate?.spread];
  if (!fields || !spread) return null;
  const { maxima, minima, scale, period } = fields;
  const source = sources.get(fields.source);
  return {
    maxima,
    minima,
    scale,
    spread: spreadIn(scale, spread),
    words: `${seasons[0]!.name}, ${period}`,
    note: noteOf(notes, [source ? sourceWords(source) : fields.source, period], source),
  };
}

/** Days by which a date from normals may be off. */
export function heldDoubt(almanac: Almanac, day: string): { readonly days: number; readonly daysForSmallSums: number } | null {
  const days = heldNumber(almanac, 'degree-day-window-days', day);
  const early = heldRow(almanac, 'degree-day-window-days', day, 'early')?.value;
  return days === null ? null : { days, daysForSmallSums: early ?? days };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
