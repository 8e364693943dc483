/* Proximity: two successive words of a query count more where they are also side by side on the page. */

/** The positions of a word on each page. */
export type Places = ReadonlyMap<number, readonly number[]>;

/** Bonus of two neighbours for a page, as a share of the commoner one's rarity. 0.2 to 0.3 works well on the queries of tests/tables. */
const BESIDE = 0.3;
/** The maximum distance of the second word. */
const SPAN = 2;
/** The maximum of positions compared per word. */
const MOST = 40;

/** Score of the nearest two positions, from 0 up. */
export function togetherOn(page: number, first: Places, second: Places): number {
  const near = distance(first.get(page), second.get(page));
  return near <= SPAN ? BESIDE / near : 0;
}

/** Two words never share a position. If they do, one was matched as the other. */
function distance(first: readonly number[] = [], second: readonly number[] = []): number {
  let least = Number.POSITIVE_INFINITY;
  for (const a of first.slice(0, MOST)) for (const b of second.slice(0, MOST)) if (a !== b) least = Math.min(least, Math.abs(a - b));
  return least;
}
