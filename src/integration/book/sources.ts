/*
 * Sources of all chapters as one numbered list at the end of the book. Notes of all sidebars are merged, and the raised numbers are the
 * book's own. A publication in several notes is listed in full once.
 */
import type { Element, Root } from 'hast';
import type { Cited } from '../../lib/figures.ts';
import { all, isOf, wordsOf } from '../../paper/find.ts';
import { lastLines } from './last-lines.ts';
import { text } from './words.ts';

/** A link to a source in a chapter, and the number of that source from 1. */
export type Mark = readonly [link: Element, source: number];

/** A list entry: its words, or only those after the publication, which has its own number. */
export type Listed = { as?: number; words: string; /** Where it can be opened. */ url?: string; opened?: string; isHidden?: true };

export class Sources {
  readonly #numbers = new Map<string, number>();
  readonly #listed: Listed[] = [];
  readonly #publications: readonly Cited[];

  /** Publications in full, as notes begin with them. Short ones that are no publications are left out because they save nothing. */
  constructor(publications: readonly Cited[]) {
    this.#publications = publications
      .filter(({ words, url, isHidden }) => url || isHidden || words.length > 30)
      .sort((a, b) => b.words.length - a.words.length);
  }

  /** The number of a source in the book. New words get the next number. */
  numberOf(words: string): number {
    const known = this.#numbers.get(words);
    if (known !== undefined) return known;
    const parts = this.#parted(words);
    const listed = parts
      ? { as: this.numberOf(parts.publication), words: parts.rest }
      : (this.#publications.find((each) => each.words === words) ?? { words });
    this.#numbers.set(words, this.#listed.push(listed));
    return this.#listed.length;
  }

  /** The number for a row's source: of a note that begins with its words, or of its publication with the remaining words. */
  numberFor(words: string): { number: number; rest: string } | undefined {
    const note = [...this.#numbers].find(([said]) => said.startsWith(`${words} `));
    if (note) return { number: note[1], rest: '' };
    const parts = this.#parted(words);
    return parts && { number: this.numberOf(parts.publication), rest: parts.rest };
  }

  get all(): readonly Listed[] {
    return this.#listed;
  }

  #parted(words: string): { publication: string; rest: string } | undefined {
    const publication = this.#publications.find(
      (each) => words.startsWith(each.words) && /^\.? ./.test(words.slice(each.words.length)),
    )?.words;
    return publication === undefined ? undefined : { publication, rest: words.slice(publication.length).replace(/^\.? /, '') };
  }
}

/** Renumbers the marks of a chapter and turns its sidebar into its last lines. @throws Error when a mark has no note. */
export function settleSources(tree: Root, place: string, sources: Sources): Mark[] {
  const [margin] = all(tree, (node) => isOf(node, 'sidebar'));
  const notes = new Map(
    all(margin, (node) => node.tagName === 'li' && /^note-\d+$/.test(String(node.properties.id))).map((note) => [
      String(note.properties.id),
      noteWords(note),
    ]),
  );
  const marks = all(tree, (node) => /^#note-\d+$/.test(String(node.properties.href))).map((link): Mark => {
    const words = notes.get(String(link.properties.href).slice(1));
    if (words === undefined) throw new Error(`${place} names a source that it does not have: ${String(link.properties.href)}`);
    return numbered(link, sources.numberOf(words));
  });
  if (!margin) return marks;
  const { lines, named } = lastLines(margin);
  Object.assign(margin, { properties: { className: ['last-lines'] }, children: lines });
  return [...marks, ...named.map(([link, words]) => numbered(link, sources.numberOf(words)))];
}

/** Replaces the source of a figure's row by its number. Call after all chapters are resolved. */
export function pointAtSources(tree: Root, sources: Sources): void {
  const rows = all(tree, (node) => isOf(node, 'figure-rows')).flatMap((figure) => all(figure, ({ tagName }) => tagName === 'li'));
  for (const row of rows) {
    linksAsWords(row);
    const words = row.children.find((child) => child.type === 'text' && child.value.startsWith('. '));
    const found = words ? sources.numberFor(wordsOf([words]).slice(2)) : undefined;
    if (words?.type === 'text' && found) words.value = text().sourceInRow(found.number, found.rest);
  }
}

/** The list at the end of the book has the address, so a link and the words around it become one text. */
function linksAsWords(row: Element): void {
  const children = row.children;
  row.children = [];
  let joins = false;
  for (const child of children) {
    const isLink = child.type === 'element' && child.properties.rel?.toString() === 'external';
    const last = row.children.at(-1);
    const joined = (isLink || joins) && last?.type === 'text' && (isLink || child.type === 'text');
    if (joined) last.value += wordsOf([child]);
    else row.children.push(child);
    joins = isLink;
  }
}

function numbered(link: Element, number: number): Mark {
  link.children = [{ type: 'text', value: String(number) }];
  return [link, number];
}

/** A note without its own number, and without the link to rows elsewhere in the book. */
const noteWords = (note: Element): string =>
  wordsOf(
    note.children.filter(
      (child) => !(child.type === 'element' && (child.tagName === 'b' || (child.tagName === 'a' && child.properties.rel === undefined))),
    ),
  );
