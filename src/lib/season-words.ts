/* Describes the basis of a date for a page: "from 6 years of members' dates, about 9 days either way". */
import { languageHere, spoken } from '../../shared/country/language-here.ts';
import { tongueOf } from '../../shared/country/language.ts';
import { spanishName } from '../../shared/season/spanish.ts';
import { dayOfCommonYear, type MonthDay } from '../../shared/days/month-day.ts';
import { anchorRules, type AnchorDate, type AnchorId, type Anchors, type Basis } from '../../shared/season/anchors.ts';
import { anchorName, phases, type Phase } from '../../shared/season/phases.ts';
import { phaseStarts } from '../../shared/season/year.ts';
import type { NoBloom } from '../../shared/season/bloom.ts';
import type { Club } from '../schemas/club.ts';
import * as en from './season-words.en.ts';
import * as es from './season-words.es.ts';

/** Names of plants by id for a sentence, and the district that others follow. */
export type Names = { titles: ReadonlyMap<string, string>; main: string };

const text = () => spoken({ en, es });

export function basisWords(basis: Basis, names: Names): string {
  const words = text().basis;
  switch (basis.kind) {
    case 'observed':
      return words.observed(basis.years);
    case 'bloom-seen':
      return words.bloomSeen(basis.years, names.titles.get(basis.plant) ?? basis.plant);
    case 'shifted':
      return words[basis.days > 0 ? 'later' : 'earlier'](Math.abs(basis.days), names.main, basisWords(basis.of, names));
    default:
      return words[basis.kind];
  }
}

/** Adds how far off a single year may be. Says nothing about a guess without a range. */
export function datedWords({ basis, ...dates }: AnchorDate, names: Names): string {
  return withDoubt(basisWords(basis, names), doubtDays(dates));
}

const withDoubt = (words: string, doubt: number): string => (doubt > 0 ? text().withDoubt(words, doubt) : words);

/** The wider side of the range. */
export function doubtDays({ expected, earliest, latest }: Pick<AnchorDate, 'expected' | 'earliest' | 'latest'>): number {
  return Math.max(between(earliest, expected), between(expected, latest));
}

const between = (from: MonthDay, to: MonthDay): number => (dayOfCommonYear(to) - dayOfCommonYear(from) + 365) % 365;

/** The basis of the anchors that a window depends on: each basis once, with the largest doubt. Null where it depends on none. */
export function basisOfAnchors(points: readonly string[], anchors: Anchors, names: Names): string | null {
  const dates = points.flatMap((point) => anchors[anchorBehind(point)] ?? []);
  if (dates.length === 0) return null;
  const bases = [...new Set(dates.map(({ basis }) => basisWords(basis, names)))];
  return withDoubt(text().bases(bases), Math.max(...dates.map(doubtDays)));
}

/** `main-flow`, `after main-flow` or `first-freeze`. */
function anchorBehind(point: string): AnchorId {
  const next = point.startsWith('after ');
  const index = phases.indexOf(point.replace(/^after /, '') as Phase);
  return index < 0 ? (point as AnchorId) : phaseStarts[phases[(index + (next ? 1 : 0)) % phases.length]!].anchor;
}

/** The reason why a plant has no date here. */
export const noBloom = (reason: NoBloom): string => text().noBloom[reason];

/** Every anchor in the order of the year, in the club's variety of English. */
export function anchorTitle(id: AnchorId, club: Pick<Club, 'words'>): string {
  if (tongueOf(languageHere()) === 'es') return spanishName(id);
  const words = anchorName(id);
  return club.words === 'uk' ? words.replace('fall', 'autumn').replace('freeze', 'frost') : words;
}

export const anchorOrder: readonly AnchorId[] = anchorRules.map(({ id }) => id);
