/* Difference of two texts, line by line: "- " marks a line that is gone, "+ " a new line. Equal lines are left out. */
import { diffLines } from 'diff';

export const changedLines = (before: string, after: string): string[] =>
  diffLines(`${before.trimEnd()}\n`, `${after.trimEnd()}\n`)
    .filter(({ added, removed }) => added || removed)
    .flatMap(({ added, value }) =>
      value
        .split('\n')
        .slice(0, -1)
        .map((line) => `${added ? '+' : '-'} ${line}`),
    );
