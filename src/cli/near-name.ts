// Finds the known name that a mistyped one most likely meant: the one with the smallest edit distance, if that is small for its length.

export function nearName(typed: string, known: readonly string[]): string | undefined {
  const allowed = Math.max(1, Math.floor(typed.length / 3));
  const [nearest] = known
    .map((name) => ({ name, steps: stepsBetween(typed, name) }))
    .filter(({ steps }) => steps <= allowed)
    .sort((one, other) => one.steps - other.steps);
  return nearest?.name;
}

function stepsBetween(one: string, other: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: other.length + 1 }, (_, column) => column);
  for (let row = 1; row <= one.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= other.length; column += 1) {
      const change = one[row - 1] === other[column - 1] ? 0 : 1;
      let steps = Math.min(last[column]! + 1, current[column - 1]! + 1, last[column - 1]! + change);
      const swapped = one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      if (swapped) steps = Math.min(steps, beforeLast[column - 2]! + 1);
      current.push(steps);
    }
    beforeLast = last;
    last = current;
  }
  return last[other.length]!;
}
