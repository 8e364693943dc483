/* Positions for diagnostics: at a field, or at a place in the words. */
import type { Nodes } from 'mdast';
import type { Diagnostic } from '../source/diagnostic.ts';
import type { Place } from '../source/fields.ts';
import type { Entry } from '../source/folder.ts';
import type { TagNode } from '../source/prose.ts';

/** A diagnostic without its position. */
export type Message = Pick<Diagnostic, 'rule' | 'field' | 'found' | 'write'> & { corrected?: string | undefined };

export type Page = Entry & { tree: NonNullable<Entry['tree']> };

export const isPage = (entry: Entry): entry is Page => entry.tree !== null;

export { isAway, isDraft } from '../source/draft.ts';

/** Withdrawn entries are removed from all output. */
export const isWithdrawn = (entry: Entry): boolean => (entry.fields.value as { withdrawn?: unknown } | null)?.withdrawn !== undefined;

export const atField = (entry: Entry, path: readonly PropertyKey[], message: Message): Diagnostic =>
  made(entry, entry.fields.placeOf(path), message);

export const atFieldName = (entry: Entry, path: readonly PropertyKey[], message: Message): Diagnostic =>
  made(entry, entry.fields.placeOfName(path), message);

export const atBody = (entry: Entry, message: Message): Diagnostic =>
  made(entry, { line: Math.min(entry.bodyLine, entry.text.split('\n').length), column: 1 }, message);

export const atNode = (entry: Entry, node: Nodes | TagNode, message: Message): Diagnostic => made(entry, placeOf(entry, node), message);

/** At the first place below `node` where the source contains `words`. */
export function atWords(entry: Entry, node: Nodes | TagNode, words: string, message: Message): Diagnostic {
  const start = node.position?.start.offset ?? 0;
  const index = entry.body.indexOf(words, start);
  if (index < 0 || index > (node.position?.end.offset ?? Infinity)) return atNode(entry, node, message);
  const before = entry.body.slice(0, index).split('\n');
  return made(entry, { line: entry.bodyLine + before.length - 1, column: before.at(-1)!.length + 1 }, message);
}

export function placeOf(entry: Entry, node: Nodes | TagNode): { line: number; column: number } {
  const start = node.position?.start ?? { line: 1, column: 1 };
  return { line: entry.bodyLine + start.line - 1, column: start.column };
}

/** The source text of a node. */
export const sourceOf = (entry: Entry, node: Nodes | TagNode): string =>
  entry.body.slice(node.position?.start.offset ?? 0, node.position?.end.offset ?? 0);

/** A line of the file, without its line end. */
export const lineAt = (entry: Entry, line: number): string => entry.text.split('\n')[line - 1] ?? '';

function made(entry: Entry, at: Place, { corrected, ...message }: Message): Diagnostic {
  return { path: entry.path, ...whereWritten(entry, at), ...message, ...(corrected === undefined ? {} : { corrected }) };
}

/** Words that another file added to the page are in that file. */
function whereWritten({ added }: Entry, at: Place): Place {
  return added && at.path === undefined && at.line >= added.fromLine
    ? { ...at, path: added.path, line: at.line - added.fromLine + added.toLine }
    : at;
}
