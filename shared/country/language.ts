/**
 * The languages that a club may have, BCP 47. The country in the tag decides how days, clock times and words are written, for pages and
 * for what members type. Month first: Unicode CLDR, long dates of en-US and en-CA ("April 18, 2026"); all others "18 April 2026".
 */
export const languages = ['en-US', 'en-GB', 'en-AU', 'en-NZ', 'en-CA', 'en-IE', 'en-ZA'] as const;
export type Language = (typeof languages)[number];

/** Month before day, in letters and in numbers: 4/5 is April 5. */
export const isMonthFirst = (language: Language): boolean => /US|CA/.test(language);
