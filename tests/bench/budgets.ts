/*
 * Every budget of the project, with the rows of the bench that measure it, or the reason why the bench does not. The first table of the
 * results is made of this list.
 */
import { shown, verdictOf, type Row } from './table.ts';

type Budget = { what: string; budget: string } & ({ rows: RegExp } | { elsewhere: string });

/** A pattern fits `part: name` of a row. */
const BUDGETS: readonly Budget[] = [
  { what: 'HTML of a page', budget: '14,000 B, translated 15,000 B; two lists of the whole book more', rows: /^pages: HTML, (?!95)/ },
  { what: 'HTML of 95 of 100 pages', budget: '12,000 B', rows: /^pages: HTML, 95/ },
  { what: 'first view of a page', budget: '75 kB to read, 85 kB with a form', rows: /^pages: first view,/ },
  { what: 'requests of a first view', budget: '7 to read, 9 with a form, 12 of a list', rows: /^pages: requests, / },
  { what: 'requests to other hosts', budget: 'none', rows: /^pages: requests to other hosts/ },
  { what: 'fonts', budget: '45 kB', rows: /^pages: letters/ },
  { what: 'script before a touch', budget: '4 kB to read, 6 kB on a list, 8 kB with a form', rows: /^pages: script, most/ },
  { what: 'script after a touch', budget: '16 kB on a list, 28 kB of a calculator', rows: /^pages: script after/ },
  { what: 'style sheets', budget: '15 kB, and 2 kB for hand-outs', rows: /^pages: style sheets/ },
  { what: 'first search', budget: '127 kB in the middle, 140 kB at worst', rows: /^pages: first search/ },
  { what: 'whole club offline', budget: '3.1 MB, 1,000 files, 20 s at 1.6 Mbit/s', rows: /^pages: (the whole copy|files of the whole)/ },
  { what: 'length of a page on a phone', budget: 'by kind, 1,688 to 4,500 px; translated a fifth more', rows: /^pages: length, \// },
  { what: 'sheets of paper', budget: '1 or 2 by kind', elsewhere: 'every test run prints the pages: tests/e2e/paper.spec.ts' },
  {
    what: 'cold build of 1,000 pages, the book apart',
    budget: '1.5 times bare Astro, our processor',
    rows: /^builds: 1000 pages: ours \/ bare Astro, our/,
  },
  { what: 'a page at 5,000 pages', budget: '1.1 times one at 1,000', rows: /^builds: a (?:further )?page.*: ours, the book apart/ },
  { what: 'most memory at 5,000 pages', budget: '3 GB', rows: /^builds: 5000 pages: most memory/ },
  { what: 'check of the demo club, warm', budget: '4 s; processor 3 s', rows: /^check: check, the demo club, warm/ },
  { what: 'the book of the demo club', budget: '3 s', rows: /^check: the book/ },
  { what: 'a new club', budget: '14 questions, no blank, build 30 s', rows: /^new-club: (its build|questions|blanks)/ },
  { what: 'two builds of one input', budget: 'the same bytes', elsewhere: 'yes or no, and no number: tests/build/twice.slow.test.ts' },
  { what: 'a key to its result, slowed four times', budget: '50 ms', rows: /^answers: a key .* frame/ },
  {
    what: 'Lighthouse, worst of five views of each kind',
    budget: 'performance 98, the others 100',
    rows: /^lighthouse: (performance|accessibility|best practice|findability), (?!worst)/,
  },
  { what: 'axe', budget: 'no fault on any page', elsewhere: 'yes or no, in every test run: tests/e2e/looks.spec.ts, states.spec.ts' },
  { what: 'npm test, set-up apart', budget: '10 minutes', elsewhere: 'it would take as long as all this; it prints its own time' },
];

/** One row a budget. The measured value is the one that is nearest to its limit, or farthest above it. */
export function budgetTable(rows: readonly Row[]): string {
  const lines = BUDGETS.map((each) => {
    if ('elsewhere' in each) return [each.what, each.budget, 'not measured here', each.elsewhere];
    const of = rows.filter((row) => verdictOf(row) !== '' && each.rows.test(`${row.part}: ${row.name}`));
    if (of.length === 0) return [each.what, each.budget, 'not measured', 'this run left it out'];
    const over = of.filter((row) => verdictOf(row) === 'over');
    const worst = of.toSorted((a, b) => shareOf(b) - shareOf(a))[0]!;
    const verdict = over.length === 0 ? 'kept' : `over in ${over.length} of ${of.length}`;
    const limit = shown((worst.most ?? worst.least)!, worst.unit);
    return [each.what, each.budget, verdict, `${shown(worst.measured, worst.unit)} of ${limit}${of.length > 1 ? ` (${worst.name})` : ''}`];
  });
  const all = [['budget', 'limit', 'verdict', 'nearest to the limit'], ...lines];
  const widths = [0, 1, 2].map((column) => Math.max(...all.map((line) => line[column]!.length)));
  return all
    .map((line) =>
      line
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

/** The part of the limit that is used, from 0. */
const shareOf = ({ measured, most, least }: Row): number =>
  most !== undefined ? (most === 0 ? measured : measured / most) : measured === 0 ? Infinity : least! / measured;
