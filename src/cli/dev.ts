/*
 * `npm run dev`: a preview that follows the webmaster's typing. Drafts are shown and marked. Diagnostics are on every page and in the
 * terminal. A page reloads when its file is saved.
 */
import { join, resolve } from 'node:path';
import { setOptions } from '../integration/options.ts';
import { argumentsOf } from './arguments.ts';
import { usualOutput } from './output-folder.ts';
import { projectFolder } from './paths.ts';

const { values } = argumentsOf('dev');
process.env.ASTRO_TELEMETRY_DISABLED = '1';
setOptions(process.env, { content: resolve(values.content) });

const { dev } = await import('astro');
const server = await dev({
  root: projectFolder,
  // Search and book are those of the last build.
  outDir: usualOutput(values.content),
  logLevel: 'error',
  cacheDir: join(projectFolder, '.almanac', 'preview'),
});
console.log(
  `The preview is at http://localhost:${server.address.port}/  (Ctrl-C stops it). Drafts are shown and marked; this is not the site to upload.`,
);
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => void server.stop().then(() => process.exit(0)));
