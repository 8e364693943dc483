/*
 * Editions, one after another, on one reader's device: no tick, no page and no byte is lost, and nothing piles up. Every seventh update is
 * cut off. And a reader in haste, who opens page after page while editions change: each page comes.
 */
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setLanguageHere } from '../../shared/country/language-here.ts';
import { writeOfflineCopy } from '../../src/integration/offline-copy.ts';
import { editionId, editionName, type Edition } from '../../src/lib/edition-name.ts';
import type { OfflineCopy } from '../../src/service-worker/cache.ts';
import { openHost, type Host } from '../e2e/kept.ts';
import { builtFixture, type Built } from '../setup/built-site.ts';
import type { Journey } from './journeys.ts';
import { saying, until, type Reader } from './reader.ts';

/** How often an edition brings a page and a script of its own, an update is cut off, and the signal is lost after an update. */
const NEW_FILES = 3;
const CUT_OFF = 7;
const NO_SIGNAL = 10;

const LIST = 'lists/first-look/';
const EXTRA = 'lists/first-look-again/';

export const editionJourneys: readonly Journey[] = [
  {
    name: 'thirty editions, some cut off: no tick, no page, no byte is lost',
    take: (reader) => withEditions((...given) => inTurn(reader, 30, ...given)),
  },
  {
    name: 'a reader in haste, while twenty editions change: each page comes',
    take: (reader) => withEditions((...given) => inHaste(reader, 20, ...given)),
  },
];

type Publish = (n: number) => Promise<Published>;

/** A host with the first edition of a small club, and a way to make the next ones. */
export async function withEditions<Value>(read: (host: Host, publish: Publish) => Promise<Value>): Promise<Value> {
  const work = mkdtempSync(join(tmpdir(), 'editions-'));
  const built = await builtFixture('southern');
  setLanguageHere('en-NZ');
  const host = await openHost();
  try {
    await host.put('/', built.folder);
    return await read(host, (n) => editionOf(built, work, n));
  } finally {
    await host.close();
    rmSync(work, { recursive: true, force: true });
  }
}

/** Returns what was counted. */
export async function inTurn(reader: Reader, editions: number, host: Host, publish: Publish): Promise<string> {
  const go = (path: string): Promise<void> => reader.go(`${host.origin}/${path}`);
  await go(LIST);
  await saying(reader, '[data-offline]', /^Available offline/);
  const begun = await stored(reader);
  const ticks = new Set<number>();
  let cutOff = 0;
  for (let n = 1; n <= editions; n += 1) {
    const edition = await publish(n);
    await host.put('/', edition.folder);
    if (n % CUT_OFF === 0) cutOff += await cutOffAfter(reader, host, 2 + (n % 37));
    await go(LIST);
    assert.equal(await temperature(reader), String(n), `edition ${n}: the very next view`);
    await changeTick(reader, ticks, n);
    await tookOver(reader, host, edition.name);
    if (n % NO_SIGNAL !== 0) continue;
    host.stop();
    for (const path of ['words/', 'search/', LIST]) {
      await go(path);
      assert.equal(await pageText(reader), edition.read(`${path}index.html`), `edition ${n} without signal: ${path}`);
    }
    const expected = [...ticks].sort((a, b) => a - b);
    assert.deepEqual(await ticked(reader), expected, `ticks after edition ${n}`);
    const now = await stored(reader);
    assert.deepEqual(now.copy, edition.files, `edition ${n}: every file, byte by byte`);
    assert.ok(now.former <= 200, `edition ${n}: ${now.former} scripts of former editions`);
    assert.deepEqual(now.other, begun.other, `edition ${n}: stores beside the copy and the former scripts`);
    host.start();
  }
  assert.ok(cutOff >= editions / CUT_OFF / 2, `only ${cutOff} updates were cut off`);
  const ended = await stored(reader);
  assert.ok(ended.bytes < begun.bytes * 1.5, `the device holds ${ended.bytes} bytes after ${begun.bytes}`);
  const [before, after] = [begun.bytes, ended.bytes].map((bytes) => (bytes / 1e6).toFixed(1));
  return `${editions} editions, ${cutOff} cut off; ${before} MB stored at first, ${after} MB at the end`;
}

/** In milliseconds: the longest rest between two views, and the longest wait for a page. */
const REST = 1200;
const WAIT = 10_000;

/** Opens seven pages in each edition, after rests of many lengths. Returns what was counted. */
async function inHaste(reader: Reader, editions: number, host: Host, publish: Publish): Promise<string> {
  const paths = ['about/', LIST, 'words/', 'search/'];
  await reader.go(`${host.origin}/${LIST}`);
  await saying(reader, '[data-offline]', /^Available offline/);
  let views = 0;
  for (let n = 1; n <= editions; n += 1) {
    await host.put('/', (await publish(n)).folder);
    for (let view = 0; view < 7; view += 1, views += 1) {
      const path = paths[(n + view) % paths.length]!;
      let limit: NodeJS.Timeout;
      const tooLate = new Promise<never>((_, reject) => {
        limit = setTimeout(() => reject(new Error(`edition ${n}, view ${view}: ${path} did not come`)), WAIT);
      });
      await Promise.race([reader.go(`${host.origin}/${path}`), tooLate]);
      clearTimeout(limit!);
      // The golden ratio spreads the rests evenly over the whole time.
      await new Promise((resolve) => setTimeout(resolve, ((views * 0.618034) % 1) * REST));
    }
  }
  return `${views} pages`;
}

interface Published {
  folder: string;
  name: string;
  read: (path: string) => string;
  /** The list of its offline copy: a path, and the SHA-256 of its file in base64. */
  files: Record<string, string>;
}

