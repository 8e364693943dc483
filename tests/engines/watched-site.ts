/*
 * The demo club on a host with the headers of its file `_headers`. In a copy of its pages a script comes first that writes down what goes
 * wrong in the page, because not every driver can say it: errors, messages of errors, files that do not come, and what the policy
 * refuses. The policies of the copy have the hash of that script besides, and the copy has no service worker.
 */
import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serve } from '../../src/cli/serve.ts';
import { fromHeadersFile } from '../e2e/host-headers.ts';
import { builtDemo, type Built } from '../setup/built-site.ts';
import type { Reader } from './reader.ts';

export interface WatchedSite {
  built: Built;
  at: (path: string) => string;
  close: () => Promise<void>;
}

const RECORDER = `(() => {
  const wrong = (window.wrong = []);
  addEventListener('error', ({ message, target }) => wrong.push(message ?? 'did not come: ' + (target.src ?? target.href)), true);
  addEventListener('unhandledrejection', ({ reason }) => wrong.push(String(reason)));
  addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI, sample }) =>
    wrong.push('the policy refuses ' + violatedDirective + ' ' + blockedURI + ' ' + sample));
  const tell = console.error;
  console.error = (...told) => { wrong.push(told.join(' ')); tell(...told); };
  Object.defineProperty(Navigator.prototype, 'serviceWorker', { get: () => undefined });
})()`;
const HASH = `'sha256-${createHash('sha256').update(RECORDER).digest('base64')}'`;
const withHash = (policies: string): string => policies.replaceAll("script-src 'self'", `script-src 'self' ${HASH}`);

export async function openWatchedSite(): Promise<WatchedSite> {
  const built = await builtDemo();
  const folder = mkdtempSync(join(tmpdir(), 'watched-'));
  cpSync(built.folder, folder, { recursive: true });
  for (const page of built.pages) {
    const file = join(folder, page.endsWith('/') ? `${page}index.html` : page);
    const html = readFileSync(file, 'utf8');
    const watched = withHash(html).replace(/<head[^>]*>/, `$&<script>${RECORDER}</script>`);
    if (!watched.includes(RECORDER)) throw new Error(`${page} has no head`);
    writeFileSync(file, watched);
  }
  const headersFor = fromHeadersFile(withHash(built.read('_headers')));
  const { address, close } = await serve({ folder, port: 0, headers: (path) => headersFor(`/${path}`) });
  return {
    built,
    at: (path) => new URL(path, address).href,
    close: async () => {
      await close();
      rmSync(folder, { recursive: true });
    },
  };
}

/** What went wrong in the page that is open. A page without the record is an error itself. */
export const wrongIn = (reader: Reader): Promise<string[]> => reader.run(() => (window as unknown as { wrong: string[] }).wrong.slice());
