// Two hundred editions, one after another, on one reader's device: no tick, no page and no byte is lost, and nothing piles up.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { setLanguageHere } from '../../shared/country/language-here.ts';
import { writeOfflineCopy } from '../../src/integration/offline-copy.ts';
import { editionId, editionName, type Edition } from '../../src/lib/edition-name.ts';
import type { OfflineCopy } from '../../src/service-worker/cache.ts';
import { builtFixture, type Built } from '../setup/built-site.ts';
import { note, test } from './fixtures.ts';
import { openHost, openReader, settled, type Host } from './kept.ts';

test.use({ offlineCopy: true });

const EDITIONS = 200;
/** How often an edition brings a page and a script of its own, an update is cut off, and the signal is lost after an update. */
const NEW_FILES = 3;
const CUT_OFF = 7;
const NO_SIGNAL = 10;

const LIST = 'lists/first-look/';
const EXTRA = 'lists/first-look-again/';
const work = mkdtempSync(join(tmpdir(), 'soak-'));
test.afterAll(() => rmSync(work, { recursive: true, force: true }));

test('two hundred editions, some cut off, lose no tick, page or byte of a reader', { tag: '@slow' }, async ({ browser }) => {
  test.setTimeout(900_000);
  const built = await builtFixture('southern');
  const first = firstEdition(built);
  setLanguageHere('en-NZ');
  const host = await openHost();
  await host.put('/', built.folder);
  const { page, context, told } = await openReader(browser, `${host.origin}/${LIST}`);
  const ticks = new Set<number>();
  try {
    await told(/^Available offline/);
    const begun = await stored(page);
    let cutOff = 0;
    for (let n = 1; n <= EDITIONS; n += 1) {
      const edition = await editionOf(built, first, n);
      await host.put('/', edition.folder);
      if (n % CUT_OFF === 0) cutOff += await cutOffAfter(host, page, 2 + (n % 37));
      await page.goto(`${host.origin}/${LIST}`);
      assert.equal(await temperature(page), String(n), `edition ${n}: the very next view`);
      await changeTick(page, ticks, n);
      await tookOver(page, host, edition.name);
      if (n % NO_SIGNAL !== 0) continue;
      host.stop();
      for (const path of ['words/', 'search/', LIST]) {
        const answer = await page.goto(`${host.origin}/${path}`);
        assert.equal(await answer!.text(), edition.read(`${path}index.html`), `edition ${n} without signal: ${path}`);
        await settled(page);
      }
      assert.deepEqual(
        await ticked(page),
        [...ticks].sort((a, b) => a - b),
        `ticks after edition ${n}`,
      );
      const now = await stored(page);
      assert.deepEqual(now.copy, edition.files, `edition ${n}: every file, byte by byte`);
      assert.ok(now.former <= 200, `edition ${n}: ${now.former} scripts of former editions`);
      assert.deepEqual(now.other, begun.other, `edition ${n}: stores beside the copy and the former scripts`);
      host.start();
    }
    assert.ok(cutOff >= EDITIONS / CUT_OFF / 2, `only ${cutOff} updates were cut off`);
    const ended = await stored(page);
    assert.ok(ended.bytes < begun.bytes * 1.5, `the device holds ${ended.bytes} bytes after ${begun.bytes}`);
    note(`${EDITIONS} editions, ${cutOff} cut off, ${ticks.size} ticks; ${begun.bytes} bytes at first, ${ended.bytes} at the end`);
  } finally {
    await context.close();
    await host.close();
  }
});

type First = { edition: Edition; id: string; name: string };

/** The edition that a build has, from the list of its offline copy. */
function firstEdition({ read }: Built): First {
  const { day, print, edition, name } = copyOf(read('worker.js'));
  return { edition: { day, fingerprint: print }, id: edition, name };
}

