/*
 * Splits a sentence at its phone numbers, so that each can become a link. A phone number has three or more groups joined by hyphens, such
 * as 1-800-222-1222. Days such as 2026-04-18 are not matched.
 */
export type PhonePart = { words: string; /** What a phone dials. */ dials?: string };

const PHONE = /(?<![\d-])\+?\d{1,3}(?:-\d{2,4}){2,}(?![\d-])/g;

/** What a phone dials: the digits of a number, and its plus. */
export const dialed = (number: string): string => number.replace(/[^+\d]/g, '');

export function phoneParts(sentence: string): PhonePart[] {
  const parts: PhonePart[] = [];
  let from = 0;
  for (const { 0: words, index } of sentence.matchAll(PHONE)) {
    if (index > from) parts.push({ words: sentence.slice(from, index) });
    parts.push({ words, dials: dialed(words) });
    from = index + words.length;
  }
  if (from < sentence.length) parts.push({ words: sentence.slice(from) });
  return parts;
}
