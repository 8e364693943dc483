/*
 * Season dates of each district, with their basis. Every date on a page, list, calendar or print comes from here. shared/season computes
 * the days from climate, members' dates and guesses.
 */
import { languageHere } from '../../shared/country/language-here.ts';
import { tongueOf } from '../../shared/country/language.ts';
import { spanishName } from '../../shared/season/spanish.ts';
import type { Joint, MonthDay } from '../../shared/days/month-day.ts';
import { formatMonthDays } from './country.ts';
import { anchorsIn, phaseName, phases, readWhen, resolveWhen, type Phase, type SeasonDays, type When } from '../../shared/season/when.ts';
import { districtsOf, type District, type SeasonFields } from '../schemas/as-season.ts';
import type { Club } from '../schemas/club.ts';
import { basisOfAnchors } from './season-words.ts';

export type Window = { from: MonthDay; to: MonthDay };
export type DistrictSeason = Omit<District, 'days'> & { days: SeasonDays; basisOf: (when: When) => string | null };
export type { Phase } from '../../shared/season/when.ts';

/** Windows of one entry, one per district, main district first. Null where the entry has no date. */
export type Windows = {
  district: string;
  name: string;
  window: Window;
  /** The basis of the days and their possible error. Null for days as written. */ basis: string | null;
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

/** A phase lasts from its own start to the next one's. */
const anchorsBehind = (when: When): string[] => (when.kind === 'phase' ? [when.phase, `after ${when.phase}`] : anchorsIn(when));

/**
 * The window of a `when:` in each district. Written days of the year apply in every district. A page of a book may count from a day that
 * this club has no date for, and then has no window.
 */
export function windowsOf(when: string | undefined, seasons: readonly DistrictSeason[]): Windows | null {
  const read = when === undefined ? null : readWhen(when);
  if (!read?.ok) return null;
  const all = seasons.flatMap(({ id, name, days, basisOf }) => {
    const isDated = anchorsIn(read.value).every((anchor) => days.anchors[anchor] !== undefined);
    const window = isDated ? resolveWhen(read.value, days) : null;
    return window ? [{ district: id, name, window, basis: basisOf(read.value) }] : [];
  });
  return all.length > 0 ? all : null;
}

/** "May 3 to 17", "December 28 to January 9"; with a dash in a row or table. */
export const windowWords = ({ from, to }: Window, joint?: Joint): string => formatMonthDays(from, to, joint);

/** Encodes windows for the browser: `valley 05-03 05-17;hill 05-12 05-26`. */
export const windowsText = (windows: readonly { district: string; window: Window }[]): string =>
  windows.map(({ district, window }) => `${district} ${window.from} ${window.to}`).join(';');

/** Encodes words that differ by district: `valley=from 6 years|hill=9 days later`. Undefined where one text applies to all. */
export function byDistrict(texts: readonly { district: string; words: string }[]): string | undefined {
  return new Set(texts.map(({ words }) => words)).size < 2
    ? undefined
    : texts.map(({ district, words }) => `${district}=${words.replaceAll('|', '/')}`).join('|');
}

/** The phases of the year in their order, each with this club's name and its days in each district. */
export const partsOfYear = (seasons: DistrictSeason[], club: Pick<Club, 'words'>): { words: string; windows: string }[] =>
  phases.map((phase) => ({ words: phaseTitle(phase, club), windows: windowsText(windowsOf(`in ${phaseName(phase)}`, seasons)!) }));

/** The phases as options of a form, each with its days: name, words, the words by district, and its windows for the browser. */
export function partChoices(
  seasons: readonly DistrictSeason[],
  club: Pick<Club, 'words'>,
): (readonly [phase: Phase, words: string, byDistrict: string | undefined, windows: string])[] {
  return phases.map((phase) => {
    const texts = seasons.map(({ id, days }) => ({
      district: id,
      words: `${phaseTitle(phase, club)}: ${windowWords(days.phases[phase])}`,
    }));
    const windows = windowsText(seasons.map(({ id, days }) => ({ district: id, window: days.phases[phase] })));
    return [phase, texts[0]!.words, byDistrict(texts), windows] as const;
  });
}

/** This club's name for a phase or an anchor. Authors always use one name; readers with `words: uk` see autumn and frost. */
export const phaseTitle = (phase: string, club: Pick<Club, 'words'>): string =>
  tongueOf(languageHere()) === 'es'
    ? spanishName(phase)
    : club.words === 'uk'
      ? phaseName(phase).replace('fall', 'autumn')
      : phaseName(phase);
