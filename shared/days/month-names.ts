/** The months in letters. English only; a file of its own, since every page of the almanac needs these words and few need more. */
export const monthNames = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

export function monthName(month: number): string {
  const name = monthNames[month - 1];
  if (name === undefined) throw new RangeError(`monthName: needs a month from 1 to 12, got ${month}`);
  return name;
}
