/* Formats a sidenote and numbers it. The same words get the same number on one page. */
import { cited } from './figures.ts';
import type { Source } from '../schemas/sources.ts';
import type { Note } from './page-context.ts';

/** `source` is the one whose words the note begins with. */
export function noteOf(notes: Note[], parts: readonly (string | undefined)[], source?: Source): number {
  const words = parts
    .filter((part): part is string => Boolean(part))
    .map((part) => (/[.!?]$/.test(part) ? part : `${part}.`))
    .join(' ');
  const held = notes.find((note) => note.words === words);
  if (held) return held.number;
  notes.push({ number: notes.length + 1, words, ...(source && { source: cited(source) }) });
  return notes.length;
}
