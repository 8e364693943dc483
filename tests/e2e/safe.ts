/*
 * Pages on a host with the headers of the built file `_headers` and with the service worker. Every button is pressed and every form
 * submitted. Every request and every refusal of the policy is recorded.
 */
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser, BrowserContext, Page } from '@playwright/test';
import { serve, type Served } from '../../src/cli/serve.ts';
import { builtDemo, type Built } from '../setup/built-site.ts';
import { fromHeadersFile } from './host-headers.ts';
import { openRecorder, type Recorder } from './recorder.ts';
import { nothing, phone } from './visit.ts';

/** Chromium's own requests to its maker about forms. No page names that address, which is tested as well. */
const BROWSERS_OWN = 'content-autofill.googleapis.com:443';

interface Watched {
  refused: string[];
}

/** Runs before a page's own scripts and records silently what the policy refuses. */
function watch(): void {
  const here = globalThis as unknown as Watched;
  here.refused = [];
  document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI, sample }) =>
    here.refused.push(`${violatedDirective} refuses ${blockedURI} ${sample}`),
  );
  window.print = () => undefined;
}

/** Presses every button that does not leave the page, and loads scripts that wait for a touch. */
function pressAll(): void {
  for (const field of document.querySelectorAll<HTMLElement>('main input, main select, main textarea')) field.focus();
  for (const button of document.querySelectorAll<HTMLButtonElement>('button:not([data-to])'))
    if (!button.closest('form[role=search], [hidden]') && !button.disabled) button.click();
  for (const box of document.querySelectorAll<HTMLInputElement>('main input[type=checkbox]')) box.click();
}

/** Defines the tests for the file that calls it. */
export function testSafe(pagesOf: (site: Built) => readonly string[]): void {
  let site: Built;
  let served: Served;
  let browser: Browser;
  let context: BrowserContext;
  let recorder: Recorder;
  const refused: string[] = [];
  const broken: string[] = [];
  const cookies: string[] = [];
  const byPages: string[] = [];

  test.beforeAll(async ({ browser: launched }) => {
    site = await builtDemo();
    const headersFor = fromHeadersFile(site.read('_headers'));
    served = await serve({ folder: site.folder, base: site.base, port: 0, gzip: true, headers: (path) => headersFor(site.base + path) });
    recorder = await openRecorder(new URL(served.address).origin);
    browser = launched;
    context = await browser.newContext({ viewport: phone, reducedMotion: 'reduce', proxy: recorder.proxy });
    context.on('request', (request) => void byPages.push(request.url()));
    await context.addInitScript(watch);
    const page = await context.newPage();
    page.on('dialog', (dialog) => void dialog.accept().catch(() => undefined));
    page.on('pageerror', (error) => broken.push(`${page.url()}: ${error}`));
    for (const address of pagesOf(site)) await lookAt(page, address);
    // The worker has fetched its copy once the page says so.
    await page.goto(`${served.address}reading/`);
    await page
      .locator('[data-offline]')
      .filter({ hasText: /^Available offline/ })
      .waitFor({ state: 'attached', timeout: 30_000 });
    cookies.push(...(await context.cookies()).map(({ name }) => `the browser keeps ${name}`));
  });
  test.afterAll(async () => {
    await recorder?.close();
    await served?.close();
  });

  async function lookAt(page: Page, address: string): Promise<void> {
    await page.goto(new URL(address, served.address).href);
    await page.evaluate(pressAll);
    // A script that a press has loaded has run after a frame or two.
    await page.waitForLoadState('load');
    await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 60)));
    const seen = await page.evaluate(() => ({ refused: (globalThis as unknown as Watched).refused, cookie: document.cookie }));
    refused.push(...seen.refused.map((each) => `${address}: ${each}`));
    if (seen.cookie) cookies.push(`${address}: ${seen.cookie}`);
  }

  test('pages and their worker make no request to another host', () => {
    const { host } = new URL(served.address);
    nothing(recorder.asked.filter((each) => each.host !== host && each.host !== BROWSERS_OWN).map((each) => each.host + each.path));
    nothing(byPages.filter((address) => !/^(data|blob):/.test(address) && new URL(address).host !== host));
    const paths = new Set(recorder.asked.map(({ path }) => path));
    assert.ok(paths.size > 300 && paths.has('/worker.js') && paths.has('/search/words.json'), `${paths.size} addresses were written down`);
  });

  test('no cookie is set, stored or sent', () => {
    nothing(cookies);
    nothing(
      recorder.asked.flatMap(({ path, sent, answered }) => [
        ...(sent.cookie ? [`${path} is asked for with ${sent.cookie}`] : []),
        ...(answered['set-cookie'] ? [`${path} sets ${answered['set-cookie'].join(' ')}`] : []),
      ]),
    );
  });

  test('each answer has the headers of the file', () => {
    nothing(
      recorder.asked.flatMap(({ path, answered, status }) =>
        status === 0 ||
        status >= 300 ||
        (/frame-ancestors 'none'/.test(String(answered['content-security-policy'])) && answered['x-content-type-options'] === 'nosniff')
          ? []
          : [`${path} came without them`],
      ),
    );
    assert.equal(recorder.asked.find(({ path }) => path === '/club.ics')?.answered['content-type'], 'text/calendar; charset=utf-8');
  });

  test('the policy refuses nothing that a page does, and no script fails', () => {
    nothing(refused);
    nothing(broken);
  });

  test('the policy works: inline script, markup from text, and other hosts are refused', async () => {
    const page = await context.newPage();
    await page.goto(`${served.address}about/`);
    const tried = await page.evaluate(async () => {
      const told: Record<string, boolean> = {};
      const throws = (act: () => void): boolean => {
        try {
          act();
          return false;
        } catch {
          return true;
        }
      };
      told.markup = throws(() => (document.body.innerHTML = '<i>x</i>'));
      told.script = throws(() => void Object.assign(document.createElement('script'), { text: 'window.ran = true' }));
      told.policy = throws(
        () =>
          void (
            globalThis as unknown as { trustedTypes: { createPolicy: (name: string, rules: object) => unknown } }
          ).trustedTypes.createPolicy('another', {}),
      );
      told.worker = throws(() => void new Worker('/assets/other.js'));
      told.host = await fetch('https://other.example/').then(
        () => false,
        () => true,
      );
      const inline = document.createElement('div');
      inline.setAttribute('style', 'color: red');
      told.style = inline.style.color === '';
      return told;
    });
    assert.deepEqual(tried, { markup: true, script: true, policy: true, worker: true, host: true, style: true });
    assert.ok((await page.evaluate(() => (globalThis as unknown as Watched).refused.length)) >= 4);
    await page.close();
  });

  test('the test records a request to another host', async () => {
    const other = await browser.newContext({ proxy: recorder.proxy, bypassCSP: true });
    const page = await other.newPage();
    await page.goto(`${served.address}about/`);
    await page.evaluate(() => Promise.allSettled([fetch('http://plain.example/x'), fetch('https://other.example/')]));
    const hosts = recorder.asked.map(({ host }) => host);
    assert.ok(hosts.includes('plain.example') && hosts.includes('other.example:443'), [...new Set(hosts)].join(', '));
    await other.close();
  });
}
