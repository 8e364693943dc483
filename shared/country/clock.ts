/**
 * Hours as the club's country prints them. Twelve hours: style manuals of the US Government Publishing Office, of GOV.UK ("5:30pm, not
 * 1730hrs"), of Australia and of New Zealand. In South Africa and in Spanish: Unicode CLDR ("18:30" in Spain, "6:30 p. m." in Mexico).
 * Files always hold 24 hours.
 */
import type { Joint } from '../days/year-span.ts';
import { tongueOf, type Language } from './language.ts';

const isTwentyFour = (language: Language): boolean => language === 'en-ZA' || language === 'es' || language === 'es-ES';

/** `18:30` as "6:30 pm". `12:00` is noon, because people read 12 pm both ways. */
export function formatClock(clock: string, language: Language): string {
  if (isTwentyFour(language)) return clock;
  const inSpanish = tongueOf(language) === 'es';
  if (clock === '12:00') return inSpanish ? 'mediodía' : 'noon';
  if (clock === '00:00') return inSpanish ? 'medianoche' : 'midnight';
  return `${hourOf(clock)}\u00a0${halfOf(clock, language)}`;
}

/** "6 to 8 pm", "10 am to 12:30 pm"; in a row "6–8 pm". */
export function formatClocks(start: string, finish: string, language: Language, joint: Joint = ' to '): string {
  const isOneHalf = halfOf(start, language) === halfOf(finish, language) && ![start, finish].some((clock) => /^(?:00|12):00$/.test(clock));
  const first = isOneHalf && !isTwentyFour(language) ? hourOf(start) : formatClock(start, language);
  return first + (joint === ' to ' && tongueOf(language) === 'es' ? ' a ' : joint) + formatClock(finish, language);
}

/** A sentence in which the author wrote 24 hours: "Monday to Friday, 08:00 to 16:30". */
export const withClocks = (words: string, language: Language): string =>
  words.replace(/\b([01]\d|2[0-3]):[0-5]\d(?:( to | a |\s?[-–]\s?)(?:[01]\d|2[0-3]):[0-5]\d)?\b/g, (found, _, joint?: string) => {
    const [start, finish] = [found.slice(0, 5), found.slice(-5)];
    return joint ? formatClocks(start, finish, language, /[a-z]/.test(joint) ? ' to ' : '–') : formatClock(start, language);
  });

const halfOf = (clock: string, language: Language): string => {
  const half = clock < '12' ? 'am' : 'pm';
  return tongueOf(language) === 'es' ? `${half[0]}.\u00a0m.` : half;
};

/** "6" or "6:30". */
function hourOf(clock: string): string {
  const hour = Number(clock.slice(0, 2)) % 12 || 12;
  return clock.endsWith(':00') ? `${hour}` : `${hour}${clock.slice(2)}`;
}
