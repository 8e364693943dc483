/* Describes the basis of a district's dates for members: which normals, of which years, by whom, and with which spread between years. */
import { spreadIn, type Spread } from '../../shared/season/climate.ts';
import type { ClimateFields } from '../schemas/climate.ts';
import type { Almanac } from './content.ts';
import { sourceWords } from './figures.ts';
import type { DistrictSeason } from './season.ts';

export function climatesSaid({ club, seasons, sources }: Almanac): { name: string; words: string }[] {
  return seasons.flatMap(({ name, climate }, index) => {
    const fields = index === 0 ? club.climate : club.districts[index]!.climate;
    if (!climate || !fields) return [];
    const from = (id: string): string => {
      const source = sources.get(id);
      return source ? sourceWords(source) : id;
    };
    return [{ name, words: `monthly normals of ${fields.period} (${from(fields.source)}). ${spreadSaid(climate.spread, fields, from)}` }];
  });
}

/** The districts with their own normals, each with the source in full as a sentence. */
export const climatesOf = ({ club, seasons, sources }: Almanac): { season: DistrictSeason; fields: ClimateFields; source: string }[] =>
  seasons.flatMap((season, index) => {
    const fields = index === 0 ? club.climate : club.districts[index]!.climate;
    const source = fields && sources.get(fields.source);
    return season.climate && fields ? [{ season, fields, source: source ? sourceWords(source).replace(/\.?$/, '.') : '' }] : [];
  });

function spreadSaid(spread: Spread | null, fields: ClimateFields, from: (id: string) => string): string {
  if (!spread) return 'How much days differ from year to year is not known here, so no date is worked out from degree-days.';
  const degrees = `${spreadIn(fields.scale, spread).toFixed(1)} ${fields.scale}`;
  if (spread.from === 'published-sum') {
    const { sum, base, period, source } = fields['degree-days']!;
    return `One day’s mean differs from its normal by about ${degrees}, so that the published ${sum} degree-days over ${base} ${fields.scale} are met (${period}, ${from(source)}).`;
  }
  if (spread.from === 'region')
    return `One day’s mean differs from its normal by about ${degrees} in this region${fields.spread ? ` (${from(fields.spread.source)})` : ''}.`;
  return `One day’s mean differs from its normal by about ${degrees}, so that plants bloom when members saw them.`;
}
