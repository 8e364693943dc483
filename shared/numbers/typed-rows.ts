/**
 * Parses typed rows, or rows pasted from a spreadsheet: one row per line, with a tab or `;` between fields. Fields stay text for the
 * parsers of single values. Blank lines are skipped, and so is a first line without digits (a heading). `row` counts the remaining lines
 * from 1. A row with too few or too many fields is refused and named.
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

/** Empty columns after the last filled one come from the spreadsheet, not from the member. */
function cellsOf(line: string): string[] {
  const cells = line.split(line.includes('\t') ? '\t' : ';').map((cell) => cell.trim());
  while (cells.length > 1 && cells.at(-1) === '') cells.pop();
  return cells;
}
