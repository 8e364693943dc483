/*
 * `npm run dev`: a preview that follows the webmaster's typing. Drafts are shown and marked; what checks find stands on
 * every page and in the terminal; a page reloads when its file is saved.
 */
import { join } from 'node:path';
import { check } from '../checks/check.ts';
import { faultLine } from '../reader/fault.ts';
import { argumentsOf } from './arguments.ts';
import { editionDay } from './edition.ts';
import { projectFolder } from './places.ts';
import { readFolder } from '../reader/folder.ts';

const { values } = argumentsOf('dev');
process.env.ASTRO_TELEMETRY_DISABLED = '1';
process.env.ALMANAC_CONTENT = values.content;
process.env.ALMANAC_EDITION = editionDay(readFolder(values.content));
process.env.ALMANAC_FINGERPRINT = 'preview';

const { dev } = await import('astro');
let told = '';

/** The faults as they are now; told in the terminal when they differ from the last time. */
function faultsNow(): string[] {
  const lines = check(values.content).map(faultLine);
  const text = lines.join('\n');
  if (text !== told) console.log(lines.length === 0 ? 'No faults.' : `${text}\n${lines.length} ${lines.length === 1 ? 'fault' : 'faults'}: each stands on the pages too.`);
  told = text;
  return lines;
}

faultsNow();
const server = await dev({
  root: projectFolder,
  logLevel: 'error',
  cacheDir: join(projectFolder, '.almanac', 'preview'),
  integrations: [
    {
      name: 'almanac-faults',
      hooks: {
        'astro:server:setup': ({ server: vite }) => {
          vite.middlewares.use('/almanac-faults.json', (_request, response) => {
            response.setHeader('content-type', 'application/json');
            response.end(JSON.stringify(faultsNow()));
          });
        },
      },
    },
  ],
});
console.log(`The preview is at http://localhost:${server.address.port}/  (Ctrl-C stops it). Drafts are shown and marked; this is not the site to upload.`);
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => void server.stop().then(() => process.exit(0)));
