/* Benchmark results as rows: a table with budgets and verdicts for a person, and the same as JSON for a program. */

export type Row = {
  /** The part of the bench that measured it. */
  part: string;
  name: string;
  measured: number;
  unit: 's' | 'ms' | 'MB' | 'B' | 'times' | 'px' | 'requests' | 'points' | '';
  /** The maximum or minimum. */
  most?: number;
  least?: number;
  /** Which page, which of several, compared with what. */
  note?: string;
  /** Shown in the table only when it is over budget. */
  inDetail?: boolean;
};

export type Verdict = 'within' | 'over' | '';

export const verdictOf = ({ measured, most, least }: Row): Verdict =>
  most === undefined && least === undefined ? '' : measured <= (most ?? Infinity) && measured >= (least ?? -Infinity) ? 'within' : 'over';

const HEADS = ['what', 'measured', 'budget', 'verdict', ''];

/** Columns of equal width, except the last column of notes. */
export function table(rows: readonly Row[]): string {
  const cells = [
    HEADS,
    ...rows
      .filter((row) => !row.inDetail || verdictOf(row) === 'over')
      .map((row) => [row.name, shown(row.measured, row.unit), budget(row), verdictOf(row), row.note ?? '']),
  ];
  const widths = HEADS.map((_, column) => Math.max(...cells.map((row) => row[column]!.length)));
  const line = (row: readonly string[]): string =>
    row
      .map((cell, column) =>
        column === 1 || column === 2 ? cell.padStart(widths[column]!) : column === 4 ? cell : cell.padEnd(widths[column]!),
      )
      .join('  ')
      .trimEnd();
  return cells.map(line).join('\n');
}

function budget({ most, least, unit }: Row): string {
  if (most !== undefined) return `<= ${shown(most, unit)}`;
  return least === undefined ? '' : `>= ${shown(least, unit)}`;
}

/** Seconds, megabytes and ratios have two decimals, and counts have none. */
export function shown(value: number, unit: Row['unit']): string {
  if (Number.isNaN(value)) return 'not known';
  const places =
    unit === 's' || unit === 'times' || (unit === 'MB' && value < 100)
      ? 2
      : unit === '' && !Number.isInteger(value)
        ? 3
        : unit === 'ms' && value < 100
          ? 1
          : 0;
  const number = value.toFixed(places).replace(/\B(?<!\.\d*)(?=(\d{3})+(?!\d))/g, ',');
  return [number, unit].filter(Boolean).join(' ');
}

export function median(values: readonly number[]): number {
  if (values.length === 0) throw new Error('median: of nothing');
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}
