/*
 * Leaves out sentences of a book that this club cannot complete, because nobody has the duty or no row of the figure holds
 * here. A list item or table row goes with its sentence, so that nobody reads half of one.
 */
import type { Nodes, Parent, PhrasingContent, Root } from 'mdast';
import { holdsHere, type For, type Here } from '../schemas/where.ts';
import type { Entry } from './folder.ts';
import { attribute, isTag, walk } from './prose.ts';

export type Known = {
  duties: ReadonlySet<string>;
  /** For each figure the ids of its rows that hold here, and the ones it follows. */
  figures: ReadonlyMap<string, { rows: ReadonlySet<string>; follows: readonly string[] }>;
  locals: ReadonlySet<string>;
  hasPoisonLine: boolean;
};

/** Rows of each figure that hold here, read from the fields as written. */
export function figuresKnown(entries: readonly Entry[], here: Here): Known['figures'] {
  return new Map(
    entries
      .filter(({ collection, fields }) => collection === 'figures' && fields.value !== undefined && !isWithdrawn(fields.value))
      .map(({ id, fields }) => {
        const { rows, follows, 'also-follows': also } = fields.value as { rows?: unknown; follows?: unknown; 'also-follows'?: unknown };
        const held = (Array.isArray(rows) ? (rows as { id?: unknown; for?: For }[]) : []).filter((row) =>
          holdsHere(row?.for ?? 'anywhere', here),
        );
        return [
          id,
          {
            rows: new Set(held.map((row) => String(row?.id))),
            follows: [follows, also]
              .flat()
              .filter((row) => row !== undefined)
              .map(String),
          },
        ];
      }),
  );
}

const isWithdrawn = (value: unknown): boolean => (value as { withdrawn?: unknown }).withdrawn !== undefined;

/** What a page of a book asks for and does not get here: `swarm-line`, `figure after-swarm-quiet-weeks`, `registering-hives`. */
export function gapsIn(entry: Entry, known: Known): string[] {
  const { ask } = (entry.fields.value ?? {}) as { ask?: unknown };
  const tags = entry.tree ? [...walk(entry.tree)].flatMap((node) => gapOf(node, known) ?? localGap(node, known) ?? []) : [];
  return [...(typeof ask === 'string' && !known.duties.has(ask) ? [ask] : []), ...tags];
}

/** The tree without the sentences that have a gap; the same tree where there is none. */
export function withoutGaps(tree: Root, known: Known): Root {
  if (![...walk(tree)].some((node) => gapOf(node, known) !== null)) return tree;
  const copy = structuredClone(tree);
  clear(copy, known);
  return copy;
}

function gapOf(node: unknown, { duties, figures, hasPoisonLine }: Known): string | null {
  if (!isTag(node)) return null;
  if (node.name === 'Contact') {
    const duty = attribute(node, 'duty') ?? '';
    return duties.has(duty) ? null : duty;
  }
  if (node.name === 'Line') return attribute(node, 'of') === 'poison' && !hasPoisonLine ? 'poison line' : null;
  if (node.name !== 'Figure') return null;
  const [id, row] = [attribute(node, 'id') ?? '', attribute(node, 'row')];
  const figure = figures.get(id);
  const held = figure && (row === undefined ? figure.follows.some((each) => figure.rows.has(each)) : figure.rows.has(row));
  return held ? null : `figure ${id}`;
}

function localGap(node: unknown, { locals }: Known): string | null {
  const id = isTag(node) && node.name === 'Local' ? (attribute(node, 'id') ?? '') : null;
  return id === null || locals.has(id) ? null : id;
}

const hasGap = (node: Nodes, known: Known): boolean => [...walk(node)].some((each) => gapOf(each, known) !== null);

/** False where nothing is left of the node. */
function clear(node: Nodes, known: Known): boolean {
  if (gapOf(node, known) !== null) return false;
  if (!('children' in node) || !hasGap(node, known)) return true;
  if (node.type === 'tableRow') return false;
  if (node.type === 'paragraph' || node.type === 'heading') {
    node.children = sentences(node.children)
      .filter((sentence) => !sentence.some((part) => hasGap(part, known)))
      .flat();
    return node.children.some((child) => child.type !== 'text' || child.value.trim() !== '');
  }
  // The first line of an item is its statement. What follows belongs to it.
  if (node.type === 'listItem' && node.children[0] && hasGap(node.children[0], known) && !clear(node.children[0], known)) return false;
  const parent = node as Parent;
  parent.children = parent.children.filter((child) => clear(child, known));
  return parent.children.length > 0;
}

/** The end of a sentence inside a text, or at its end, where a tag or words in heavier type follow. */
const SENTENCE_END = /(?<=[.!?]["”’)]*\s)\s*(?=["“‘(]?[\p{Lu}\d])|(?<=[.!?]["”’)]*\s)(?=$)/u;

function sentences(children: readonly PhrasingContent[]): PhrasingContent[][] {
  const made: PhrasingContent[][] = [[]];
  for (const child of children) {
    if (child.type !== 'text') {
      made.at(-1)!.push(child);
      continue;
    }
    child.value.split(SENTENCE_END).forEach((value, index) => {
      if (index > 0) made.push([]);
      if (value !== '') made.at(-1)!.push({ ...child, value });
    });
  }
  return made;
}
