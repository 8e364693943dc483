import assert from 'node:assert/strict';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { test } from 'vitest';
import { findBrowser, type Machine } from '../../../src/cli/browser.ts';

const quiet = ['--disable-background-networking', '--disable-component-update', '--disable-sync', '--disable-quic', '--no-first-run'];
const bin = mkdtempSync(join(tmpdir(), 'browser-'));
for (const name of ['chromium', 'chromium-headless-shell', 'google-chrome']) writeFileSync(join(bin, name), '');
const inBin = (name: string): string => join(bin, name);

// A machine on which only `works` starts. It records what was tried and what was run.
function machine(works: (tried: string, ran: string[]) => boolean, own: Partial<Machine> = {}) {
  const tried: string[] = [];
  const ran: string[] = [];
  const messages: string[] = [];
  const made: Machine = {
    platform: 'linux',
    environment: { PATH: ['/nowhere', bin].join(delimiter) },
    isRoot: false,
    starts: async (options) => {
      const name = options.executablePath ?? options.channel ?? 'own';
      tried.push(name);
      return works(name, ran);
    },
    runs: async (program, parts) => Boolean(ran.push([program === process.execPath ? 'node' : program, ...parts.slice(-1)].join(' '))),
    tell: (line) => messages.push(line),
    ...own,
  };
  return { made, tried, ran, told: messages };
}

test('installed browsers are tried in order', async () => {
  const { made, tried, ran } = machine((name) => name.endsWith('google-chrome'));
  assert.deepEqual(await findBrowser(made), { executablePath: join(bin, 'google-chrome'), args: quiet });
  assert.deepEqual(tried, [
    'own',
    ...['chromium-headless-shell'].map(inBin),
    'chrome',
    'msedge',
    ...['chromium', 'google-chrome'].map(inBin),
  ]);
  assert.deepEqual(ran, []);
});

test('a headless shell is preferred to a whole browser', async () => {
  const { made, ran } = machine((name) => /chromium/.test(name));
  assert.deepEqual(await findBrowser(made), { executablePath: inBin('chromium-headless-shell'), args: quiet });
  assert.deepEqual(ran, []);
});

test('root starts it without a sandbox', async () => {
  const { made } = machine((name) => name === 'chrome', { isRoot: true });
  assert.deepEqual(await findBrowser(made), { channel: 'chrome', args: ['--no-sandbox', ...quiet] });
});

test('ALMANAC_BROWSER is the only candidate where it is set', async () => {
  const good = machine(() => true, { environment: { ALMANAC_BROWSER: '/opt/browser' } });
  assert.deepEqual(await findBrowser(good.made), { executablePath: '/opt/browser', args: quiet });
  const bad = machine((name) => name === 'own', { environment: { ALMANAC_BROWSER: '/opt/browser' } });
  assert.equal(await findBrowser(bad.made), null);
  assert.deepEqual(bad.told, ['ALMANAC_BROWSER names /opt/browser, which does not start.']);
});

test("root gets the system's package, although a whole browser is installed", async () => {
  const { made, ran } = machine(
    (name, done) => name === 'chrome' || (/shell$/.test(name) && done.includes('apt-get chromium-headless-shell')),
    {
      isRoot: true,
    },
  );
  assert.deepEqual(await findBrowser(made), { executablePath: inBin('chromium-headless-shell'), args: ['--no-sandbox', ...quiet] });
  assert.deepEqual(ran, ['apt-get --version', 'apt-get update', 'apt-get chromium-headless-shell']);
});

test('an installed whole browser is used where the package is not available', async () => {
  const { made } = machine((name) => name === inBin('chromium'), { isRoot: true, runs: async (program) => program !== 'apt-get' });
  assert.deepEqual(await findBrowser(made), { executablePath: inBin('chromium'), args: ['--no-sandbox', ...quiet] });
});

test('the download is tried last, and null is returned when it fails', async () => {
  const downloaded = machine((name, done) => name === 'own' && done.includes('node chromium'));
  assert.deepEqual(await findBrowser(downloaded.made), { args: quiet });
  const none = machine(() => false, { runs: async () => false });
  assert.equal(await findBrowser(none.made), null);
  assert.deepEqual(none.told, ['Downloading a browser for the tests (about 100 MB, once) ...']);
});
