const count = (number: number, one: string): string => `${number} ${one}${number === 1 ? '' : 's'}`;
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** The state of a list in its row. */
export const steps = (all: number): string => count(all, 'step');
export const allDone = 'All done';
export const left = (number: number, all: number): string => `${number} of ${all} steps left`;
export const until = (day: string): string => `until ${day}`;
export const from = (day: string): string => `from ${day}`;

/** Plants in bloom, and the next one. */
export const inBloom = (plants: readonly string[]): string =>
  plants.length > 0 ? `${plants.join(', ')}.` : 'Nothing that is listed here.';
export const blooms = (plant: string, day: string): string => `Next: ${plant}, about ${day}.`;

/** "Saturday, April 18 · dates for the valley", or "Saturday 18 April". */
export const today = (weekday: string, day: string, isMonthFirst: boolean, district?: string): string =>
  `${weekday}${isMonthFirst ? ',' : ''} ${day}${district ? ` · dates for ${district}` : ''}`;
/** The part of the year, and when the next one begins: in some days, or on a day. */
export const inDays = (days: number): string => `in ${count(days, 'day')}`;
export const onDay = (day: string): string => `on ${day}`;
export const season = (part: string, next: string, begins: string): string => `${capital(part)} now. ${capital(next)} starts ${begins}.`;
