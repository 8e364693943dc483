/**
 * Weeks until mites could reach the level, as an earliest and a latest whole number, never one date. Earliest: from the upper limit at
 * the fastest growth, rounded down, at least 0, which means "within a week at the soonest". Latest: from the counted rate at the slowest
 * growth, rounded up. Mites grow only while the colony rears brood, so without brood there is no date. In autumn mites also arrive from
 * outside, which this sum leaves out. Units: mites per 100 bees; growth as a share per day (0.015 = 1.5 % a day). The caller passes two
 * published growth rates.
 */
export type Growth = { readonly slowestPerDay: number; readonly fastestPerDay: number };

export type WeeksToLevel =
  | { readonly state: 'already-there' | 'no-brood' | 'no-level' }
  | { readonly state: 'no-mites'; readonly soonestWeeks: number }
  | { readonly state: 'weeks'; readonly soonestWeeks: number; readonly latestWeeks: number };

/** `per100` and `highPer100` are the highest values of all colonies. */
export function weeksToLevel(
  rate: { readonly per100: number; readonly highPer100: number },
  levelPer100: number | undefined,
  growth: Growth,
  hasBrood: boolean,
): WeeksToLevel {
  if (!(growth.slowestPerDay > 0 && growth.fastestPerDay >= growth.slowestPerDay)) {
    throw new RangeError(`weeksToLevel: needs growth over 0, slowest first, got ${JSON.stringify(growth)}`);
  }
  if (levelPer100 === undefined) return { state: 'no-level' };
  if (rate.per100 >= levelPer100) return { state: 'already-there' };
  if (!hasBrood) return { state: 'no-brood' };
  const soonestWeeks = Math.max(0, Math.floor(weeksFor(levelPer100 / rate.highPer100, growth.fastestPerDay)));
  if (rate.per100 === 0) return { state: 'no-mites', soonestWeeks };
  return { state: 'weeks', soonestWeeks, latestWeeks: Math.ceil(weeksFor(levelPer100 / rate.per100, growth.slowestPerDay)) };
}

function weeksFor(times: number, growthPerDay: number): number {
  return Math.log(times) / growthPerDay / 7;
}
