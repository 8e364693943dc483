/* Template text of a new entry's file: remarks, fields to fill, and for a page the words below them. */
import { COUNT_COLUMNS } from '../../schemas/counts.ts';
import { collections, type Collection } from '../../schemas/collections.ts';
import { fieldLines, type Given, type Shaped } from './field-lines.ts';
import { wordsBelow } from './words-below.ts';

const DRAFT = ['# A draft: it appears nowhere until the line "draft: true" is taken out.'];
const HOW = [
  '# Fill each blank; the remark above it says with what. A line such as "#name: value" is a field that may be left out:',
  '# to use it, take away its first number sign, and those of the indented lines below it.',
];

/** `words` replace the kind's own words below the fields. */
export function template(collection: Collection, given: Given, words?: string): string {
  if (collection === 'counts') return countsTable(given);
  const { schema, ending } = collections[collection];
  const lines = [...(given.draft === true ? DRAFT : []), ...HOW, ...fieldLines(schema, given)];
  if (ending === '.yaml') return `${lines.join('\n')}\n`;
  const below = wordsBelow(collection);
  return `${['---', ...lines, ...(words === undefined ? below.remarks : []), '---'].join('\n')}\n${words ?? below.words}`;
}

/** Entries of this kind may be drafts. */
export const mayBeDraft = (collection: Collection): boolean => 'draft' in ((collections[collection].schema as Shaped).shape ?? {});

/** A CSV table has columns instead of fields, so the remarks are above them. */
function countsTable({ title }: Given): string {
  return [
    `# title: ${String(title)}`,
    '# Below the columns write a line a count, such as 2026-06-13,valley,3,300,wash',
    '# The day, a district of club.yaml, the mites, the bees, and how they were counted (wash, roll or gas)',
    COUNT_COLUMNS.join(','),
    '',
  ].join('\n');
}
