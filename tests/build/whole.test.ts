// A successful build replaces the whole site, uses no network, and includes its base folder in every address.
import assert from 'node:assert/strict';
import { existsSync, lstatSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { test } from 'vitest';
import { builtFixture } from '../setup/built-site.ts';
import { contentsOf, filesIn, openWorkshop } from './workshop.ts';

const { folder, copy, build } = openWorkshop();

test('the new site replaces the old one, and a deleted page is gone', async () => {
  const club = copy('southern');
  const out = join(folder, 'replaced', 'out');
  const ran = await build(club, out);
  assert.equal(ran.code, 0, ran.output);
  assert.match(ran.output, /^Edition of 2026-03-02 \([0-9a-f]{6}\), ready in .*out after \d+\.\d s\.$/m);
  assert.ok(existsSync(join(out, 'lists', 'autumn-feed', 'index.html')));
  writeFileSync(
    join(club, 'checklists', 'autumn-feed.mdx'),
    readFileSync(join(club, 'checklists', 'autumn-feed.mdx'), 'utf8').replace('yard: false', 'yard: false\ndraft: true'),
  );
  const again = await build(club, out);
  assert.equal(again.code, 0, again.output);
  assert.ok(!existsSync(join(out, 'lists', 'autumn-feed')));
  assert.deepEqual(readdirSync(dirname(out)), ['out']);
});

test('a build uses no network', async () => {
  const watch = join(folder, 'watch.cjs');
  const record = join(folder, 'asked.txt');
  writeFileSync(record, '');
  writeFileSync(
    watch,
    `
    const { appendFileSync } = require('node:fs');
    const note = (what) => appendFileSync(${JSON.stringify(record)}, what + '\\n');
    const net = require('node:net'), dns = require('node:dns'), dgram = require('node:dgram');
    const connect = net.Socket.prototype.connect;
    net.Socket.prototype.connect = function (...given) {
      const [where] = [given].flat(2);
      if (!(where && typeof where === 'object' && where.path)) note('connect ' + JSON.stringify(where));
      return connect.apply(this, given);
    };
    for (const name of ['lookup', 'resolve', 'resolve4', 'resolve6']) { const own = dns[name]; dns[name] = (host, ...rest) => { note(name + ' ' + host); return own(host, ...rest); }; }
    const send = dgram.Socket.prototype.send;
    dgram.Socket.prototype.send = function (...given) { note('send'); return send.apply(this, given); };
    process.on('exit', () => note('watched ' + process.argv[1]));
  `,
  );
  const ran = await build(copy('southern'), join(folder, 'quiet', 'out'), [], {
    NODE_OPTIONS: `--require "${watch.replaceAll('\\', '/')}"`,
  });
  assert.equal(ran.code, 0, ran.output);
  const lines = readFileSync(record, 'utf8').trim().split('\n');
  assert.ok(
    lines.some((line) => /^watched .*build\.ts$/.test(line)),
    'the build was watched',
  );
  assert.deepEqual(
    lines.filter((line) => !line.startsWith('watched ')),
    [],
  );
});

test('under /club/ every address in every file begins there', async () => {
  const { folder: site, base } = await builtFixture('sub-folder');
  assert.equal(base, '/club/');
  const found: string[] = [];
  let seen = 0;
  for (const [path, text] of contentsOf(site)) {
    if (!/\.(html|css|webmanifest)$/.test(path)) continue;
    for (const [, address] of text.matchAll(/(?:\s(?:href|src|action)="|url\(["']?)(\/[^"')]*)/g)) {
      seen += 1;
      if (!address!.startsWith('/club/') || address!.includes('//')) found.push(`${path}: ${address}`);
    }
  }
  assert.ok(seen > 200, `${seen} addresses`);
  assert.deepEqual(found, []);
});

test('names with & and < are escaped in every file for programs', async () => {
  const { folder: site } = await builtFixture('sub-folder', { base: '/club/', site: 'https://club.example' });
  const files = contentsOf(site);
  for (const [path, text] of files) {
    if (!path.endsWith('.html')) continue;
    assert.ok(text.includes('Bees &amp; Blossom &lt; Ridge'), path);
    assert.doesNotMatch(text.replace(/<script[\s\S]*?<\/script>/g, ''), /&(?![a-z]+;|#x?[0-9a-f]+;)|>[^<>"]*<(?![a-z/!])/i, path);
  }
  for (const [path, text] of files)
    if (/\.(json|webmanifest)$/.test(path)) assert.doesNotThrow(() => JSON.parse(Buffer.from(text, 'latin1').toString('utf8')), path);
  for (const [path, text] of files) if (path.endsWith('.xml')) assert.doesNotMatch(text, /&(?![a-z]+;|#x?[0-9a-f]+;)/i, path);
});

test('the output contains no name that some host refuses', async () => {
  const { folder: site } = await builtFixture('hostile');
  const names = filesIn(site);
  assert.ok(names.includes('404.html') && names.includes('index.html'));
  // Only the two files for hosts begin like this.
  const odd = names.filter(
    (name) => !/^(_headers|_redirects|\.htaccess)$/.test(name) && name.split('/').some((part) => /^[._]|[^\w.-]/.test(part)),
  );
  assert.deepEqual(odd, []);
  assert.equal(new Set(names.map((name) => name.toLowerCase())).size, names.length);
});

test('an empty output folder is accepted, and a link to it stays a link to the site', { tags: ['slow'] }, async (t) => {
  const out = join(folder, 'taken');
  mkdirSync(out);
  const link = join(folder, 'link');
  try {
    symlinkSync(out, link, 'dir');
  } catch {
    void t.annotate('this system makes no links');
  }
  const ran = await build(copy('southern'), existsSync(link) ? link : out);
  assert.equal(ran.code, 0, ran.output);
  assert.ok(lstatSync(out).isDirectory() && existsSync(join(out, 'edition.json')));
  if (existsSync(link)) assert.ok(lstatSync(link).isSymbolicLink());
  assert.deepEqual(
    readdirSync(folder).filter((name) => /^(taken|link)./.test(name)),
    [],
  );
});
