/* The one list of what a content folder holds: a line a collection. */
import type { z } from 'astro/zod';
import { articles } from './articles.ts';
import { bulletins } from './bulletins.ts';
import { cautions } from './cautions.ts';
import { checklists } from './checklists.ts';
import { counts } from './counts.ts';
import { drawings } from './drawings.ts';
import { figures } from './figures.ts';
import { forage } from './forage.ts';
import type { KINDS } from './kinds.ts';
import { meetings } from './meetings.ts';
import { notices } from './notices.ts';
import { reading } from './reading.ts';
import { signs } from './signs.ts';
import { sources } from './sources.ts';
import { treatments } from './treatments.ts';
import { words } from './words.ts';

type Kind = {
  schema: z.ZodType;
  /** `.mdx`: front matter and words; `.yaml`: fields only; `.csv`: rows under the names of their columns. */
  ending: '.mdx' | '.yaml' | '.csv';
  /** Where an entry's page is; null where it has none of its own. */
  path: string | null;
  /** A club may well have none of these today. */
  mayLack?: true;
};

export const collections = {
  checklists: { schema: checklists, ending: '.mdx', path: '/lists/' },
  bulletins: { schema: bulletins, ending: '.mdx', path: '/pests/' },
  articles: { schema: articles, ending: '.mdx', path: '/know-how/' },
  meetings: { schema: meetings, ending: '.mdx', path: '/meetings/' },
  reading: { schema: reading, ending: '.yaml', path: null },
  treatments: { schema: treatments, ending: '.yaml', path: '/treatments/' },
  forage: { schema: forage, ending: '.yaml', path: null },
  words: { schema: words, ending: '.yaml', path: null },
  figures: { schema: figures, ending: '.yaml', path: null },
  sources: { schema: sources, ending: '.yaml', path: null },
  cautions: { schema: cautions, ending: '.yaml', path: null },
  signs: { schema: signs, ending: '.yaml', path: null, mayLack: true },
  notices: { schema: notices, ending: '.yaml', path: null, mayLack: true },
  counts: { schema: counts, ending: '.csv', path: null, mayLack: true },
  drawings: { schema: drawings, ending: '.yaml', path: null, mayLack: true },
} as const satisfies Record<(typeof KINDS)[number], Kind>;

export type Collection = keyof typeof collections;
export const collectionNames = Object.keys(collections) as Collection[];
