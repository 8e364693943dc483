/* Test host whose site can be stopped, changed for another edition, or contain two almanacs, and a reader whose browser stores a copy. */
import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { serve, type Served } from '../../src/cli/serve.ts';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { fromHeadersFile } from './host-headers.ts';

export interface Host {
  /** The origin, without a last slash. */
  origin: string;
  /** Serves a built folder under a base path from now on. Null removes it. */
  put: (base: string, folder: string | null) => Promise<void>;
  /** Nothing answers from now on, as without signal. */
  stop: () => void;
  /** The same after so many more answers. Waits until a request gets none. */
  stopAfter: (requests: number) => Promise<void>;
  start: () => void;
  /** Paths requested since the last call. */
  asked: () => string[];
  close: () => Promise<void>;
}

export async function openHost(): Promise<Host> {
  const sites = new Map<string, Served>();
  let silent = false;
  let answers = Infinity;
  let refused = (): void => undefined;
  const paths: string[] = [];
  const server: Server = createServer((request, response) => {
    if (silent || (answers -= 1) < 0) return (refused(), void request.socket.destroy());
    const path = request.url ?? '/';
    paths.push(path);
    const base = [...sites.keys()].filter((each) => path.startsWith(each) || `${path}/` === each).sort((a, b) => b.length - a.length)[0];
    if (base === undefined) return void response.writeHead(404).end();
    const behind = new URL(path, sites.get(base)!.address);
    fetch(behind, { redirect: 'manual' }).then(
      async (answer) => {
        const headers = Object.fromEntries(
          [...answer.headers].filter(([name]) => !/^(content-encoding|content-length|connection|keep-alive|transfer-encoding)$/.test(name)),
        );
        response.writeHead(answer.status, headers).end(Buffer.from(await answer.arrayBuffer()));
      },
      () => request.socket.destroy(),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    origin: `http://127.0.0.1:${port}`,
    put: async (base, folder) => {
      await sites.get(base)?.close();
      sites.delete(base);
      if (!folder) return;
      const headersFor = fromHeadersFile(readFileSync(join(folder, '_headers'), 'utf8'));
      sites.set(base, await serve({ folder, base, port: 0, headers: (path) => headersFor(base + path) }));
    },
    stop: () => {
      silent = true;
      server.closeAllConnections();
    },
    stopAfter: (requests) => {
      answers = requests;
      return new Promise((resolve) => (refused = resolve));
    },
    start: () => {
      silent = false;
      answers = Infinity;
    },
    asked: () => paths.splice(0),
    close: async () => {
      for (const site of sites.values()) await site.close();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

export interface Reader {
  page: Page;
  context: BrowserContext;
  /** The page's message about its copy, once it matches. */
  told: (fits: RegExp) => Promise<string>;
}

export async function openReader(
  browser: Browser,
  address: string,
  options: BrowserContextOptions & { script?: string } = {},
): Promise<Reader> {
  const { script, ...given } = options;
  const context = await browser.newContext({ reducedMotion: 'reduce', ...given });
  const page = await context.newPage();
  if (script) await context.addInitScript(script);
  await page.goto(address);
  const told = async (fits: RegExp): Promise<string> => {
    const line = page.locator('[data-offline]').filter({ hasText: fits });
    await line.waitFor({ state: 'attached', timeout: 20_000 });
    return line.innerText();
  };
  return { page, context, told };
}

/** Waits until the browser has checked for a new edition, and it has taken over or was given up. */
export async function settled(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration?.update().catch(() => undefined);
    while (registration?.installing || registration?.waiting || registration?.active?.state === 'activating')
      await new Promise((resolve) => setTimeout(resolve, 20));
  });
}

/** Pages that do not open from the copy with the published bytes. `from` is the address of the first page. */
export async function wrongWithoutSignal(page: Page, site: Site, from: string, pages: readonly string[]): Promise<string[]> {
  const wrong: string[] = [];
  for (const each of pages.filter((address) => !address.endsWith('404.html'))) {
    const path = each.slice(site.base.length);
    const answer = await page.goto(from + path, { waitUntil: 'commit' });
    if (answer?.status() !== 200) wrong.push(`${each}: ${answer?.status()}`);
    else if ((await answer.text()) !== site.read(`${path}index.html`)) wrong.push(`${each}: other bytes`);
  }
  return wrong;
}
