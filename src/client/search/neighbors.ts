/* Two words that follow each other in a question mean more where they also stand side by side on the page. */

/** The places of a word on each page. */
export type Places = ReadonlyMap<number, readonly number[]>;

/** What two neighbors add to a page, as a share of the commoner one's rarity. 0.2 to 0.3 is good on the questions of tests/tables. */
const BESIDE = 0.3;
/** How many words further the second may stand. */
const SPAN = 2;
/** So many places of a word are looked at. */
const MOST = 40;

/** What the page gets for the nearest two places, from 0 up. */
export function togetherOn(page: number, first: Places, second: Places): number {
  const near = distance(first.get(page), second.get(page));
  return near <= SPAN ? BESIDE / near : 0;
}

/** Two words are never in one place: there one is read as the other. */
function distance(first: readonly number[] = [], second: readonly number[] = []): number {
  let least = Number.POSITIVE_INFINITY;
  for (const a of first.slice(0, MOST)) for (const b of second.slice(0, MOST)) if (a !== b) least = Math.min(least, Math.abs(a - b));
  return least;
}
