/* Words that may be typed behind a number of one unit, in lower case, each with the sum to the unit of the label; weights, volumes and temperatures: units.ts. */
type Sums = Readonly<Record<string, (value: number) => number>>;

const same = (value: number): number => value;
const worded = (words: readonly string[], sum: (value: number) => number): Sums => Object.fromEntries(words.map((word) => [word, sum]));

export const inPercent: Sums = { '%': same, percent: same, 'per cent': same };

export const inDays: Sums = {
  ...worded(['d', 'day', 'days'], same),
  ...worded(['h', 'hr', 'hrs', 'hour', 'hours'], (hours) => hours / 24),
  ...worded(['week', 'weeks'], (weeks) => weeks * 7),
};
