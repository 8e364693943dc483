/*
 * Next steps of calculators, resolved against the club's own content. A result of a kind names pages in order of preference. A club that
 * lacks the first gets the next best. After all of them comes a list that every almanac has, so no result ends without a way on.
 */
import type { Tongue } from '../../shared/country/language.ts';
import { calculators } from '../schemas/calculators.ts';
import type { Almanac } from './almanac.ts';
import { askOf, type Asked } from './page-context.ts';
import { kinds, rooms } from './next-steps.en.ts';
import { pageExists } from './rooms.ts';

export type NextStep = {
  /** Up to two links; each names pages below the base, the best one first: `lists/late-summer-mites/`. */
  readonly links: readonly (readonly string[])[];
  /** The duties of whom to call, the best one first. */
  readonly ask: readonly string[];
};

export type Way = { readonly path: string; readonly title: string; readonly words: string; readonly lang?: Tongue | undefined };
export type NextWays = { readonly links: readonly Way[]; readonly call: Asked | undefined };

const LAST_RESORTS = ['know-how/', 'pests/', 'lists/', 'work-it-out/', 'who-to-ask/'];

/** The ways on from a result, without a page twice. */
export function nextWays(almanac: Almanac, { links, ask }: NextStep): NextWays {
  const taken: string[] = [];
  for (const candidates of links) {
    const path = candidates.find((each) => !taken.includes(each) && pageExists(almanac, `/${each}`));
    if (path) taken.push(path);
  }
  if (taken.length === 0) taken.push(...LAST_RESORTS.filter((each) => pageExists(almanac, `/${each}`)).slice(0, 1));
  return {
    links: taken.map((path) => wayOf(almanac, path)),
    call: ask.map((duty) => askOf(almanac, duty)).find((each) => each !== undefined),
  };
}

function wayOf(almanac: Almanac, path: string): Way {
  const [title, words, lang]: readonly [string, string, Tongue?] = rooms[path] ?? titleOf(almanac, path) ?? [path, ''];
  return { path, title, words, ...(lang && { lang }) };
}

function titleOf(almanac: Almanac, path: string): readonly [string, string, Tongue?] | undefined {
  const [room = '', id = ''] = path.split('/');
  const tool = room === 'work-it-out' && calculators.find(({ slug }) => slug === id);
  if (tool) return [tool.title, tool.lead];
  const collections = {
    lists: ['checklists', kinds.checklist],
    pests: ['bulletins', kinds.problem],
    'know-how': ['articles', kinds.article],
  } as const;
  const [collection, word] = collections[room as keyof typeof collections] ?? [];
  const entry =
    collection && (almanac[collection] as { id: string; lang?: Tongue; data: { title: string } }[]).find((each) => each.id === id);
  return entry && [entry.data.title, word!, entry.lang];
}
