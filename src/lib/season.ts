/*
 * When things fall in each district, and where each date comes from. Every date on every page, list, calendar and print comes
 * through here; how the days are had from climate, members' dates and guesses is in shared/season.
 */
import { formatMonthDays, type MonthDay } from '../../shared/days/month-day.ts';
import { anchorsIn, phaseName, phases, readWhen, resolveWhen, type Phase, type SeasonDays, type When } from '../../shared/season/when.ts';
import { districtsOf, type District, type SeasonFields } from '../schemas/as-season.ts';
import type { Club } from '../schemas/club.ts';
import { basisOfAnchors } from './season-words.ts';

export type Window = { from: MonthDay; to: MonthDay };
export type DistrictSeason = Omit<District, 'days'> & { days: SeasonDays; basisOf: (when: When) => string | null };
export type { Phase } from '../../shared/season/when.ts';

/** Windows of one entry, a district each, main district first; null where the entry is bound to no date. */
export type Windows = {
  district: string;
  name: string;
  window: Window;
  /** Where the days come from and how far off they may be; null for days as written. */ basis: string | null;
}[];

export function seasonsOf(fields: SeasonFields): DistrictSeason[] {
  const districts = districtsOf(fields);
  const titles = new Map(fields.forage.map(({ id, data }) => [id, data.title.toLowerCase()]));
  return districts.map((district) => {
    if (!district.days.ok) throw new Error(`seasonsOf: ${district.name} has no whole year, which checks refuse to be without`);
    const days = district.days.value;
    return {
      ...district,
      days,
      basisOf: (when) => basisOfAnchors(anchorsBehind(when), district.anchors, { titles, main: districts[0]!.name }),
    };
  });
}

/** A part of the year lies between its own start and the next one's. */
const anchorsBehind = (when: When): string[] => (when.kind === 'phase' ? [when.phase, `after ${when.phase}`] : anchorsIn(when));

/** The window of a `when:` in each district. Dates written as days of the year hold in every district as written. */
export function windowsOf(when: string | undefined, seasons: readonly DistrictSeason[]): Windows | null {
  const read = when === undefined ? null : readWhen(when);
  if (!read?.ok) return null;
  const all = seasons.flatMap(({ id, name, days, basisOf }) => {
    const window = resolveWhen(read.when, days);
    return window ? [{ district: id, name, window: window as Window, basis: basisOf(read.when) }] : [];
  });
  return all.length > 0 ? all : null;
}

/** "3 to 17 May", "28 December to 9 January". */
export const windowWords = ({ from, to }: Window): string => formatMonthDays(from, to);

/** How windows travel to the browser: `valley 05-03 05-17;hill 05-12 05-26`. */
export const windowsText = (windows: readonly { district: string; window: Window }[]): string =>
  windows.map(({ district, window }) => `${district} ${window.from} ${window.to}`).join(';');

/** How words that differ by district travel: `valley=from 6 years|hill=9 days later`; undefined where one says it for all. */
export function byDistrict(said: readonly { district: string; words: string }[]): string | undefined {
  return new Set(said.map(({ words }) => words)).size < 2
    ? undefined
    : said.map(({ district, words }) => `${district}=${words.replaceAll('|', '/')}`).join('|');
}

/** The parts of the year to choose among, each with its days, as a form shows them: name, words, and the words by district. */
export function partChoices(
  seasons: readonly DistrictSeason[],
  club: Pick<Club, 'words'>,
): (readonly [phase: Phase, words: string, byDistrict: string | undefined])[] {
  return phases.map((phase) => {
    const said = seasons.map(({ id, days }) => ({
      district: id,
      words: `${phaseTitle(phase, club)}: ${windowWords(days.phases[phase] as Window)}`,
    }));
    return [phase, said[0]!.words, byDistrict(said)] as const;
  });
}

/** What this club calls a part of the year or an anchor. Authors write the one name everywhere; readers of `words: uk` see autumn and frost. */
export const phaseTitle = (phase: string, club: Pick<Club, 'words'>): string =>
  club.words === 'uk' ? phaseName(phase).replace('fall', 'autumn') : phaseName(phase);

export { phaseName as phaseWords } from '../../shared/season/when.ts';
