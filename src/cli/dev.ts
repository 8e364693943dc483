/*
 * `npm run dev`: a preview that follows the webmaster's typing. Drafts are shown and marked; what checks find stands on
 * every page and in the terminal; a page reloads when its file is saved.
 */
import { readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { draftsLine, foundIn } from '../checks/drafts.ts';
import { formatDiagnostic } from '../source/diagnostic.ts';
import { argumentsOf } from './arguments.ts';
import { editionDay } from './edition.ts';
import { picturesFolder, projectFolder } from './paths.ts';
import { readyPictures } from './ready-pictures.ts';
import { openFolder } from '../source/open-folder.ts';

const { values } = argumentsOf('dev');
const content = resolve(values.content);
process.env.ASTRO_TELEMETRY_DISABLED = '1';
process.env.ALMANAC_CONTENT = content;
process.env.ALMANAC_EDITION = editionDay(openFolder(content));
process.env.ALMANAC_FINGERPRINT = 'preview';
process.env.ALMANAC_PICTURES = picturesFolder;

const { dev } = await import('astro');
let told = '';

/** The faults as they are now; told in the terminal when they differ from the last time. */
async function faultsNow(): Promise<string[]> {
  const folder = openFolder(content, true);
  const { faults } = await readyPictures(folder, console.log);
  const found = foundIn(folder, faults);
  const drafts = found.drafts.map((fault) => `draft: ${formatDiagnostic(fault)}`);
  const count = found.faults.length;
  const lines = [...found.faults.map(formatDiagnostic), ...drafts];
  const text = lines.join('\n');
  if (text !== told)
    console.log(
      [
        ...lines,
        ...(drafts.length > 0 ? [draftsLine(found.drafts)] : []),
        count === 0 ? 'No faults.' : `${count} ${count === 1 ? 'fault' : 'faults'}: each stands on the pages too.`,
      ].join('\n'),
    );
  told = text;
  return lines;
}

await faultsNow();
const server = await dev({
  root: projectFolder,
  logLevel: 'error',
  cacheDir: join(projectFolder, '.almanac', 'preview'),
  integrations: [
    {
      name: 'almanac-faults',
      hooks: {
        'astro:server:setup': ({ server: vite }) => {
          vite.middlewares.use('/almanac-faults.json', (_request, response, next) => {
            response.setHeader('content-type', 'application/json');
            faultsNow().then((faults) => response.end(JSON.stringify(faults)), next);
          });
          vite.middlewares.use('/pictures', (request, response) => {
            const name = /^\/([a-z0-9-]+\.jpg)$/.exec(request.url ?? '')?.[1];
            response.setHeader('content-type', 'image/jpeg');
            if (name)
              readFile(join(picturesFolder, name)).then(
                (bytes) => response.end(bytes),
                () => response.writeHead(404).end(),
              );
            else response.writeHead(404).end();
          });
        },
      },
    },
  ],
});
console.log(
  `The preview is at http://localhost:${server.address.port}/  (Ctrl-C stops it). Drafts are shown and marked; this is not the site to upload.`,
);
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => void server.stop().then(() => process.exit(0)));
