/*
 * The sources of all chapters as one numbered list at the end of the book: what pages keep in their margins is said once,
 * and the raised numbers of the text are the book's own. A publication that several notes name stands once in full.
 */
import type { Element, Root } from 'hast';
import { all, isOf, wordsOf } from './find.ts';
import { lastLines } from './last-lines.ts';

/** A link of a chapter that leads to a source, and the number of that source from 1. */
export type Mark = readonly [link: Element, source: number];

/** A source as the list has it: its words, or those after the publication's own, which stand under another number. */
export type Listed = { as?: number; words: string };

export class Sources {
  readonly #numbers = new Map<string, number>();
  readonly #listed: Listed[] = [];
  readonly #publications: readonly string[];

  /** Publications in full, as notes begin with them; short ones are no saving. */
  constructor(publications: readonly string[]) {
    this.#publications = publications.filter(({ length }) => length > 30).sort((a, b) => b.length - a.length);
  }

  /** The number of a source in the book, the next one for words that are new. */
  numberOf(words: string): number {
    const known = this.#numbers.get(words);
    if (known !== undefined) return known;
    const parts = this.#parted(words);
    const listed = parts ? { as: this.numberOf(parts.publication), words: parts.rest } : { words };
    this.#numbers.set(words, this.#listed.push(listed));
    return this.#listed.length;
  }

  /** The number that says what a row says: of a note that begins with its words, else of its publication, and what is left to say. */
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
    const publication = this.#publications.find((each) => words.startsWith(each) && /^\.? ./.test(words.slice(each.length)));
    return publication === undefined ? undefined : { publication, rest: words.slice(publication.length).replace(/^\.? /, '') };
  }
}

/** Renumbers the marks of a chapter and turns its margin into its last lines. @throws Error when a mark has no note. */
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

/** What a row of a figure has its number from is said once in the book: the row names it by number. After all chapters are settled. */
export function pointAtSources(tree: Root, sources: Sources): void {
  const rows = all(tree, (node) => isOf(node, 'figure-rows')).flatMap((figure) => all(figure, ({ tagName }) => tagName === 'li'));
  for (const row of rows) {
    const said = row.children.find((child) => child.type === 'text' && child.value.startsWith('. '));
    const found = said ? sources.numberFor(wordsOf([said]).slice(2)) : undefined;
    if (said?.type === 'text' && found) said.value = `. Source ${found.number}. ${found.rest} `;
  }
}

function numbered(link: Element, number: number): Mark {
  link.children = [{ type: 'text', value: String(number) }];
  return [link, number];
}

/** A note without its own number, and without the link to the rows that stand elsewhere in the book. */
const noteWords = (note: Element): string =>
  wordsOf(note.children.filter((child) => !(child.type === 'element' && ['b', 'a'].includes(child.tagName))));
