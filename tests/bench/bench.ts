/*
 * `npm run bench`: the measurements of what a reader and a webmaster wait for, as a table, and as JSON in
 * `.almanac/bench.json`. `--quick` leaves out the largest club. Ratios are of one run; seconds are this machine's.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { cpus, platform, release, totalmem } from 'node:os';
import { join } from 'node:path';
import { projectFolder } from '../../src/desk/places.ts';
import { demoSite, openBrowser } from '../site/built-site.ts';
import { keystrokes, searches, withoutSignal } from './answers.ts';
import { measureBuilds } from './builds.ts';
import { firstViews, offlineTotal, pageBytes } from './pages.ts';
import { keeps, table, type Row } from './row.ts';

const quick = process.argv.includes('--quick');
const say = (line: string): void => void process.stderr.write(`${line}\n`);

const site = await demoSite();
const blind = await openBrowser();
const keeping = await openBrowser({ workers: true });
const rows: Row[] = [];
try {
  say('Measuring pages, answers and the copy ...');
  rows.push(...pageBytes(site), ...offlineTotal(site), ...(await firstViews(site, blind)), ...(await keystrokes(site, blind)), ...(await searches(site, blind)), ...(await withoutSignal(site, keeping)));
} finally {
  await blind.close();
  await keeping.close();
  await site.close();
}
rows.push(...(await measureBuilds(quick ? [100, 1000] : [100, 1000, 5000], say)));

const machine = `${cpus().length} x ${cpus()[0]?.model.trim() ?? 'unknown processor'}, ${(totalmem() / 2 ** 30).toFixed(0)} GB, ${platform()} ${release()}, Node ${process.versions.node}`;
const { version } = JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8')) as { version: string };
mkdirSync(join(projectFolder, '.almanac'), { recursive: true });
writeFileSync(join(projectFolder, '.almanac', 'bench.json'), `${JSON.stringify({ machine, version, rows }, null, 2)}\n`);
console.log(`${machine}\n\n${table(rows)}`);
const over = rows.filter((row) => !keeps(row));
console.log(over.length === 0 ? '\nEvery measure is kept.' : `\n${over.length} over: ${over.map(({ what }) => what).join('; ')}`);
process.exitCode = over.length === 0 ? 0 : 1;
