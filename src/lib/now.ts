/*
 * Every dated page of the almanac with its window in each district, in the order of the main district's year. The first page decides in
 * the browser what is due.
 */
import type { Tongue } from '../../shared/country/language.ts';
import type { Almanac } from './content.ts';
import { windowsOf, type Windows } from './season.ts';
import type { Status } from './status.ts';

export type Dated = {
  id: string;
  href: string;
  title: string;
  /** The language of its words, where it is not the page's. */
  lang?: Tongue | undefined;
  why: string;
  windows: Windows;
  kind: 'list' | 'pest' | 'know-how';
  /** How grave a pest or disease is. */
  status?: Status;
};

export function datedPages(almanac: Almanac, base: string): Dated[] {
  const { checklists, bulletins, articles, seasons } = almanac;
  const all = [
    ...checklists.map(({ id, data, lang }) => ({
      lang,
      kind: 'list' as const,
      id,
      href: `${base}lists/${id}/`,
      title: data.title,
      when: data.when,
      why: data.why,
    })),
    ...bulletins.map(({ id, data, lang }) => ({
      lang,
      kind: 'pest' as const,
      id,
      status: data.status,
      href: `${base}pests/${id}/`,
      title: data.title,
      when: data.when,
      why: data.why,
    })),
    ...articles.map(({ id, data, lang }) => ({
      lang,
      kind: 'know-how' as const,
      id,
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
