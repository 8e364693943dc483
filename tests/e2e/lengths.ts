/*
 * Greatest length of each kind of page on a phone of 390 x 844 px, with its folds shut. A screen is 844 px. They are our own design
 * limits, not a standard: a member stands at a hive, and an answer that lies under many screens is not found.
 */
import type { Page } from '@playwright/test';

/** The first pattern that fits an address decides, without the folder of the site. */
const LIMITS: readonly (readonly [kind: RegExp, pixels: number, reason: string])[] = [
  [/^$/, 2600, 'three screens: this week, what to watch for, the next meeting'],
  [/^(words\/|card\/|handbook\.html)$/, Infinity, 'the word list, the card and the book are looked up or printed, not read down'],
  [/^search\/$/, 1688, 'two screens: the box and the common questions'],
  [/^year\/$/, 2150, 'two and a half screens, and a line: the ring and twelve months'],
  [/^lists\/./, 3550, 'four screens with the first part open, and the fields for the reader’s own day'],
  [/^pests\/./, 4560, 'five screens and more: five parts, the law and a line on other languages stay open'],
  [/^(know-how|meetings|work-it-out)\/./, 3500, 'four screens: the answer, its reasons, and folds'],
  [/^treatments\/./, 4000, 'the caution in full, with what to do when it happens, stays open'],
  [/^figures\/./, 4500, 'one line for each figure of a subject, and up to forty of them'],
  [/^/, 4000, 'all others are lists of links, or short'],
];

/** Spanish says the same in more letters: a fifth more for a translated page. */
const TRANSLATED = 1.2;

/** The greatest length of the page at an address such as `lists/winter-rest/`. */
export const limitOf = (address: string): { pixels: number; reason: string } => {
  const own = address.replace(/^es\//, '');
  const [, pixels, reason] = LIMITS.find(([kind]) => kind.test(own))!;
  return { pixels: own === address ? pixels : pixels * TRANSLATED, reason };
};

/** The length of an open page in px. The month of today is shut first, because each month has another length. */
export const lengthOf = (page: Page): Promise<number> =>
  page.evaluate(() => {
    for (const month of document.querySelectorAll<HTMLDetailsElement>('[data-month-fold]')) month.open = false;
    return document.documentElement.scrollHeight;
  });

/** The excess of a page in words. */
export async function tooLong(page: Page, address: string): Promise<string[]> {
  const { pixels, reason } = limitOf(address);
  const long = await lengthOf(page);
  return long > pixels ? [`${long} px long, ${long - pixels} over ${pixels} (${reason})`] : [];
}