/**
 * The files of edition `n`: another mark on every page, another temperature, and at times a page and a script that the next edition does
 * not have. The list of the offline copy is written as the build writes it.
 */
async function editionOf(built: Built, work: string, n: number): Promise<Published> {
  const { day, print, edition: id, name } = copyOf(built.read('worker.js'));
  const site = join(work, n % 2 === 0 ? 'even' : 'odd');
  rmSync(site, { recursive: true, force: true });
  cpSync(built.folder, site, { recursive: true });
  const next: Edition = { day, fingerprint: hash(`edition ${n}`).slice(0, print.length) };
  if (n % NEW_FILES === 0) {
    cpSync(join(site, LIST), join(site, EXTRA), { recursive: true });
    const script = `console.log("edition ${n}");\n`.repeat(200);
    writeFileSync(join(site, 'assets', `edition.${hash(script).slice(0, 8)}.js`), script);
  }
  for (const file of readdirSync(site, { recursive: true, encoding: 'utf8' }).filter((each) => each.endsWith('.html'))) {
    const text = readFileSync(join(site, file), 'utf8');
    const changed = text
      .replaceAll(print, next.fingerprint)
      .replaceAll(id, editionId(next))
      .replaceAll(name, editionName(next))
      .replace(/>15(\s°C)/gu, `>${n}$1`);
    assert.notEqual(changed, text, `${file} names its edition`);
    writeFileSync(join(site, file), changed);
  }
  await writeOfflineCopy({ site, base: '/', zone: 'Pacific/Auckland', edition: next });
  const read = (path: string): string => readFileSync(join(site, path), 'utf8');
  return { folder: site, read, files: Object.fromEntries(copyOf(read('worker.js')).files), name: editionName(next) };
}

const copyOf = (worker: string): OfflineCopy => JSON.parse(/^const offlineCopy=(.*);$/m.exec(worker)![1]!) as OfflineCopy;
const hash = (text: string): string => createHash('sha256').update(text).digest('hex');

const temperature = (reader: Reader): Promise<string> =>
  reader.run(() => /(\d+)\s°C/.exec(document.querySelector('.step-words')!.textContent!)![1]!);
const pageText = (reader: Reader): Promise<string> => reader.run(async () => (await fetch(location.href)).text());
const ticked = (reader: Reader): Promise<number[]> =>
  reader.run(() =>
    [...document.querySelectorAll<HTMLInputElement>('input[data-tick]')].flatMap(({ checked }, at) => (checked ? [at] : [])),
  );

/** Loses the signal while an update is fetched. Returns 1 if the edition was cut off. */
async function cutOffAfter(reader: Reader, host: Host, requests: number): Promise<number> {
  const cut = host.stopAfter(requests).then(() => 1);
  await reader.go(`${host.origin}/about/`);
  const lost = await Promise.race([cut, updated(reader).then(() => 0)]);
  host.stop();
  await updated(reader);
  await reader.go(`${host.origin}/${LIST}`);
  await until(reader, 'the checklist has steps', () => document.querySelector('input[data-tick]') !== null);
  host.start();
  return lost;
}

/** Waits until the browser has asked for a new edition, and it has taken over or was given up. */
const updated = (reader: Reader): Promise<void> =>
  reader.run(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration?.update().catch(() => undefined);
    while (registration?.installing || registration?.waiting || registration?.active?.state === 'activating')
      await new Promise((resolve) => setTimeout(resolve, 20));
  });

/** Ticks another step, or takes a tick back. The page may have folded it away. */
async function changeTick(reader: Reader, ticks: Set<number>, n: number): Promise<void> {
  const at = await reader.run((n) => {
    const boxes = document.querySelectorAll<HTMLInputElement>('input[data-tick]');
    boxes[n % boxes.length]!.click();
    return n % boxes.length;
  }, n);
  if (!ticks.delete(at)) ticks.add(at);
}

/** Views follow one another until a page says that the edition is stored. */
async function tookOver(reader: Reader, host: Host, name: string): Promise<void> {
  const words = `edition of ${name}`.replaceAll('\u00a0', ' ');
  for (let view = 0; view < 10; view += 1) {
    await updated(reader);
    await reader.go(`${host.origin}/about/`);
    const stands = await reader.run(async (words) => {
      for (const end = performance.now() + 3000; performance.now() < end; await new Promise((resolve) => setTimeout(resolve, 30)))
        if (document.querySelector('[data-offline]')?.textContent?.replaceAll('\u00a0', ' ').includes(words)) return true;
      return false;
    }, words);
    if (stands) return;
  }
  assert.fail(`${name} did not take over`);
}

interface Stored {
  /** Files of the copy: a path, and the SHA-256 of what is stored. */
  copy: Record<string, string>;
  /** How many scripts of former editions. */
  former: number;
  /** Names of the other stores that hold something. */
  other: string[];
  bytes: number;
}

/** What the browser holds. */
const stored = (reader: Reader): Promise<Stored> =>
  reader.run(async () => {
    const held: Stored = { copy: {}, former: 0, other: [], bytes: 0 };
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      const requests = await cache.keys();
      for (const request of requests) {
        const bytes = await (await cache.match(request))!.arrayBuffer();
        held.bytes += bytes.byteLength;
        if (!name.endsWith(' copy')) continue;
        const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
        held.copy[new URL(request.url).pathname.slice(1)] = btoa(String.fromCharCode(...digest));
      }
      if (name.endsWith(' former')) held.former = requests.length;
      else if (requests.length > 0 && !name.endsWith(' copy')) held.other.push(name);
    }
    return held;
  });
