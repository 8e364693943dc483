/*
 * Finds the marks of a merge conflict, which a program for versions writes into a file where it could not join two versions of it.
 */
import type { Diagnostic } from './diagnostic.ts';

const OPENS = /^<{7}(?: |$)/;
const MARK = /^(?:<{7}|\|{7}|>{7})(?: |$)/;
const BETWEEN = /^(?:={7}|\|{7}.*)$/;

/**
 * The text with the first of two versions and empty lines in place of the marks and of the second, so that every other line keeps its
 * number; and one fault at the first mark. The text itself where it has no mark.
 */
export function oneVersion(path: string, text: string): { text: string; fault: Diagnostic | null } {
  const lines = text.split('\n');
  const first = lines.findIndex((line) => MARK.test(line));
  if (first < 0) return { text, fault: null };
  let isSecond = false;
  const left = lines.map((line) => {
    if (OPENS.test(line)) return '';
    if (BETWEEN.test(line)) isSecond = true;
    if (!isSecond && !MARK.test(line)) return line;
    if (MARK.test(line) && line.startsWith('>')) isSecond = false;
    return '';
  });
  return {
    text: left.join('\n'),
    fault: {
      path,
      line: first + 1,
      column: 1,
      rule: 'unmerged',
      field: 'the file',
      found: `"${lines[first]!.slice(0, 60)}", a mark between two versions of this file that were not joined`,
      write: 'the version that is right, without the other one and without the lines <<<<<<<, ======= and >>>>>>>',
    },
  };
}