const copyOf = (worker: string): OfflineCopy => JSON.parse(/^const offlineCopy=(.*);$/m.exec(worker)![1]!) as OfflineCopy;

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
async function editionOf(built: Built, first: First, n: number): Promise<Published> {
  const site = join(work, n % 2 === 0 ? 'even' : 'odd');
  rmSync(site, { recursive: true, force: true });
  cpSync(built.folder, site, { recursive: true });
  const next: Edition = { day: first.edition.day, fingerprint: hash(`edition ${n}`).slice(0, first.edition.fingerprint.length) };
  if (n % NEW_FILES === 0) {
    cpSync(join(site, LIST), join(site, EXTRA), { recursive: true });
    const script = `console.log("edition ${n}");\n`.repeat(200);
    writeFileSync(join(site, 'assets', `soak.${hash(script).slice(0, 8)}.js`), script);
  }
  for (const file of readdirSync(site, { recursive: true, encoding: 'utf8' }).filter((each) => each.endsWith('.html'))) {
    const text = readFileSync(join(site, file), 'utf8');
    const changed = text
      .replaceAll(first.edition.fingerprint, next.fingerprint)
      .replaceAll(first.id, editionId(next))
      .replaceAll(first.name, editionName(next))
      .replace(/>15(\s°C)/gu, `>${n}$1`);
    assert.notEqual(changed, text, `${file} names its edition`);
    writeFileSync(join(site, file), changed);
  }
  await writeOfflineCopy({ site, base: '/', zone: 'Pacific/Auckland', edition: next });
  const read = (path: string): string => readFileSync(join(site, path), 'utf8');
  const { files } = copyOf(read('worker.js'));
  return { folder: site, read, files: Object.fromEntries(files), name: editionName(next) };
}

const hash = (text: string): string => createHash('sha256').update(text).digest('hex');

const temperature = async (page: Page): Promise<string> =>
  /(\d+)\s°C/.exec((await page.locator('.step-words').first().textContent()) ?? '')![1]!;

/** Loses the signal while an update is fetched. Answers 1 if the edition was cut off. */
async function cutOffAfter(host: Host, page: Page, requests: number): Promise<number> {
  const cut = host.stopAfter(requests).then(() => 1);
  await page.goto(`${host.origin}/about/`).catch(() => undefined);
  const lost = await Promise.race([cut, settled(page).then(() => 0)]);
  host.stop();
  await settled(page);
  await page.goto(`${host.origin}/${LIST}`);
  await page.locator('input[data-tick]').first().waitFor({ state: 'attached' });
  host.start();
  return lost;
}

/** Ticks another step, or takes a tick back. The page may have folded it away. */
async function changeTick(page: Page, ticks: Set<number>, n: number): Promise<void> {
  const boxes = page.locator('input[data-tick]');
  const at = n % (await boxes.count());
  await boxes.nth(at).evaluate((box: HTMLInputElement) => box.click());
  if (!ticks.delete(at)) ticks.add(at);
}

const ticked = (page: Page): Promise<number[]> =>
  page
    .locator('input[data-tick]')
    .evaluateAll((boxes) => boxes.flatMap((box, at) => ((box as HTMLInputElement).checked ? [at] : [])))
    .then((found) => found.sort((a, b) => a - b));

/** Views follow one another until the page says that the edition is stored. */
async function tookOver(page: Page, host: Host, name: string): Promise<void> {
  const said = page.locator('[data-offline]').filter({ hasText: `edition of ${name}`.replaceAll('\u00a0', ' ') });
  for (let view = 0; view < 10; view += 1) {
    await settled(page);
    await page.goto(`${host.origin}/about/`);
    const stands = await said.waitFor({ state: 'attached', timeout: 3000 }).then(
      () => true,
      () => false,
    );
    // The next view must not come while this one asks for a new edition: see `settled`.
    if (stands) return settled(page);
  }
  assert.fail(`${name} did not take over: ${await page.locator('[data-offline]').innerText()}`);
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
const stored = (page: Page): Promise<Stored> =>
  page.evaluate(async () => {
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
