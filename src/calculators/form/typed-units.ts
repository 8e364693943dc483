/*
 * English and Spanish unit words that may follow a number, in lower case, each with the conversion to the unit of the label. Weights, volumes and
 * temperatures: units.ts.
 */
type Sums = Readonly<Record<string, (value: number) => number>>;

const same = (value: number): number => value;
const worded = (words: readonly string[], sum: (value: number) => number): Sums => Object.fromEntries(words.map((word) => [word, sum]));

export const inPercent: Sums = { '%': same, percent: same, 'per cent': same, 'por ciento': same };

export const inDays: Sums = {
  ...worded(['d', 'day', 'days', 'día', 'dia', 'días', 'dias'], same),
  ...worded(['h', 'hr', 'hrs', 'hour', 'hours', 'hora', 'horas'], (hours) => hours / 24),
  ...worded(['week', 'weeks', 'semana', 'semanas'], (weeks) => weeks * 7),
};
