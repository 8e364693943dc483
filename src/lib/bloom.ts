/*
 * Bloom calendar of each district: every plant of forage/ with its days in flower, their basis, and its sum with method and place. A
 * plant without a date states the reason.
 */
import * as text from './bloom.en.ts';
import { dayOfCommonYear } from '../../shared/days/month-day.ts';
import { formatMonthDay } from './country.ts';
import { inBloom } from '../../shared/season/bloom.ts';
import type { BloomHere } from '../../shared/season/bloom-calendar.ts';
import type { Forage } from '../schemas/forage.ts';
import type { Almanac } from './content.ts';
import { sourceWords, sureness } from './figures.ts';
import { datedWords, noBloom } from './season-words.ts';
import type { DistrictSeason, Windows } from './season.ts';

export type PlantHere = {
  id: string;
  title: string;
  botanical: string;
  worth: string;
  gives: Forage['gives'];
  /** The kind of days: "in bloom", or "first flowers" where nobody knows how long it lasts. */
  stage: string;
  windows: Windows | null;
  /** The reason for a missing date. */
  without: string | null;
  /** The sum with base, first day, method, place and source. */
  sum: string | null;
};

/** In the order of the main district's year. Plants without a date come last. */
export function plantsHere({ forage, seasons, sources }: Almanac): PlantHere[] {
  return forage
    .map(({ id, data }) => {
      const own = seasons.map((season) => ({ season, here: season.blooms.find(({ plant }) => plant === id)! }));
      const main = own[0]!.here.bloom;
      const source = data.bloom && sources.get(data.bloom.source);
      return {
        id,
        title: data.title,
        botanical: data.botanical,
        worth: data.worth,
        gives: data.gives,
        stage: main.ok ? stageOf(data, main.value.lastsDays !== null, main.value.from) : '',
        windows: main.ok ? windowsOfBloom(own, own[0]!.season.name) : null,
        without: main.ok ? null : noBloom(main.reason),
        sum: data.bloom ? sumWords(data.bloom, source ? sourceWords(source) : data.bloom.source) : null,
      };
    })
    .sort((a, b) => start(a) - start(b) || (a.title < b.title ? -1 : 1));
}

const start = ({ windows }: PlantHere): number => (windows ? dayOfCommonYear(windows[0]!.window.from) : 999);

function stageOf({ bloom }: Forage, lasts: boolean, from: 'observed' | 'degree-days'): string {
  if (lasts) return text.stages.inBloom;
  return from === 'degree-days' && bloom?.stage === 'full bloom' ? text.stages.full : text.stages.first;
}

function windowsOfBloom(own: { season: DistrictSeason; here: BloomHere }[], main: string): Windows {
  return own.flatMap(({ season, here: { bloom } }) => {
    if (!bloom.ok) return [];
    const { middle, earliest, latest, basis } = bloom.value;
    return [
      {
        district: season.id,
        name: season.name,
        window: inBloom(bloom.value),
        basis: text.about(formatMonthDay(middle), datedWords({ expected: middle, earliest, latest, basis }, { titles: new Map(), main })),
      },
    ];
  });
}

/** The sum with its place, its source, and how sure it is. */
function sumWords({ base, cap, scale, from, method, place, certainty, ...bloom }: NonNullable<Forage['bloom']>, source: string): string {
  const degrees = (value: number): string => `${value} ${scale}`;
  const sum = text.sum({
    isFull: bloom.stage === 'full bloom',
    degreeDays: bloom['degree-days'],
    base: degrees(base),
    cap: cap === undefined ? null : degrees(cap),
    from: formatMonthDay(from),
    method,
  });
  return `${sum}; ${place}. ${source.replace(/\.?$/, '.')} ${sureness(certainty).replace(/^./, (first) => first.toUpperCase())}.`;
}
