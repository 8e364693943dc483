/**
 * The languages that a club may have, BCP 47. The first part decides the words. The country decides how days, clock times and numbers are
 * written, for pages and for what members type. Month first: Unicode CLDR, long dates of en-US and en-CA ("April 18, 2026"); all others
 * "18 April 2026", "18 de abril de 2026".
 */
export const languages = [
  'en-US', 'en-GB', 'en-AU', 'en-NZ', 'en-CA', 'en-IE', 'en-ZA',
  'es', 'es-ES', 'es-US', 'es-MX', 'es-AR', 'es-CL',
] as const; // prettier-ignore
export type Language = (typeof languages)[number];

/** The languages that the program speaks. */
export const tongues = ['en', 'es'] as const;
export type Tongue = (typeof tongues)[number];

export const tongueOf = (language: Language): Tongue => language.slice(0, 2) as Tongue;

/** Month before day, in letters and in numbers: 4/5 is April 5. */
export const isMonthFirst = (language: Language): boolean => language === 'en-US' || language === 'en-CA';
