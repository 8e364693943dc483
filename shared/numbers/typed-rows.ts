/**
 * Reads rows pasted from a spreadsheet, or typed: a row a line, its fields parted by a tab or by `;`. Fields come back as text for
 * the readers of single values. Blank lines are passed over, and so is a first line that holds no figure (a heading).
 * `row` counts the lines that are kept, from 1. A row with too few or too many fields is refused and named.
 */
import { ok, err, type Result } from '../result.ts';

export type TypedRowsReason = 'empty' | 'wrong-fields' | 'comma-list';

export function readTypedRows(
  text: string,
  fields: { fewest: number; most: number },
): Result<readonly (readonly string[])[], TypedRowsReason> {
  const lines = text.split(/\r\n|\n|\r/u).filter((line) => line.trim() !== '');
  if (lines[0] !== undefined && lines.length > 1 && !/\d/u.test(lines[0])) lines.shift();
  if (lines.length === 0) return err('empty');
  const rows: string[][] = [];
  for (const [index, line] of lines.entries()) {
    const cells = cellsOf(line);
    if (cells.length < fields.fewest || cells.length > fields.most) {
      const reason = cells.length === 1 && line.includes(',') ? 'comma-list' : 'wrong-fields';
      return err(reason, { row: index + 1, text: line.trim() });
    }
    rows.push(cells);
  }
  return ok(rows);
}

/** Empty columns behind the last filled one are a spreadsheet's, not the member's. */
function cellsOf(line: string): string[] {
  const cells = line.split(line.includes('\t') ? '\t' : ';').map((cell) => cell.trim());
  while (cells.length > 1 && cells.at(-1) === '') cells.pop();
  return cells;
}
