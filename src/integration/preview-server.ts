/*
 * Preview server: what `astro dev` serves besides pages. These are the panel above each page, the published pictures, and the search index
 * and book of the last build.
 */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { AstroIntegration } from 'astro';
import { PAGEFIND_FOLDER, WORDS } from '../../shared/words/search-files.ts';
import { findingsWatcher } from './check-content.ts';
import { previewPanel } from './preview-panel.ts';

type ServerSetup = NonNullable<AstroIntegration['hooks']['astro:server:setup']>;
type Server = Parameters<ServerSetup>[0]['server'];

export type Previewing = {
  content: string;
  base: string;
  /** The folder of published pictures. */
  pictures: string;
  /** The output folder of the last build. */
  built: string;
  say: (line: string) => void;
};

const FROM_LAST_BUILD = new RegExp(`^(?:${PAGEFIND_FOLDER}[\\w./-]+|${WORDS}|handbook\\.(?:html|epub))$`);
const TYPES: Record<string, string> = {
  js: 'text/javascript',
  json: 'application/json',
  html: 'text/html; charset=utf-8',
  epub: 'application/epub+zip',
  jpg: 'image/jpeg',
  pdf: 'application/pdf',
};

/** Prints the faults, and prints them again whenever they change. */
export async function previewServer({ middlewares }: Server, { content, base, pictures, built, say }: Previewing): Promise<void> {
  const findingsNow = findingsWatcher(content, pictures, say);
  await findingsNow();
  const belowBase = (path: string): string => (path.startsWith(base) ? path.slice(base.length) : '');
  middlewares.use((request, response, next) => {
    const [path = '', query] = (request.url ?? '').split('?');
    const below = belowBase(path);
    const send = (file: string): void => {
      readFile(file).then(
        (bytes) => response.setHeader('content-type', TYPES[file.split('.').at(-1)!] ?? 'application/octet-stream').end(bytes),
        () => response.writeHead(404, { 'content-type': 'text/plain' }).end('Build the site once: npm run build.\n'),
      );
    };
    const picture = /^pictures\/([a-z0-9-]+\.jpg)$/.exec(below)?.[1];
    const own = /^files\/([a-z0-9-]+\.pdf)$/.exec(below)?.[1];
    if (path === '/almanac-preview.html') {
      const place = belowBase(new URLSearchParams(query).get('page') ?? '');
      findingsNow().then((found) => response.setHeader('content-type', TYPES.html!).end(previewPanel(found, place, base)), next);
    } else if (picture) send(join(pictures, picture));
    else if (own) send(join(content, 'files', own));
    else if (FROM_LAST_BUILD.test(below) && !below.includes('..')) send(join(built, below));
    else next();
  });
}
