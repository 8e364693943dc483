/** The English names of the months, as files of content write them. They have a file of their own because every page needs them and few pages need more. */
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

/** The English name. For readers: shownMonth. */
export function monthName(month: number): string {
  const name = monthNames[month - 1];
  if (name === undefined) throw new RangeError(`monthName: needs a month from 1 to 12, got ${month}`);
  return name;
}

const shown = new Map<string, string>();

/** "April", "abril": as readers of that language see the month. Names: Unicode CLDR. */
export function shownMonth(month: number, language: string): string {
  const key = `${month} ${language}`;
  const name =
    shown.get(key) ?? new Intl.DateTimeFormat(language, { month: 'long', timeZone: 'UTC' }).format(((month - 0.5) * 365 * 86_400_000) / 12);
  shown.set(key, name);
  return name;
}
