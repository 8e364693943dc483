/*
 * Benchmarks of the almanac's promises on time, memory and bytes: a table for the terminal, `.almanac/bench.json` for programs. Times
 * depend on the machine and its load. The ratios, measured side by side, are what counts.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { cpus, platform, release, totalmem } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { projectFolder } from '../../src/cli/paths.ts';
import { answers } from './answers.ts';
import { budgetTable } from './budgets.ts';
import { builds } from './builds.ts';
import { checks } from './checks.ts';
import { lighthouse } from './lighthouse.ts';
import { newClub } from './new-club.ts';
import { pages } from './pages.ts';
import { preview } from './preview.ts';
import { table, verdictOf, type Row } from './table.ts';

const PARTS: Readonly<Record<string, (quick: boolean) => Promise<Row[]>>> = {
  builds,
  preview,
  'new-club': newClub,
  check: checks,
  pages,
  answers,
  lighthouse,
};

const { values } = parseArgs({
  options: { quick: { type: 'boolean', default: false }, part: { type: 'string' }, record: { type: 'boolean', default: false } },
});
if (values.record && (values.quick || values.part)) {
  console.error('--record keeps a whole run: leave out --quick and --part.');
  process.exit(1);
}
const day = new Date().toISOString().slice(0, 10);
const rows: Row[] = [];
const tables: string[] = [];
const failed: string[] = [];
const began = performance.now();
const indented = (text: string): string => text.replace(/^(?=.)/gm, '    ');
for (const [name, part] of Object.entries(PARTS).filter(([each]) => values.part === undefined || values.part === each)) {
  console.log(`${name} ...`);
  try {
    const measured = await part(values.quick);
    tables.push(`## ${name}\n\n${indented(table(measured))}\n`);
    console.log(`\n${table(measured)}\n`);
    rows.push(...measured);
  } catch (error) {
    // The other parts took minutes, and are not lost.
    failed.push(name);
    tables.push(`## ${name}\n\nNot measured: it stopped with an error.\n`);
    console.error(error);
  }
}
const record = {
  machine: machine(),
  quick: values.quick,
  part: values.part ?? 'all',
  rows: rows.map((row) => ({ ...row, verdict: verdictOf(row) })),
};
const file = join(projectFolder, '.almanac', 'bench.json');
mkdirSync(join(projectFolder, '.almanac'), { recursive: true });
writeFileSync(file, `${JSON.stringify(record, null, 2)}\n`);

const bound = rows.filter((row) => verdictOf(row) !== '');
const over = bound.filter((row) => verdictOf(row) === 'over');
const kept = `${bound.length - over.length} of ${bound.length} budgets kept${over.length > 0 ? `; over: ${over.map(({ name }) => name).join('; ')}` : ''}.${failed.length > 0 ? ` Not measured: ${failed.join(', ')}.` : ''}`;
const budgets = budgetTable(rows);
const minutes = ((performance.now() - began) / 60_000).toFixed(0);
console.log(`budgets\n\n${budgets}\n\nOn ${record.machine}, in ${minutes} minutes.`);
console.log(`${kept} All rows are in ${file}.`);
if (values.record)
  writeFileSync(
    join(projectFolder, 'tests', 'bench', 'RESULTS.md'),
    `# What was measured\n\n${day}, by \`npm run bench -- --record\`, on ${record.machine}, in ${minutes} minutes.\nTimes are of this machine in that hour; what counts are ratios, bytes and verdicts. ${kept}\n\n## budgets\n\n${indented(budgets)}\n\n${tables.join('\n')}`,
  );
process.exitCode = over.length + failed.length === 0 ? 0 : 1;

function machine(): string {
  const kinds = [...new Set(cpus().map(({ model }) => model.trim()))].join(' and ') || 'a processor that is not named';
  return `${cpus().length} x ${kinds}, ${(totalmem() / 1e9).toFixed(0)} GB, ${systemName()}, Node ${process.versions.node}`;
}

function systemName(): string {
  try {
    return /^PRETTY_NAME="(.*)"/m.exec(readFileSync('/etc/os-release', 'utf8'))![1]!;
  } catch {
    return `${platform()} ${release()}`;
  }
}
