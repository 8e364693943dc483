/* Finds the name that an author most likely meant, for "did you mean". */

/** The closest of `names` to `typed`, or null when none is near: at most two edits, or a third of the word. */
export function nearest(typed: string, names: Iterable<string>): string | null {
  let best: string | null = null;
  let least = Math.max(2, Math.floor(typed.length / 3)) + 1;
  for (const name of names) {
    const distance = edits(typed.toLowerCase(), name.toLowerCase());
    if (distance < least) [best, least] = [name, distance];
  }
  return best;
}

/** Edit distance between two words: insertions, deletions, changes and swaps of neighbours (Damerau's restricted distance). */
function edits(a: string, b: string): number {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const change = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? before[j - 2]! + 1 : Infinity;
      next.push(Math.min(change, row[j]! + 1, next[j - 1]! + 1, swapped));
    }
    [before, row] = [row, next];
  }
  return row[b.length]!;
}
