/* A note in the margin made of its parts, once a page: the same words get the same number. */
import type { Note } from './page-context.ts';

export function noteOf(notes: Note[], parts: readonly (string | undefined)[]): number {
  const words = parts
    .filter((part): part is string => Boolean(part))
    .map((part) => (/[.!?]$/.test(part) ? part : `${part}.`))
    .join(' ');
  const held = notes.find((note) => note.words === words);
  if (held) return held.number;
  notes.push({ number: notes.length + 1, words });
  return notes.length;
}
