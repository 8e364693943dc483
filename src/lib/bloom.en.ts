/** The kind of days of a plant, as they stand in a sentence. */
export const stages = { inBloom: 'in bloom', full: 'full bloom', first: 'first flowers' };
/** `basis` says how the day is known. */
export const about = (day: string, basis: string): string => `about ${day}, ${basis}`;

/** How a published list counts degree-days. */
const METHODS = {
  simple: 'from the mean of the day (simple)',
  floored: 'with the daily low raised to the base (low-floored)',
  sine: 'from a day shaped like a wave (sine)',
  modified: 'with high and low brought between base and cap (modified)',
  maximum: 'from the daily high alone (maximum)',
  'not stated': 'by a method the list does not name',
};

type Sum = { isFull: boolean; degreeDays: number; base: string; cap: string | null; from: string; method: keyof typeof METHODS };

/** "First bloom at 42 degree-days over 50 F from 1 January, with the daily low raised to the base (low-floored)". */
export const sum = ({ isFull, degreeDays, base, cap, from, method }: Sum): string =>
  `${isFull ? 'Full bloom' : 'First bloom'} at ${degreeDays} degree-days over ${base}${cap === null ? '' : `, up to ${cap},`} from ${from}, ${METHODS[method]}`;
