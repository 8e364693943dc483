/* Words for the basis of a district's dates. `from` is a source in words, and `spread` has its unit. */
export const normals = (period: string, from: string): string => `monthly normals of ${period} (${from}).`;
export const noSpread = 'How much days differ from year to year is not known here, so no date is worked out from degree-days.';
export const fromSum = (spread: string, sum: string, base: string, period: string, from: string): string =>
  `One day’s mean differs from its normal by about ${spread}, so that the published ${sum} degree-days over ${base} are met (${period}, ${from}).`;
export const fromRegion = (spread: string, from: string | undefined): string =>
  `One day’s mean differs from its normal by about ${spread} in this region${from === undefined ? '' : ` (${from})`}.`;
export const fromMembers = (spread: string): string =>
  `One day’s mean differs from its normal by about ${spread}, so that plants bloom when members saw them.`;
