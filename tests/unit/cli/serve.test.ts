import assert from 'node:assert/strict';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from 'node:fs';
import { get, request } from 'node:http';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, test } from 'vitest';
import { gunzipSync } from 'node:zlib';
import { serve, type Served } from '../../../src/cli/serve.ts';

const page = `<!doctype html><title>A page</title>${'<p>bees</p>'.repeat(200)}`;
const around = mkdtempSync(join(tmpdir(), 'serve-'));
const folder = join(around, 'site');
let root: Served;
let sub: Served;

beforeAll(async () => {
  mkdirSync(join(folder, 'year', 'may'), { recursive: true });
  mkdirSync(join(folder, 'empty'));
  writeFileSync(join(around, 'secret.txt'), 'secret');
  writeFileSync(join(folder, 'index.html'), page);
  writeFileSync(join(folder, '404.html'), 'not here');
  writeFileSync(join(folder, 'year', 'index.html'), 'the year');
  for (const name of ['a.css', 'a.js', 'a.mjs', 'a.svg', 'a.woff2', 'a.json', 'a.ics', 'a.webmanifest', 'a.wasm', 'en.pf_meta', 'é b.txt'])
    writeFileSync(join(folder, name), 'x');
  root = await serve({ folder, port: 0, gzip: true });
  sub = await serve({ folder, base: '/club/', port: 0, headers: () => ({ 'x-own': 'yes' }) });
});
afterAll(() => Promise.all([root.close(), sub.close()]));

interface Reply {
  status: number;
  headers: NodeJS.Dict<string | string[]>;
  body: Buffer;
}

function ask(address: string, options: { method?: string; headers?: Record<string, string> } = {}): Promise<Reply> {
  return new Promise((resolve, reject) => {
    request(address, options, (response) => {
      const parts: Buffer[] = [];
      response
        .on('data', (part) => parts.push(part))
        .on('end', () => resolve({ status: response.statusCode!, headers: response.headers, body: Buffer.concat(parts) }));
    })
      .on('error', reject)
      .end();
  });
}

const types = {
  '': 'text/html; charset=utf-8',
  'a.css': 'text/css; charset=utf-8',
  'a.js': 'text/javascript; charset=utf-8',
  'a.mjs': 'text/javascript; charset=utf-8',
  'a.svg': 'image/svg+xml; charset=utf-8',
  'a.woff2': 'font/woff2',
  'a.json': 'application/json; charset=utf-8',
  'a.ics': 'text/calendar; charset=utf-8',
  'a.webmanifest': 'application/manifest+json; charset=utf-8',
  'a.wasm': 'application/wasm',
  'en.pf_meta': 'application/octet-stream',
  '%C3%A9%20b.txt?v=1': 'text/plain; charset=utf-8',
};
for (const [path, type] of Object.entries(types)) {
  test(`/${path} is ${type}`, async () => {
    const { status, headers } = await ask(root.address + path);
    assert.deepEqual([status, headers['content-type']], [200, type]);
  });
}

test('a folder without its last slash is redirected to it, with its query', async () => {
  const { status, headers } = await ask(`${sub.address}year?find=a?b`);
  assert.deepEqual([status, headers.location], [301, '/club/year/?find=a?b']);
  assert.equal((await ask(`${sub.address}year/`)).body.toString(), 'the year');
});

for (const path of [
  'absent',
  'year/may/',
  'empty/',
  'a.css/',
  '%',
  '%00',
  'x'.repeat(5000),
  '..%2fsecret.txt',
  '..%2fsite',
  '%2e%2e/secret.txt',
  '..%5csecret.txt',
]) {
  test(`/${path.slice(0, 30)} is the site's own 404 page`, async () => {
    const { status, headers, body } = await ask(root.address + path);
    assert.deepEqual([status, headers['content-type'], body.toString()], [404, 'text/html; charset=utf-8', 'not here']);
  });
}

test('dots in the raw request do not lead out of the folder', async () => {
  const { port } = new URL(root.address);
  const reply = await new Promise<string>((resolve, reject) => {
    const socket = connect(Number(port), '127.0.0.1', () =>
      socket.write('GET /../secret.txt HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n'),
    );
    let text = '';
    socket
      .on('data', (part) => (text += part))
      .on('end', () => resolve(text))
      .on('error', reject);
  });
  assert.match(reply, /^HTTP\/1\.1 404 /);
  assert.doesNotMatch(reply, /secret/);
});

test('a link to a target outside the folder is not followed', async (t) => {
  try {
    symlinkSync(join(around, 'secret.txt'), join(folder, 'out.txt'));
  } catch {
    t.skip('this system makes no links');
    return;
  }
  assert.equal((await ask(`${root.address}out.txt`)).status, 404);
});

test('nothing is served outside the base path', async () => {
  const { origin } = new URL(sub.address);
  for (const path of ['/', '/year/', '/clubs', '/clubs/']) assert.equal((await ask(origin + path)).status, 404, path);
  const slashless = await ask(`${origin}/club?x=1`);
  assert.deepEqual([slashless.status, slashless.headers.location], [301, '/club/?x=1'], 'as plain hosts do');
  assert.equal((await ask(sub.address)).headers['x-own'], 'yes');
});

test('HEAD returns the headers alone, and other methods are refused', async () => {
  const head = await ask(root.address, { method: 'HEAD' });
  assert.deepEqual([head.status, head.headers['content-length'], head.body.length], [200, String(page.length), 0]);
  const post = await ask(root.address, { method: 'POST' });
  assert.deepEqual([post.status, post.headers.allow], [405, 'GET, HEAD']);
});

test('text is compressed for a client that accepts it, fonts are not', async () => {
  const headers = { 'accept-encoding': 'gzip, br' };
  const html = await ask(root.address, { headers });
  assert.equal(html.headers['content-encoding'], 'gzip');
  assert.equal(gunzipSync(html.body).toString(), page);
  assert.equal((await ask(root.address)).headers['content-encoding'], undefined);
  assert.equal((await ask(`${root.address}a.woff2`, { headers })).headers['content-encoding'], undefined);
  assert.equal((await ask(sub.address, { headers })).headers['content-encoding'], undefined);
});

test('the next free port is used where the first is taken, and close frees it', async () => {
  const taken = await serve({ folder, port: 0 });
  const port = Number(new URL(taken.address).port);
  const next = await serve({ folder, port });
  assert.ok(Number(new URL(next.address).port) > port);
  assert.equal((await ask(next.address)).status, 200);
  // A client with an incomplete request does not keep the server open.
  const silent = connect(port, '127.0.0.1', () => silent.write('GET / HTTP/1.1\r\n')).on('error', () => {});
  await once(silent, 'connect');
  await Promise.all([taken.close(), next.close()]);
  await assert.rejects(new Promise((resolve, reject) => get(taken.address, resolve).on('error', reject)), { code: 'ECONNREFUSED' });
});
