/**
 * Edit distance between two words: letters put in, left out, changed, and neighbours that changed places (optimal string alignment,
 * the restricted form of Damerau's distance). Each edit costs 1, or what the caller says.
 */
export type EditCosts<Letter> = {
  /** Of the letter at a place that is one too many. */
  readonly extra: (word: ArrayLike<Letter>, at: number) => number;
  readonly change: (a: Letter, b: Letter) => number;
  readonly swap: number;
};

const EVEN: EditCosts<unknown> = { extra: () => 1, change: (a, b) => (a === b ? 0 : 1), swap: 1 };

/** Counts to at most `most`. Beyond it the number only says "too far". */
export function editDistance<Letter>(
  a: ArrayLike<Letter>,
  b: ArrayLike<Letter>,
  { extra, change, swap }: EditCosts<Letter> = EVEN,
  most = Number.POSITIVE_INFINITY,
): number {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, at) => at);
  let next: number[] = [];
  for (let i = 0; i < a.length; i++) {
    let nearest = (next[0] = i + 1);
    const left = extra(a, i);
    for (let j = 0; j < b.length; j++) {
      let least = Math.min(row[j + 1]! + left, next[j]! + extra(b, j), row[j]! + change(a[i]!, b[j]!));
      if (i > 0 && j > 0 && a[i] === b[j - 1] && a[i - 1] === b[j]) least = Math.min(least, before[j - 1]! + swap);
      next[j + 1] = least;
      if (least < nearest) nearest = least;
    }
    if (nearest > most) return most + 1;
    [before, row, next] = [row, next, before];
  }
  return row[b.length]!;
}
