/**
 * Degree-days of one day from its highest and lowest temperature. Five methods give different sums, so name the method with every sum.
 * simple: mean minus base.
 * floored: both temperatures raised to the base first.
 * sine: a sine-shaped day, the part between base and cap.
 * modified: both temperatures brought between base and cap.
 * maximum: highest minus base.
 * Never below 0. Sources: McMaster & Wilhelm 1997, Agric. For. Meteorol. 87:291-300 (simple is their method 1, floored their method 2);
 * single sine with horizontal cut-off: Zalom et al. 1983, University of California leaflet 21373. Unit: any one temperature scale for all
 * numbers; the sum is in degree-days of that scale.
 */
export const degreeDayMethods = ['simple', 'floored', 'sine', 'modified', 'maximum'] as const;
export type DegreeDayMethod = (typeof degreeDayMethods)[number];

export type DegreeDayRule = {
  readonly method: DegreeDayMethod;
  readonly base: number;
  /** Required by modified, optional for sine, unused by the others. */
  readonly cap?: number;
};

export type DayTemperatures = { readonly max: number; readonly min: number };

export function degreeDay({ method, base, cap = Infinity }: DegreeDayRule, { max, min }: DayTemperatures): number {
  if (!(max >= min)) throw new RangeError(`degreeDay: needs a highest not under the lowest, got ${max} and ${min}`);
  switch (method) {
    case 'simple':
      return Math.max(0, (max + min) / 2 - base);
    case 'floored':
      return (Math.max(max, base) + Math.max(min, base)) / 2 - base;
    case 'modified':
      return (between(base, max, cap) + between(base, min, cap)) / 2 - base;
    case 'maximum':
      return Math.max(0, max - base);
    case 'sine':
      return Math.max(0, areaAbove(base, max, min) - areaAbove(cap, max, min));
  }
}

function between(least: number, value: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

/** Mean height of the sine-shaped day above a line. */
function areaAbove(line: number, max: number, min: number): number {
  const [middle, half] = [(max + min) / 2, (max - min) / 2];
  if (line >= max) return 0;
  if (line <= min) return middle - line;
  const angle = Math.asin((line - middle) / half);
  return ((middle - line) * (Math.PI / 2 - angle) + half * Math.cos(angle)) / Math.PI;
}
