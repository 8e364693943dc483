/* The files under /open/, and what each holds. */
import { openKinds, type OpenKind } from '../schemas/open.ts';

export type OpenFile = { name: string; words: string; schema?: string };

const WORDS: Record<OpenKind, string> = {
  bulletins: 'Bulletins with their fields, signs and words',
  figures: 'Figures with every row and source',
  signs: 'Signs, and the bulletins they point at',
  treatments: 'Label rows by active ingredient',
  forage: 'Forage plants with their sums of warmth',
};

export const OPEN_FILES: readonly OpenFile[] = [
  ...openKinds.map((kind) => ({ name: `${kind}.json`, words: WORDS[kind], schema: `${kind}.schema.json` })),
  { name: 'figures.csv', words: 'Figures as a table, unit and source in columns of their own' },
];
