/*
 * Checks for numbers that an authority may revise outside of figures/. Figures have a source and a date, and pages refer to them. In
 * bulletins and treatments such a number is a fault. Elsewhere it is a hint, which check prints and build ignores.
 */
import { quoted, type Diagnostic } from '../source/diagnostic.ts';
import { isTag } from '../source/prose.ts';
import type { Nodes } from 'mdast';
import { fieldName, type ValidEntries, type ValidEntry } from './fields.ts';
import { measuresIn, type Measure } from './measures.ts';
import { atField, atWords, isPage, type Page } from './place.ts';

const BOUND = new Set(['bulletins', 'treatments']);
/** Their numbers are the figures themselves, or quotations of what was published. */
const NOT_READ = new Set(['figures', 'sources', 'counts', 'drawings']);

export const untaggedFaults = (club: ValidEntries): Diagnostic[] =>
  entriesOf(club)
    .filter(({ collection }) => BOUND.has(collection))
    .flatMap(measured);

/** Valid numbers that are better written as tags. */
export const untaggedHints = (club: ValidEntries): Diagnostic[] =>
  entriesOf(club)
    .filter(({ collection }) => !BOUND.has(collection) && !NOT_READ.has(collection))
    .flatMap(measured);

const entriesOf = (club: ValidEntries): ValidEntry[] => Object.values(club.of).flat() as ValidEntry[];

function measured(entry: ValidEntry): Diagnostic[] {
  return [...inFields(entry, entry.data, []), ...(isPage(entry) ? inWords(entry, entry.tree) : [])];
}

const HISTORY = new Set(['history', 'withdrawn']);

function inFields(entry: ValidEntry, value: unknown, path: PropertyKey[]): Diagnostic[] {
  if (typeof value === 'string')
    return measuresIn(value).map((measure) => atField(entry, path, messageOf(entry, measure, fieldName(path))));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value)
    .filter(([key]) => path.length > 0 || !HISTORY.has(key))
    .flatMap(([key, held]) => inFields(entry, held, [...path, Array.isArray(value) ? Number(key) : key]));
}

/** The words of a page without worked examples, which do their own arithmetic, and without quotations. */
function inWords(page: Page, node: Nodes): Diagnostic[] {
  if (node.type === 'blockquote' || node.type === 'code' || node.type === 'inlineCode' || isTag(node)) return [];
  if (node.type === 'image')
    return [node.alt, node.title]
      .flatMap((words) => measuresIn(words ?? ''))
      .map((measure) => atWords(page, node, measure.words, messageOf(page, measure, 'the words of a picture')));
  if (node.type === 'text')
    return measuresIn(node.value).map((measure) => atWords(page, node, measure.words, messageOf(page, measure, 'the words')));
  return 'children' in node ? (node.children as Nodes[]).flatMap((child) => inWords(page, child)) : [];
}

const messageOf = (entry: { collection: string }, { kind, words }: Measure, field: string) => ({
  rule: 'untagged',
  field,
  found: `${quoted(words)}, a ${kind} without its source`,
  write:
    entry.collection === 'treatments'
      ? 'the number in its own field, or a figure in the list "figures:"'
      : field === 'the words'
        ? '<Figure id="..." /> with a file in figures/'
        : 'it without the number, and the figure in the words of the page',
});
