export const pictureOfResult = 'Picture of the result';

/** Mite counts. */
export const colonies = (half: string, count: number): string => `${half}: ${count} ${count === 1 ? 'colony' : 'colonies'}`;
export const countsChart = (title: string): string =>
  `${title}: mites to 100 bees in each half-month, every colony a dot, the middle half a bar, the level a dashed line. The table says the same.`;

/** Warmth and bloom. `scale`: °F. */
export const warmthAndBloom = (district: string): string => `Warmth and bloom in ${district}`;
/** For listeners. `total` degree-days are the sum of the year, where the club counts them. */
export const curve = (scale: string, total?: string): string =>
  `Normal daily lows and highs through the year in ${scale}, ${total ? `the sum of degree-days up to ${total}, ` : ''}and a dot for each plant at its day. The numbers stand in the table below.`;
export const band = (scale: string): string => `The band lies between the normal daily low and high, in ${scale}.`;
export const dots = ' Each dot is a plant of the [bloom calendar](bloom) at its day.';
/** The sum of degree-days over `base` from the first day of the year. */
export const sum = (base: string, day: string, total: string): string =>
  `The broken line is the sum of degree-days over ${base} from ${day}, by the mean of the day: ${total} in a normal year. One year’s warm or cold spells are in it; your own year is not.`;
export const normals = 'The normals by month';
export const month = 'Month';
export const low = (scale: string): string => `Daily low, ${scale}`;
export const high = (scale: string): string => `Daily high, ${scale}`;

/** The ring of the year. */
export const ring = 'The year as a ring: the parts of a hive’s year around the twelve months.';
/** `short` is what the ring shows of the month. */
export const beginsIn = (short: string, month: string): string => `${short}: what begins in ${month}`;
export const theYear = 'The year';
export const inDistrict = (district: string): string => `in ${district}`;
