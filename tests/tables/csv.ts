/* Reads tables in CSV files, one line per row, as they were published or computed. */
import { readFileSync } from 'node:fs';

export type Line = Record<string, string>;

/** The rows below the header, each by column name. A quoted cell may contain a comma. */
export function csvLines(path: string): Line[] {
  const [head, ...lines] = readFileSync(new URL(path, import.meta.url), 'utf8').trim().split(/\r?\n/).map(cells);
  if (!head || lines.length === 0) throw new Error(`csvLines: ${path} holds no lines`);
  return lines.map((line) => Object.fromEntries(head.map((name, index) => [name, line[index] ?? ''])));
}

const cells = (line: string): string[] => [...line.matchAll(/("[^"]*"|[^,]*)(?:,|$)/g)].map(([, cell]) => cell!.replace(/^"|"$/g, '')).slice(0, -1);

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/** Twelve numbers, from columns such as tmax_f_jan, or jan. */
export function byMonth(line: Line, before = ''): number[] {
  const values = months.map((month) => Number(line[before + month]));
  if (!values.every(Number.isFinite)) throw new Error(`byMonth: needs twelve numbers ${before}jan to ${before}dec`);
  return values;
}
