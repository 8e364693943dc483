/*
 * Every dated page of the almanac with its window in each district, in the order of the main district's year. The first page decides in
 * the browser what is due. Without script it shows the whole year in order.
 */
import { phases, type Phase } from '../../shared/season/phases.ts';
import type { Hazard } from '../schemas/hazards.ts';
import type { Almanac } from './content.ts';
import { windowsOf, type Windows } from './season.ts';

export type Dated = { href: string; title: string; why: string; windows: Windows; kind: 'list' | 'pest' | 'know-how' };

export function datedPages(almanac: Almanac, base: string): Dated[] {
  const { checklists, bulletins, articles, seasons } = almanac;
  const all = [
    ...checklists.map(({ id, data }) => ({
      kind: 'list' as const,
      href: `${base}lists/${id}/`,
      title: data.title,
      when: data.when,
      why: data.why,
    })),
    ...bulletins.map(({ id, data }) => ({
      kind: 'pest' as const,
      href: `${base}pests/${id}/`,
      title: data.title,
      when: data.when,
      why: data.why,
    })),
    ...articles.map(({ id, data }) => ({
      kind: 'know-how' as const,
      href: `${base}know-how/${id}/`,
      title: data.title,
      when: data.when,
      why: data.why ?? data.summary,
    })),
  ];
  return all
    .flatMap(({ when, ...page }) => {
      const windows = windowsOf(when, seasons);
      return windows ? [{ ...page, windows }] : [];
    })
    .sort((a, b) => compare(a.windows[0]!.window.from, b.windows[0]!.window.from) || rank(a) - rank(b) || compare(a.title, b.title));
}

const rank = (page: Dated): number => ['list', 'pest', 'know-how'].indexOf(page.kind);
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** The hazard most typical of each phase: the one that members' work in that phase brings first. */
const SEASONAL: Record<Phase, Hazard> = {
  'winter-rest': 'fumes',
  'build-up': 'honey-as-feed',
  swarming: 'climbing',
  'main-flow': 'lifting',
  dearth: 'fire',
  'fall-preparation': 'acids',
};

/** One line for each phase whose caution this club has. */
export function seasonalCautions({ cautions }: Almanac): Map<Phase, string> {
  return new Map(
    phases.flatMap((phase) => {
      const line = cautions.get(SEASONAL[phase])?.line;
      return line === undefined ? [] : [[phase, line] as const];
    }),
  );
}
