/* Describes the basis of a district's dates for members: which normals, of which years, by whom, and with which spread between years. */
import { formatExact, formatNumber } from '../../shared/numbers/show-number.ts';
import { spreadIn, type Spread } from '../../shared/season/climate.ts';
import type { ClimateFields } from '../schemas/climate.ts';
import type { Almanac } from './content.ts';
import * as text from './climate-words.en.ts';
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
    return [{ name, words: `${text.normals(fields.period, from(fields.source))} ${spreadSaid(climate.spread, fields, from)}` }];
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
  if (!spread) return text.noSpread;
  const degrees = `${formatNumber(spreadIn(fields.scale, spread), { places: 1 })} ${fields.scale}`;
  if (spread.from === 'published-sum') {
    const { sum, base, period, source } = fields['degree-days']!;
    return text.fromSum(degrees, String(sum), `${formatExact(base)} ${fields.scale}`, period, from(source));
  }
  if (spread.from === 'region') return text.fromRegion(degrees, fields.spread && from(fields.spread.source));
  return text.fromMembers(degrees);
}
