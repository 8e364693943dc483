import type { Language } from '../../shared/country/language.ts';
import type { SourcedRow } from '../rows.ts';

const arithmetic = { from: 'derived by counting on a calendar', basis: 'derived' } as const;

export const sums: SourcedRow<{ day: string; days: number }, { day: string }>[] = [
  { case: 'a week over the end of summer time in Sydney', given: { day: '2026-04-03', days: 7 }, expect: { day: '2026-04-10' }, ...arithmetic },
  { case: 'a week over the end of summer time in New York', given: { day: '2026-10-30', days: 7 }, expect: { day: '2026-11-06' }, ...arithmetic },
  { case: 'over the start of summer time in London', given: { day: '2026-03-28', days: 2 }, expect: { day: '2026-03-30' }, ...arithmetic },
  { case: 'into a leap day', given: { day: '2028-02-28', days: 1 }, expect: { day: '2028-02-29' }, ...arithmetic },
  { case: 'past a leap day', given: { day: '2028-02-29', days: 366 }, expect: { day: '2029-03-01' }, ...arithmetic },
  { case: '1900 was no leap year', given: { day: '1900-02-28', days: 1 }, expect: { day: '1900-03-01' }, from: 'ISO 8601-1:2019', basis: 'derived' },
  { case: '2000 was one', given: { day: '2000-02-28', days: 1 }, expect: { day: '2000-02-29' }, from: 'ISO 8601-1:2019', basis: 'derived' },
  { case: 'back over New Year', given: { day: '2026-01-02', days: -3 }, expect: { day: '2025-12-30' }, ...arithmetic },
  { case: '21 days of brood', given: { day: '2026-04-18', days: 21 }, expect: { day: '2026-05-09' }, ...arithmetic },
  { case: 'past the last year read', given: { day: '2199-12-31', days: 1 }, expect: { day: '2200-01-01' }, ...arithmetic },
];

export const weekdayRows: SourcedRow<{ day: string }, { weekday: string }>[] = [
  { case: 'moon landing', given: { day: '1969-07-20' }, expect: { weekday: 'Sunday' }, from: 'public record', basis: 'published' },
  { case: '1 January 1900', given: { day: '1900-01-01' }, expect: { weekday: 'Monday' }, from: 'public record', basis: 'published' },
  { case: '18 April 2026', given: { day: '2026-04-18' }, expect: { weekday: 'Saturday' }, from: 'calendar for 2026', basis: 'published' },
  { case: 'a leap day', given: { day: '2024-02-29' }, expect: { weekday: 'Thursday' }, from: 'calendar for 2024', basis: 'published' },
];

