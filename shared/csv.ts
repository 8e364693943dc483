/**
 * Writes rows as CSV (RFC 4180): a cell that holds a comma, a quote or a line end is quoted. Text that a spreadsheet would run as a
 * formula gets an apostrophe in front; numbers stay as they are.
 */
export type Cell = string | number | boolean | undefined;

export const csvText = (rows: readonly (readonly Cell[])[]): string => rows.map((row) => `${row.map(written).join(',')}\r\n`).join('');

function written(cell: Cell = ''): string {
  const text = typeof cell === 'string' && /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : String(cell);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
