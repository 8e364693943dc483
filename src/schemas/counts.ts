/* counts/: one season of mite counts as a CSV table. Without names and places: a column that is not listed is refused. */
import { z } from 'astro/zod';
import { day, id, list, number, oneOf, section, withdrawn, words } from './fields.ts';

export const COUNT_COLUMNS = ['date', 'district', 'mites', 'bees', 'method'] as const;

const whole = (hint: string, least: number, most: number) =>
  number(hint).int({ error: hint }).min(least, { error: hint }).max(most, { error: hint });

const row = z.object({
  date: day().describe('The day of the count.'),
  district: id('a district of club.yaml', 'valley'),
  mites: whole('a whole number of mites, 0 or more', 0, 100_000),
  bees: whole('a whole number of bees, 1 or more', 1, 1_000_000),
  method: oneOf(['wash', 'roll', 'gas']).describe('How they were counted.'),
});

const column = words(`one of these columns: ${COUNT_COLUMNS.join(', ')}`).refine(
  (name) => (COUNT_COLUMNS as readonly string[]).includes(name),
  {
    error: `only these columns: ${COUNT_COLUMNS.join(', ')}; no names, no places`,
  },
);

const columns = list(column).refine(
  (names) =>
    names.some((name) => !(COUNT_COLUMNS as readonly string[]).includes(name)) ||
    (COUNT_COLUMNS.every((name) => names.includes(name)) && names.length === COUNT_COLUMNS.length),
  {
    error: `each of these columns once: ${COUNT_COLUMNS.join(', ')}`,
  },
);

/** Fields of the lines such as `# title: Counts of 2025` above the columns. */
const head = { title: words('what the counts are of, such as "Counts of 2025"').optional(), withdrawn: withdrawn().optional() };

/** Rows are validated only when the columns are right. */
export const counts = section({ ...head, columns, rows: z.array(z.unknown()) }).pipe(
  section({ ...head, columns, rows: list(row).min(1, { error: 'a line for each count below the names of the columns' }) }),
);

export type Counts = z.infer<typeof counts>;
export type CountRow = z.infer<typeof row>;
