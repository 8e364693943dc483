/* One measurement: what, how much, what was allowed, and whether it kept to it. */
export type Row = {
  what: string;
  value: number;
  unit: string;
  /** The most that is allowed; absent where it is only told. */
  budget?: number;
};

export const keeps = ({ value, budget }: Row): boolean => budget === undefined || value <= budget;

const shown = (value: number): string => (Math.abs(value) >= 100 ? value.toFixed(0) : value.toFixed(2).replace(/\.?0+$/, ''));

/** A table for a terminal, of Markdown's form, so that it can stand in a document as it is. */
export function table(rows: readonly Row[]): string {
  const lines = rows.map((row) => `| ${row.what} | ${shown(row.value)} ${row.unit} | ${row.budget === undefined ? '' : `${shown(row.budget)} ${row.unit}`} | ${row.budget === undefined ? '' : keeps(row) ? 'kept' : 'over'} |`);
  return ['| what | measured | at most | |', '| --- | --- | --- | --- |', ...lines].join('\n');
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
}
