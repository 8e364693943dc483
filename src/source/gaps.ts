/*
 * Leaves out sentences of a book that this club cannot complete, because nobody has the duty, no row of the figure holds
 * here, or a day of the year has no date. A list item, a table row or a question goes with its sentence, so that nobody reads half of one. For most duties a
 * book has words, such as "your doctor", which take the place of the contact.
 */
import type { Nodes, Parent, PhrasingContent, Root } from 'mdast';
import { phaseStarts } from '../../shared/season/year.ts';
import { holdsHere, type For, type Here } from '../schemas/where.ts';
import type { Entry } from './folder.ts';
import { attribute, isTag, plainText, walk, type TagNode } from './prose.ts';

export type Known = {
  duties: ReadonlySet<string>;
  /** What a page says in place of the contact for a duty that nobody has: `your doctor`. */
  wordsFor: ReadonlyMap<string, string>;
  /** For each figure the ids of its rows that hold here, and the ones it follows. */
  figures: ReadonlyMap<string, { rows: ReadonlySet<string>; follows: readonly string[] }>;
  locals: ReadonlySet<string>;
  hasPoisonLine: boolean;
  /** Whether the club has a date for a day of the year, such as `last-syrup`. */
  hasDay: (anchor: string) => boolean;
};

/**
 * The days of the year that a club can date, read from its fields as written: those of its parts of the year and those it guessed or
 * found published. With normals or dates of its members it may have any.
 */
export function daysKnown(fields: Readonly<Record<string, unknown>>): Known['hasDay'] {
  const season = (fields.season ?? {}) as { guesses?: object; published?: object };
  const dated = new Set([
    ...Object.values(phaseStarts).map(({ anchor }) => anchor),
    ...Object.keys({ ...season.guesses, ...season.published }),
  ]);
  return (anchor) => fields.climate !== undefined || fields.observed !== undefined || dated.has(anchor);
}

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
  const tags = entry.tree
    ? [...walk(entry.tree)].flatMap((node) => gapOf(node, known) ?? localGap(node, known) ?? dutyInWords(node, known) ?? [])
    : [];
  return [...(typeof ask === 'string' && !known.duties.has(ask) ? [ask] : []), ...tags];
}

/** The tree without the sentences that have a gap; the same tree where there is none. */
export function withoutGaps(tree: Root, known: Known): Root {
  if (![...walk(tree)].some((node) => gapOf(node, known) !== null || dutyInWords(node, known) !== null)) return tree;
  const copy = structuredClone(tree);
  sayInWords(copy, known);
  clear(copy, known);
  return copy;
}

const missingDuty = (node: unknown, { duties }: Known): string | null => {
  const duty = isTag(node) && node.name === 'Contact' ? (attribute(node, 'duty') ?? '') : null;
  return duty === null || duties.has(duty) ? null : duty;
};

/** A contact on a line of its own is a row with a number, for which no words can stand. */
function dutyInWords(node: unknown, known: Known): string | null {
  const duty = missingDuty(node, known);
  return duty !== null && (node as TagNode).type === 'mdxJsxTextElement' && known.wordsFor.has(duty) ? duty : null;
}

/** Puts the words for a duty in the place of its contact. */
function sayInWords(node: Nodes, known: Known): void {
  if (!('children' in node)) return;
  const parent = node as Parent;
  parent.children = parent.children.map((child) => {
    const duty = dutyInWords(child, known);
    if (duty !== null) return { type: 'text', value: known.wordsFor.get(duty)! };
    sayInWords(child as Nodes, known);
    return child;
  });
}

function gapOf(node: unknown, known: Known): string | null {
  const { figures, hasPoisonLine } = known;
  if (!isTag(node)) return null;
  if (node.name === 'Contact') return dutyInWords(node, known) === null ? missingDuty(node, known) : null;
  if (node.name === 'Day') {
    const anchor = (attribute(node, 'of') ?? '').replaceAll(' ', '-');
    return known.hasDay(anchor) ? null : `day ${anchor}`;
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
  // A cell keeps its other sentences. A row with an empty cell has nothing to say, and so has a table of a heading alone.
  if (node.type === 'tableRow') return node.children.every((cell) => clear(cell, known));
  if (node.type === 'paragraph' || node.type === 'heading' || node.type === 'tableCell') {
    node.children = whole(sentences(node.children), known).flat();
    return node.children.some((child) => child.type !== 'text' || child.value.trim() !== '');
  }
  // The first line of an item is its statement. What follows belongs to it.
  if (node.type === 'listItem' && node.children[0] && hasGap(node.children[0], known) && !clear(node.children[0], known)) return false;
  const parent = node as Parent;
  parent.children = parent.children.filter((child) => clear(child, known));
  return parent.children.length > (node.type === 'table' ? 1 : 0);
}

/** The end of a sentence inside a text. */
const SENTENCE_END = /(?<=[.!?]["”’»)]*\s)\s*(?=["“‘(«¿¡]*[\p{Lu}\d])/u;
const ENDED = /[.!?]["”’»)]*$/;

/** The sentences that are left. A question before one that goes would have no answer, and goes too. */
function whole(all: readonly PhrasingContent[][], known: Known): PhrasingContent[][] {
  const kept: PhrasingContent[][] = [];
  let isNextGone = false;
  for (const sentence of all.toReversed()) {
    isNextGone = sentence.some((part) => hasGap(part, known)) || (isNextGone && /\?["”’)]*\s*$/.test(wordsOf(sentence)));
    if (!isNextGone) kept.unshift(sentence);
  }
  return kept;
}

const wordsOf = (sentence: readonly PhrasingContent[]): string => sentence.map((part) => plainText(part)).join('');

function sentences(children: readonly PhrasingContent[]): PhrasingContent[][] {
  const made: PhrasingContent[][] = [[]];
  for (const child of children) {
    if (child.type !== 'text') {
      made.at(-1)!.push(child);
      continue;
    }
    // Words in heavier type may be a sentence by themselves, before a text or after it.
    const last = made.at(-1)!.at(-1);
    if (last && last.type !== 'text' && /^\s/.test(child.value) && ENDED.test(plainText(last))) made.push([]);
    child.value.split(SENTENCE_END).forEach((value, index) => {
      if (index > 0) made.push([]);
      if (value !== '') made.at(-1)!.push({ ...child, value });
    });
    if (/\s$/.test(child.value) && ENDED.test(child.value.trimEnd())) made.push([]);
  }
  return made;
}
