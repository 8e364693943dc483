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

export const typed: SourcedRow<{ text: string }, { day?: string; reason?: string }>[] = [
  { case: 'ISO', given: { text: '2026-04-18' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'day first', given: { text: '18 April 2026' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'month first', given: { text: 'April 18 2026' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'comma and ordinal', given: { text: 'April 18th, 2026' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'short month and right weekday', given: { text: ' Sat 18 Apr 2026 ' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'non-breaking spaces', given: { text: '18\u00a0April\u00a02026' }, expect: { day: '2026-04-18' }, from: 'our rule', basis: 'rule' },
  { case: 'wrong weekday', given: { text: 'Sunday 18 April 2026' }, expect: { reason: 'wrong-weekday' }, from: 'our rule', basis: 'rule' },
  { case: 'wrong ordinal', given: { text: '18st April 2026' }, expect: { reason: 'not-a-date' }, from: 'our rule', basis: 'rule' },
  { case: 'slashes', given: { text: '4/5/26' }, expect: { reason: 'slash-date' }, from: 'our rule', basis: 'rule' },
  { case: 'slashes that could only be one date', given: { text: '13/3/2026' }, expect: { reason: 'slash-date' }, from: 'our rule', basis: 'rule' },
  { case: 'dots', given: { text: '18.4.2026' }, expect: { reason: 'slash-date' }, from: 'our rule', basis: 'rule' },
  { case: 'no such day', given: { text: '31 April 2026' }, expect: { reason: 'impossible-date' }, from: 'our rule', basis: 'rule' },
  { case: 'no leap day', given: { text: '2026-02-29' }, expect: { reason: 'impossible-date' }, from: 'our rule', basis: 'rule' },
  { case: 'a leap day', given: { text: '29 Feb 2028' }, expect: { day: '2028-02-29' }, from: 'our rule', basis: 'rule' },
  { case: 'no year', given: { text: '18 April' }, expect: { reason: 'no-year' }, from: 'our rule', basis: 'rule' },
  { case: 'two-figure year', given: { text: '18 April 26' }, expect: { reason: 'short-year' }, from: 'our rule', basis: 'rule' },
  { case: 'too early', given: { text: '18 April 1826' }, expect: { reason: 'year-out-of-range' }, from: 'our rule', basis: 'rule' },
  { case: 'nothing', given: { text: '  ' }, expect: { reason: 'empty' }, from: 'our rule', basis: 'rule' },
  { case: 'words', given: { text: 'next Tuesday' }, expect: { reason: 'not-a-date' }, from: 'our rule', basis: 'rule' },
];

export const ranges: SourcedRow<{ first: string; last: string }, { words: string }>[] = [
  { case: 'one day', given: { first: '2026-05-03', last: '2026-05-03' }, expect: { words: '3 May 2026' }, from: 'our rule', basis: 'rule' },
  { case: 'one month', given: { first: '2026-05-03', last: '2026-05-17' }, expect: { words: '3 to 17 May 2026' }, from: 'our rule', basis: 'rule' },
  { case: 'two months', given: { first: '2026-04-28', last: '2026-05-03' }, expect: { words: '28 April to 3 May 2026' }, from: 'our rule', basis: 'rule' },
  { case: 'two years', given: { first: '2026-12-28', last: '2027-01-03' }, expect: { words: '28 December 2026 to 3 January 2027' }, from: 'our rule', basis: 'rule' },
];
