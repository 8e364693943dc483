/**
 * Hours as the club's country prints them. Twelve hours: style manuals of the US Government Publishing Office, of GOV.UK ("5:30pm, not
 * 1730hrs"), of Australia and of New Zealand. Twenty-four hours in South Africa: Unicode CLDR, en-ZA. Files always hold 24 hours.
 */
import type { Language } from './language.ts';
import type { Joint } from '../days/year-span.ts';

const isTwentyFour = (language: Language): boolean => language === 'en-ZA';

/** `18:30` as "6:30 pm". `12:00` is noon, because people read 12 pm both ways. */
export function formatClock(clock: string, language: Language): string {
  if (isTwentyFour(language)) return clock;
  if (clock === '12:00') return 'noon';
  if (clock === '00:00') return 'midnight';
  return `${hourOf(clock)}\u00a0${halfOf(clock)}`;
}

/** "6 to 8 pm", "10 am to 12:30 pm"; in a row "6–8 pm". */
export function formatClocks(start: string, finish: string, language: Language, joint: Joint = ' to '): string {
  const isOneHalf = halfOf(start) === halfOf(finish) && ![start, finish].some((clock) => /^(?:00|12):00$/.test(clock));
  const first = isOneHalf && !isTwentyFour(language) ? hourOf(start) : formatClock(start, language);
  return first + joint + formatClock(finish, language);
}

/** A sentence in which the author wrote 24 hours: "Monday to Friday, 08:00 to 16:30". */
export const withClocks = (words: string, language: Language): string =>
  words.replace(/\b([01]\d|2[0-3]):[0-5]\d(?:( to |\s?[-–]\s?)(?:[01]\d|2[0-3]):[0-5]\d)?\b/g, (found, _, joint?: string) => {
    const [start, finish] = [found.slice(0, 5), found.slice(-5)];
    return joint ? formatClocks(start, finish, language, joint === ' to ' ? ' to ' : '–') : formatClock(start, language);
  });

const halfOf = (clock: string): string => (clock < '12' ? 'am' : 'pm');

/** "6" or "6:30". */
function hourOf(clock: string): string {
  const hour = Number(clock.slice(0, 2)) % 12 || 12;
  return clock.endsWith(':00') ? `${hour}` : `${hour}${clock.slice(2)}`;
}
