/* The list of collections of a content folder, one line each. All other lists derive from this one. */
import type { z } from 'astro/zod';
import { answers } from './answers.ts';
import { articles } from './articles.ts';
import { bulletins } from './bulletins.ts';
import { cautions } from './cautions.ts';
import { checklists } from './checklists.ts';
import { counts } from './counts.ts';
import { drawings } from './drawings.ts';
import { files } from './files.ts';
import { figures } from './figures.ts';
import { forage } from './forage.ts';
import { local } from './local.ts';
import { meetings } from './meetings.ts';
import { notices } from './notices.ts';
import { reading } from './reading.ts';
import { sheets } from './sheets.ts';
import { signs } from './signs.ts';
import { sources } from './sources.ts';
import { treatments } from './treatments.ts';
import { words } from './words.ts';

type Kind = {
  schema: z.ZodType;
  /** What one entry is called, also by the command `new`. */
  entry: string;
  /** `.mdx`: front matter and words. `.yaml`: fields only. `.csv`: rows below the names of their columns. */
  ending: '.mdx' | '.yaml' | '.csv';
  /** The address of an entry's page. Null where it has none. */
  path: string | null;
  /** A club may have no entry of this kind. */
  mayLack?: true;
};

export const collections = {
  checklists: { schema: checklists, entry: 'checklist', ending: '.mdx', path: '/lists/' },
  bulletins: { schema: bulletins, entry: 'bulletin', ending: '.mdx', path: '/pests/' },
  articles: { schema: articles, entry: 'article', ending: '.mdx', path: '/know-how/' },
  meetings: { schema: meetings, entry: 'meeting', ending: '.mdx', path: '/meetings/' },
  reading: { schema: reading, entry: 'reading', ending: '.yaml', path: null },
  treatments: { schema: treatments, entry: 'treatment', ending: '.yaml', path: '/treatments/' },
  forage: { schema: forage, entry: 'plant', ending: '.yaml', path: null },
  words: { schema: words, entry: 'word', ending: '.yaml', path: null },
  answers: { schema: answers, entry: 'answer', ending: '.yaml', path: null, mayLack: true },
  figures: { schema: figures, entry: 'figure', ending: '.yaml', path: null },
  sources: { schema: sources, entry: 'source', ending: '.yaml', path: null },
  cautions: { schema: cautions, entry: 'caution', ending: '.yaml', path: null },
  signs: { schema: signs, entry: 'sign', ending: '.yaml', path: null, mayLack: true },
  notices: { schema: notices, entry: 'notice', ending: '.yaml', path: null, mayLack: true },
  counts: { schema: counts, entry: 'counts', ending: '.csv', path: null, mayLack: true },
  drawings: { schema: drawings, entry: 'drawing', ending: '.yaml', path: null, mayLack: true },
  files: { schema: files, entry: 'file', ending: '.yaml', path: null, mayLack: true },
  sheets: { schema: sheets, entry: 'sheet', ending: '.yaml', path: '/sheets/', mayLack: true },
  local: { schema: local, entry: 'local', ending: '.mdx', path: null, mayLack: true },
} as const satisfies Record<string, Kind>;

export type Collection = keyof typeof collections;
export const collectionNames = Object.keys(collections) as [Collection, ...Collection[]];
