/*
 * When things fall in each district. The year's phases are the club's own dated guess for its main district; another
 * district runs a stated number of days later or earlier.
 */
import { formatMonthDay, type MonthDay } from '../../shared/days/month-day.ts';
import { phaseName, readWhen, resolveWhen, shiftWindow, type SeasonDays } from '../../shared/season/when.ts';
import { PHASES, type Club } from '../schemas/club.ts';

export type Window = { from: MonthDay; to: MonthDay };
export type DistrictSeason = { id: string; name: string; laterByDays: number; days: SeasonDays };
export type Phase = (typeof PHASES)[number];

/** Windows of one entry, a district each, main district first; null where the entry is bound to no date. */
export type Windows = { district: string; name: string; window: Window }[];

export function seasonsOf(club: Club): DistrictSeason[] {
  return club.districts.map((district) => {
    const later = district['later-by-days'];
    const phases = Object.fromEntries(PHASES.map((phase) => [phase, shiftWindow(windowOf(club.season.phases[phase]), later)]));
    const anchors = Object.fromEntries(PHASES.map((phase) => [phase, phases[phase]!.from]));
    return { id: district.id, name: district.name, laterByDays: later, days: { phases, anchors } as SeasonDays };
  });
}

/** The window of a `when:` in each district. Dates written as days of the year hold in every district as written. */
export function windowsOf(when: string | undefined, seasons: readonly DistrictSeason[]): Windows | null {
  const read = when === undefined ? null : readWhen(when);
  if (!read?.ok) return null;
  const all = seasons.flatMap(({ id, name, days }) => {
    const window = resolveWhen(read.when, days);
    return window ? [{ district: id, name, window: window as Window }] : [];
  });
  return all.length > 0 ? all : null;
}

/** "3 to 17 May", "28 December to 9 January". */
export function windowWords({ from, to }: Window): string {
  if (from === to) return formatMonthDay(from);
  return from.slice(0, 2) === to.slice(0, 2) && from < to ? `${Number(from.slice(3))} to ${formatMonthDay(to)}` : `${formatMonthDay(from)} to ${formatMonthDay(to)}`;
}

/** How windows travel to the browser: `valley 05-03 05-17;hill 05-12 05-26`. */
export const windowsText = (windows: Windows): string => windows.map(({ district, window }) => `${district} ${window.from} ${window.to}`).join(';');

/** What this club calls a part of the year. Authors write the one name everywhere; readers of `words: uk` see autumn. */
export const phaseTitle = (phase: string, club: Pick<Club, 'words'>): string => (club.words === 'uk' ? phaseName(phase).replace('fall', 'autumn') : phaseName(phase));

export { phaseName as phaseWords } from '../../shared/season/when.ts';

function windowOf(text: string): Window {
  const read = readWhen(text);
  const window = read.ok ? resolveWhen(read.when, { phases: {}, anchors: {} } as unknown as SeasonDays) : null;
  if (!window) throw new Error(`seasonsOf: needs phases as days of the year, got ${text}`);
  return window as Window;
}
