/*
 * Hints at values that a spreadsheet changed without asking: 3/2 became a date, a ratio became a time of day, a long number an exponent.
 * The cells of tables in the words and of CSV files are read.
 */
import { quoted, type Diagnostic } from '../source/diagnostic.ts';
import { plainText, walk } from '../source/prose.ts';
import { fieldNameIn, type ValidEntries } from './fields.ts';
import { atField, atNode, isPage } from './place.ts';

const MONTH = '(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)';
const CHANGED: readonly RegExp[] = [
  new RegExp(`^\\d{1,2}[- ]${MONTH}$`, 'i'),
  new RegExp(`^${MONTH}-\\d{2}$`, 'i'),
  // A time of day has two digits before the colon.
  /^[1-9]:0[1-9]$/,
  /^\d{1,2}:\d{2}:\d{2}$/,
  /^-?\d(?:[.,]\d+)?E[+-]?\d+$/i,
  /^#(?:REF!|N\/A|VALUE!|DIV\/0!|NAME\?|NUM!|#+)$/,
];

export function spreadsheetHints({ folder }: ValidEntries): Diagnostic[] {
  const hint = (words: string, field: string) => ({
    rule: 'spreadsheet',
    field,
    found: `${quoted(words)}, which a spreadsheet may have made of another value`,
    write: 'what was typed there, with the cell set to text before it is copied again',
  });
  const isChanged = (words: string): boolean => CHANGED.some((pattern) => pattern.test(words.trim()));
  return folder.entries.flatMap((entry) => {
    if (isPage(entry))
      return [...walk(entry.tree)].flatMap((node): Diagnostic[] =>
        node.type === 'tableCell' && isChanged(plainText(node)) ? [atNode(entry, node, hint(plainText(node).trim(), 'a table'))] : [],
      );
    const rows = entry.path.endsWith('.csv') ? (entry.fields.value as { rows?: Record<string, unknown>[] } | undefined)?.rows : undefined;
    return (rows ?? []).flatMap((row, index) =>
      Object.entries(row).flatMap(([name, cell]): Diagnostic[] =>
        typeof cell === 'string' && isChanged(cell)
          ? [atField(entry, ['rows', index, name], hint(cell, fieldNameIn(entry, ['rows', index, name])))]
          : [],
      ),
    );
  });
}
