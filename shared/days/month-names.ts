/** The English names of the months. They have a file of their own because every page needs them and few pages need more. */
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