/** Typed on Sunday 29 November 2026, in the US where no language is named. */
export const typed: SourcedRow<{ text: string; language?: Language }, { day?: string; reason?: string }>[] = [
  { case: 'ISO', given: { text: '2026-04-18' }, expect: { day: '2026-04-18' }, from: 'ISO 8601-1:2019', basis: 'published' },
  { case: 'ISO without hyphens', given: { text: '20260418' }, expect: { day: '2026-04-18' }, from: 'ISO 8601-1:2019', basis: 'published' },
  { case: 'year first with slashes', given: { text: '2026/4/18' }, expect: { day: '2026-04-18' }, from: 'ISO 8601-1:2019', basis: 'published' },
  { case: 'day first', given: { text: '18 April 2026' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'month first', given: { text: 'April 18 2026' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'month first in Britain', given: { text: 'April 18 2026', language: 'en-GB' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'comma and ordinal', given: { text: 'April 18th, 2026' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'of', given: { text: 'the 18th of April 2026' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'without blanks', given: { text: '18apr2026' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'short month with a stop', given: { text: 'Apr. 18, 2026' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'short month and right weekday', given: { text: ' Sat 18 Apr 2026 ' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'non-breaking spaces', given: { text: '18\u00a0April\u00a02026' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'as a page writes it in the US', given: { text: 'Saturday, April 18, 2026' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'Sept', given: { text: 'Sept 9 2026' }, expect: { day: '2026-09-09' }, from: 'our rule', basis: 'rule' },
  { case: 'wrong weekday', given: { text: 'Sunday 18 April 2026' }, expect: { reason: 'wrong-weekday' }, from: 'our rule', basis: 'rule' },
  { case: 'wrong ordinal', given: { text: '18st April 2026' }, expect: { reason: 'not-a-date' }, from: 'our rule', basis: 'rule' },
  { case: 'one reading, month first, in the US', given: { text: '4/18/2026' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'one reading, month first, in Britain', given: { text: '4/18/2026', language: 'en-GB' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'one reading, day first, in the US', given: { text: '18/4/2026' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'one reading, with dots', given: { text: '18.4.26' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'one reading, with dots and blanks', given: { text: '18. 4. 2026' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'one reading, with hyphens', given: { text: '18-04-2026', language: 'en-NZ' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'one reading, with blanks', given: { text: '4 18 2026' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'two readings in the US', given: { text: '4/5/2026', language: 'en-US' }, expect: { day: '2026-04-05' }, from: 'Unicode CLDR, short dates of the language', basis: 'published' },
  { case: 'two readings in Canada', given: { text: '4/5/2026', language: 'en-CA' }, expect: { day: '2026-04-05' }, from: 'our rule', basis: 'rule' },
  { case: 'two readings in Britain', given: { text: '4/5/2026', language: 'en-GB' }, expect: { day: '2026-05-04' }, from: 'Unicode CLDR, short dates of the language', basis: 'published' },
  { case: 'two readings in New Zealand', given: { text: '4/5/2026', language: 'en-NZ' }, expect: { day: '2026-05-04' }, from: 'Unicode CLDR, short dates of the language', basis: 'published' },
  { case: 'two readings in Ireland', given: { text: '4/5/2026', language: 'en-IE' }, expect: { day: '2026-05-04' }, from: 'Unicode CLDR, short dates of the language', basis: 'published' },
  { case: 'two readings in Australia', given: { text: '4/5/2026', language: 'en-AU' }, expect: { day: '2026-05-04' }, from: 'Unicode CLDR, short dates of the language', basis: 'published' },
  { case: 'two readings with dots in the US', given: { text: '4.5.26' }, expect: { day: '2026-04-05' }, from: 'our rule', basis: 'rule' },
  { case: 'two readings with dots in Britain', given: { text: '4.5.26', language: 'en-GB' }, expect: { day: '2026-05-04' }, from: 'our rule', basis: 'rule' },
  { case: 'the same either way', given: { text: '5/5/26' }, expect: { day: '2026-05-05' }, from: 'our rule', basis: 'rule' },
  { case: 'no year, in letters, nearest after', given: { text: 'april 18' }, expect: { day: '2027-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'no year, in letters, nearest before', given: { text: '18 september' }, expect: { day: '2026-09-18' }, from: 'our rule', basis: 'rule' },
  { case: 'no year, in numbers', given: { text: '4/18' }, expect: { day: '2027-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'no year, in numbers, two readings in the US', given: { text: '12/1' }, expect: { day: '2026-12-01' }, from: 'our rule', basis: 'rule' },
  { case: 'no year, in numbers, two readings in Britain', given: { text: '12/1', language: 'en-GB' }, expect: { day: '2027-01-12' }, from: 'our rule', basis: 'rule' },
  { case: 'no year, over New Year', given: { text: 'Jan 5' }, expect: { day: '2027-01-05' }, from: 'our rule', basis: 'rule' },
  { case: 'no year, 182 days after and 183 before', given: { text: 'May 30' }, expect: { day: '2027-05-30' }, from: 'derived by counting on a calendar', basis: 'derived' },
  { case: 'no year, 183 days after and 182 before', given: { text: 'May 31' }, expect: { day: '2026-05-31' }, from: 'derived by counting on a calendar', basis: 'derived' },
  { case: 'no year, a leap day', given: { text: '29 Feb' }, expect: { day: '2028-02-29' }, from: 'our rule', basis: 'rule' },
  { case: 'no year, the right weekday', given: { text: 'Fri, Nov 27' }, expect: { day: '2026-11-27' }, from: 'our rule', basis: 'rule' },
  { case: 'no year, the wrong weekday', given: { text: 'Mon, Nov 27' }, expect: { reason: 'wrong-weekday' }, from: 'our rule', basis: 'rule' },
  { case: 'a year of two figures', given: { text: '18 April 26' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'a year of two figures with its mark', given: { text: "18 April '25" }, expect: { day: '2025-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'a year of three figures', given: { text: '18 April 202' }, expect: { reason: 'not-a-date' }, from: 'our rule', basis: 'rule' },
  { case: 'today', given: { text: 'Today' }, expect: { day: '2026-11-29' }, from: 'our rule', basis: 'rule' },
  { case: 'yesterday', given: { text: 'yesterday' }, expect: { day: '2026-11-28' }, from: 'our rule', basis: 'rule' },
  { case: 'tomorrow', given: { text: 'tomorrow' }, expect: { day: '2026-11-30' }, from: 'our rule', basis: 'rule' },
  { case: 'last Saturday', given: { text: 'last saturday' }, expect: { day: '2026-11-28' }, from: 'our rule', basis: 'rule' },
  { case: 'last Sunday, on a Sunday', given: { text: 'last Sun' }, expect: { day: '2026-11-22' }, from: 'our rule', basis: 'rule' },
  { case: 'no such day in any year', given: { text: 'Feb 30' }, expect: { reason: 'impossible-date' }, from: 'our rule', basis: 'rule' },
  { case: 'no such day', given: { text: '31 April 2026' }, expect: { reason: 'impossible-date' }, from: 'our rule', basis: 'rule' },
  { case: 'no such day in numbers', given: { text: '2/30/2026' }, expect: { reason: 'impossible-date' }, from: 'our rule', basis: 'rule' },
  { case: 'no such day in numbers, in Britain', given: { text: '31/4/2026', language: 'en-GB' }, expect: { reason: 'impossible-date' }, from: 'our rule', basis: 'rule' },
  { case: 'neither number a month', given: { text: '13/13/2026' }, expect: { reason: 'impossible-date' }, from: 'our rule', basis: 'rule' },
  { case: 'month nought', given: { text: '0/5/2026', language: 'en-US' }, expect: { reason: 'impossible-date' }, from: 'our rule', basis: 'rule' },
  { case: 'no leap day', given: { text: '2026-02-29' }, expect: { reason: 'impossible-date' }, from: 'ISO 8601-1:2019', basis: 'published' },
  { case: '1900 had no leap day', given: { text: '29 Feb 1900' }, expect: { reason: 'impossible-date' }, from: 'ISO 8601-1:2019', basis: 'published' },
  { case: 'a leap day', given: { text: '29 Feb 2028' }, expect: { day: '2028-02-29' }, from: 'ISO 8601-1:2019', basis: 'published' },
  { case: 'too early', given: { text: '18 April 1826' }, expect: { reason: 'year-out-of-range' }, from: 'our rule', basis: 'rule' },
  { case: 'a year of five figures', given: { text: '18 April 20261' }, expect: { reason: 'year-out-of-range' }, from: 'our rule', basis: 'rule' },
  { case: 'nothing', given: { text: '  ' }, expect: { reason: 'empty' }, from: 'our rule', basis: 'rule' },
  { case: 'a weekday alone', given: { text: 'next Tuesday' }, expect: { reason: 'not-a-date' }, from: 'our rule', basis: 'rule' },
  { case: 'a number alone', given: { text: '18' }, expect: { reason: 'not-a-date' }, from: 'our rule', basis: 'rule' },
  { case: 'a month alone', given: { text: 'April' }, expect: { reason: 'not-a-date' }, from: 'our rule', basis: 'rule' },
  { case: 'other words', given: { text: 'when the dandelions bloom' }, expect: { reason: 'not-a-date' }, from: 'our rule', basis: 'rule' },
];

const cldr = { from: 'Unicode CLDR, long dates and intervals of the language', basis: 'published' } as const;
const style = { from: 'our rule', basis: 'rule' } as const;

export const ranges: SourcedRow<{ first: string; last: string; language: Language }, { words: string }>[] = [
  { case: 'one day, US', given: { first: '2026-05-03', last: '2026-05-03', language: 'en-US' }, expect: { words: 'May 3, 2026' }, ...cldr },
  { case: 'one day, UK', given: { first: '2026-05-03', last: '2026-05-03', language: 'en-GB' }, expect: { words: '3 May 2026' }, ...cldr },
  { case: 'one month, US', given: { first: '2026-05-03', last: '2026-05-17', language: 'en-US' }, expect: { words: 'May 3 to 17, 2026' }, ...style },
  { case: 'one month, NZ', given: { first: '2026-05-03', last: '2026-05-17', language: 'en-NZ' }, expect: { words: '3 to 17 May 2026' }, ...style },
  { case: 'two months, US', given: { first: '2026-04-28', last: '2026-05-03', language: 'en-US' }, expect: { words: 'April 28 to May 3, 2026' }, ...style },
  { case: 'two months, IE', given: { first: '2026-04-28', last: '2026-05-03', language: 'en-IE' }, expect: { words: '28 April to 3 May 2026' }, ...style },
  { case: 'two years, CA', given: { first: '2026-12-28', last: '2027-01-03', language: 'en-CA' }, expect: { words: 'December 28, 2026 to January 3, 2027' }, ...style },
  { case: 'two years, AU', given: { first: '2026-12-28', last: '2027-01-03', language: 'en-AU' }, expect: { words: '28 December 2026 to 3 January 2027' }, ...style },
];

/** Returning every year. `row` is the form in rows and tables. */
export const spans: SourcedRow<{ first: string; last: string; language: Language }, { words: string; row: string }>[] = [
  { case: 'one month, US', given: { first: '05-03', last: '05-17', language: 'en-US' }, expect: { words: 'May 3 to 17', row: 'May 3–17' }, ...style },
  { case: 'one month, UK', given: { first: '05-03', last: '05-17', language: 'en-GB' }, expect: { words: '3 to 17 May', row: '3–17 May' }, ...style },
  { case: 'two months, US', given: { first: '04-08', last: '05-10', language: 'en-US' }, expect: { words: 'April 8 to May 10', row: 'April 8 – May 10' }, ...style },
  { case: 'two months, UK', given: { first: '04-08', last: '05-10', language: 'en-GB' }, expect: { words: '8 April to 10 May', row: '8 April – 10 May' }, ...style },
  { case: 'all but a year', given: { first: '05-10', last: '05-08', language: 'en-US' }, expect: { words: 'May 10 to May 8', row: 'May 10 – May 8' }, ...style },
  { case: 'one day', given: { first: '04-08', last: '04-08', language: 'en-US' }, expect: { words: 'April 8', row: 'April 8' }, ...style },
];

const govUk = { from: 'GOV.UK style guide, times: 5:30pm, not 1730hrs; 10am to 11am; midday and midnight in words', basis: 'memory' } as const;

/** `row` is the form in rows and tables. */
export const clocks: SourcedRow<{ start: string; finish: string; language: Language }, { words: string; row: string }>[] = [
  { case: 'one half of the day, US', given: { start: '18:00', finish: '20:00', language: 'en-US' }, expect: { words: '6 to 8 pm', row: '6–8 pm' }, ...style },
  { case: 'one half of the day, UK', given: { start: '18:30', finish: '20:00', language: 'en-GB' }, expect: { words: '6:30 to 8 pm', row: '6:30–8 pm' }, ...govUk },
  { case: 'over noon', given: { start: '10:00', finish: '12:30', language: 'en-US' }, expect: { words: '10 am to 12:30 pm', row: '10 am–12:30 pm' }, ...style },
  { case: 'until noon', given: { start: '09:05', finish: '12:00', language: 'en-NZ' }, expect: { words: '9:05 am to noon', row: '9:05 am–noon' }, ...style },
  { case: 'from noon', given: { start: '12:00', finish: '16:00', language: 'en-US' }, expect: { words: 'noon to 4 pm', row: 'noon–4 pm' }, ...style },
  { case: 'from midnight', given: { start: '00:00', finish: '00:30', language: 'en-US' }, expect: { words: 'midnight to 12:30 am', row: 'midnight–12:30 am' }, ...style },
  { case: '24 hours', given: { start: '18:00', finish: '20:00', language: 'en-ZA' }, expect: { words: '18:00 to 20:00', row: '18:00–20:00' }, from: 'Unicode CLDR, short times of en-ZA', basis: 'published' },
];
