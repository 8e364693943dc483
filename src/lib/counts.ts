/*
 * The club's own mite counts, one season per file. For each half-month: the number of colonies, the spread of their rates, the rate of
 * all together with its likely range, and how many reached the level that the club follows. It contains no names, and no place finer than
 * a district.
 */
import { languageHere } from '../../shared/country/language-here.ts';
import { dayOf, partsOf, type Day } from '../../shared/days/day.ts';
import { halfMonthName, isWithinSpan, monthDayOf } from '../../shared/days/month-day.ts';
import { apiaryRate, type ApiaryRate } from '../../shared/mites/apiary-rate.ts';
import { ratePer100 } from '../../shared/mites/rate.ts';
import { spreadOf, type Five } from '../../shared/numbers/spread-of.ts';
import { phases, type Phase } from '../../shared/season/phases.ts';
import type { CountRow } from '../schemas/counts.ts';
import type { Almanac } from './content.ts';
import { followedLevels, type HeldLevel } from './calculator-figures.ts';
import * as text from './counts.en.ts';
import type { DistrictSeason } from './season.ts';

export type HalfMonth = {
  /** "First half of June", with the year where the season crosses New Year. */
  name: string;
  colonies: number;
  districts: { name: string; colonies: number }[];
  rates: number[];
  spread: Five;
  together: ApiaryRate;
  /** The level of the main district in the middle of it, or undefined where the club follows none. */
  levelPer100?: number | undefined;
  /** Colonies at or over the level of their own district and day. Null where one of them has no level. */
  over: number | null;
  methods: CountRow['method'][];
};

export type Season = { id: string; title: string; from: Day; to: Day; colonies: number; halves: HalfMonth[]; together: ApiaryRate };

export const rateText = text.rateText;

/** The likely range, "1.2 to 3.4". */
export const rangeText = ({ lowPer100, highPer100, range }: ApiaryRate): string =>
  range === 'too-few-colonies' ? text.noRange : text.range(lowPer100!, highPer100!);

/** Colonies at or over the level, of all. */
export const overText = ({ over, colonies }: HalfMonth): string => (over === null ? text.noLevel : text.over(over, colonies));

export function countSeasons(almanac: Almanac, day: string): Season[] {
  const levels = followedLevels(almanac, 'mite-action-level', day);
  return almanac.counts
    .filter(({ data }) => data.rows.length > 0)
    .map(({ id, data }) => {
      const rows = [...data.rows].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
      return {
        id,
        title: data.title ?? text.titleOf(rows[0]!.date.slice(0, 4)),
        from: rows[0]!.date,
        to: rows.at(-1)!.date,
        colonies: rows.length,
        halves: halvesOf(rows, almanac.seasons, levels),
        together: apiaryRate(rows),
      };
    })
    .sort((a, b) => (a.from < b.from ? 1 : -1));
}

function halvesOf(rows: readonly CountRow[], seasons: readonly DistrictSeason[], levels: readonly HeldLevel[]): HalfMonth[] {
  const runsOver = rows[0]!.date.slice(0, 4) !== rows.at(-1)!.date.slice(0, 4);
  const keyOf = ({ date }: CountRow): string => `${date.slice(0, 7)} ${Number(date.slice(8)) <= 15 ? 1 : 2}`;
  return [...new Set(rows.map(keyOf))].map((key) => {
    const held = rows.filter((row) => keyOf(row) === key);
    const { year, month } = partsOf(held[0]!.date);
    const rates = held.map(({ mites, bees }) => ratePer100(mites, bees));
    const own = held.map((row) => levelOn(row.date, seasons.find(({ id }) => id === row.district) ?? seasons[0]!, levels));
    return {
      name: halfMonthName(monthDayOf(held[0]!.date), languageHere()) + (runsOver ? ` ${key.slice(0, 4)}` : ''),
      colonies: held.length,
      districts: seasons
        .map(({ id, name }) => ({ name, colonies: held.filter(({ district }) => district === id).length }))
        .filter(({ colonies }) => colonies > 0),
      rates,
      spread: spreadOf(rates),
      together: apiaryRate(held),
      levelPer100: levelOn(dayOf(year, month, key.endsWith('1') ? 8 : 23), seasons[0]!, levels),
      over: own.some((level) => level === undefined) ? null : rates.filter((rate, index) => rate >= own[index]!).length,
      methods: [...new Set(held.map(({ method }) => method))].sort(),
    };
  });
}

/** The level of the phase that contains a day. The strictest counts where several rows cover it. */
function levelOn(date: Day, { days }: DistrictSeason, levels: readonly HeldLevel[]): number | undefined {
  const monthDay = monthDayOf(date);
  const phase = phases.find((each: Phase) => isWithinSpan(monthDay, days.phases[each].from, days.phases[each].to));
  const covering = levels.filter((level) => phase !== undefined && level.phases.includes(phase)).map(({ levelPer100 }) => levelPer100);
  return covering.length > 0 ? Math.min(...covering) : undefined;
}
