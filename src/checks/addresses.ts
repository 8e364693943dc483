/* Addresses of the site, and the fragments that exist on each page. */
import { attribute, headingIds, isTag, walk } from '../source/prose.ts';
import { calculatorNames } from '../schemas/calculators.ts';
import { collections, type Collection } from '../schemas/collections.ts';
import type { ValidEntries } from './fields.ts';
import { isAway, isPage, type Page } from './place.ts';

/** Pages that exist in every club. */
const STANDING = [
  '/',
  '/year/',
  '/year/bloom/',
  '/lists/',
  '/pests/',
  '/work-it-out/',
  '/know-how/',
  '/meetings/',
  '/sheets/',
  '/reading/',
  '/who-to-ask/',
  '/words/',
  '/search/',
  '/about/',
  '/club/',
  '/notices/',
  '/withdrawn/',
  '/signs/',
  '/treatments/',
  '/figures/',
  '/counts/',
  '/open/',
  ...calculatorNames.map((slug) => `/work-it-out/${slug}/`),
];

export type Addresses = {
  /** Of whom they are. */
  club: ValidEntries;
  /** Each address with its fragments. Null where any fragment is allowed. */
  known: Map<string, Set<string> | null>;
  /** Addresses of drafts that readers cannot open. */
  drafts: Set<string>;
};

export function addressesOf(club: ValidEntries): Addresses {
  const known = new Map<string, Set<string> | null>(STANDING.map((address) => [address, null]));
  const drafts = new Set<string>();
  for (const [name, { path }] of Object.entries(collections)) {
    if (path === null) continue;
    const entries = new Map(club.folder.entries.filter(({ collection }) => collection === name).map((entry) => [entry.id, entry]));
    for (const id of club.ids[name as Collection]) {
      const entry = entries.get(id);
      known.set(`${path}${id}/`, entry && isPage(entry) ? namesOn(entry) : null);
      if (entry && isAway(entry)) drafts.add(`${path}${id}/`);
    }
  }
  known.set('/words/', club.ids.words);
  known.set('/reading/', club.ids.reading);
  return { club, known, drafts };
}

/** Headings and steps of a page, which are the possible targets of a link. */
export function namesOn(page: Page): Set<string> {
  const steps = [...walk(page.tree)].flatMap((node) =>
    isTag(node) && node.name === 'Task' ? [`step-${attribute(node, 'id') ?? ''}`] : [],
  );
  return new Set([...headingIds(page.tree).values(), ...steps]);
}
