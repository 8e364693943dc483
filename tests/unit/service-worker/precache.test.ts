// The offline copy: all files of an edition or none, from one edition only, and an update that disturbs no open page.
import assert from 'node:assert/strict';
import { afterEach, test, vi } from 'vitest';
import { aDay } from '../../days.ts';
import { Device, editionOf, Host, Page, serving, start } from './worker-scope.ts';

const first = { '': 'home 1', 'year/': 'year 1', '404.html': 'no such page', 'assets/a.1.js': 'script 1', 'search/index.json': 'index 1' };
const second = { ...first, '': 'home 2', 'year/': 'year 2', 'assets/a.2.js': 'script 2', 'assets/a.1.js': undefined! };
delete (second as Record<string, unknown>)['assets/a.1.js'];
const later = { day: aDay('2026-05-09'), edition: '2026-05-09 e2e2e2', name: '9 May 2026 (e2e2e2)', print: 'second' };

afterEach(() => {
  vi.unstubAllGlobals();
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
});

test('every listed file is saved, and an open page is told so', async () => {
  const device = new Device();
  device.pages = [new Page('year/'), new Page('../other-club/')];
  const worker = await serving(editionOf(first), new Host(first), device);
  await worker.ask(device.pages[0]!, { edition: '2026-04-18 f1f1f1', tookOver: true });
  assert.deepEqual(device.holds('copy'), Object.keys(first).sort());
  assert.ok(worker.claimed, 'the first edition serves at once');
  assert.equal(device.pages[0]!.says, 'Available offline: all 2 pages, search and calendars, 1.4 MB, edition of 18 April 2026 (f1f1f1).');
  assert.equal(device.pages[1]!.says, undefined, 'a page of another almanac is told nothing');
});

test('a long fetch says how far it is; an update is fetched quietly', async () => {
  const many = Object.fromEntries(Array.from({ length: 45 }, (_, number) => [`words/${number}/`, `word ${number}`]));
  for (const replaces of [false, true]) {
    const device = new Device();
    device.pages = [new Page()];
    await (await start(editionOf(many), new Host(many), device, { replaces })).install();
    const progress = device.pages[0]!.told.map(({ says }) => /(\d+) of (\d+) files/.exec(says)?.[0]);
    assert.deepEqual(progress, replaces ? [] : ['20 of 45 files', '40 of 45 files']);
  }
});

test('a long fetch that fails says so last, and no progress after it', async () => {
  const many = Object.fromEntries(Array.from({ length: 45 }, (_, number) => [`words/${number}/`, `word ${number}`]));
  const device = new Device();
  device.pages = [new Page()];
  // One file is missing, and others are still on their way when it fails.
  const worker = await start(editionOf(many), new Host({ ...many, 'words/17/': undefined! }), device);
  await assert.rejects(worker.install());
  await new Promise((resolve) => setTimeout(resolve, 20));
  assert.match(device.pages[0]!.says!, /^The offline copy is not complete\./);
});

for (const [how, host] of [
  ['does not come', new Host({ ...first, 'year/': undefined! })],
  ['comes from another edition', new Host({ ...first, 'year/': 'year 2' })],
] as const) {
  test(`one file that ${how}: the edition is not taken, and the page says that the next visit goes on from here`, async () => {
    const device = new Device();
    device.pages = [new Page()];
    const worker = await start(editionOf(first), host, device);
    await assert.rejects(worker.install());
    assert.match(device.pages[0]!.says!, /^The offline copy is not complete\. .* The next visit goes on from here\.$/);
    assert.ok(!device.holds('copy').includes('year/'), 'what is not as listed is not kept');
    // The next visit, with the host put right, fetches only what is missing.
    const mended = new Host(first);
    await serving(editionOf(first), mended, device);
    assert.ok(mended.asked.includes('year/') && mended.asked.length < Object.keys(first).length, mended.asked.join());
    assert.deepEqual(device.holds('copy'), Object.keys(first).sort());
  });
}

test('a complete update takes over when a page asks for it; no page is loaded again, and a page of another edition is told so', async () => {
  const device = new Device();
  const [reader, newer] = [new Page('year/', 'reader'), new Page('', 'newer')];
  await serving(editionOf(first), new Host(first), device);
  const host = new Host(second);
  const update = await start(editionOf(second, later), host, device, { replaces: true });
  await update.install();
  assert.equal(update.skipped, 0, 'it waits for a quiet moment of a page');
  await update.ask(reader, 'new edition');
  assert.equal(update.skipped, 1, 'it does not wait until pages close');
  assert.ok(!host.asked.includes('404.html'), 'what did not change is not fetched again');
  await update.activate();
  await update.ask(reader, { edition: '2026-04-18 f1f1f1', tookOver: true });
  assert.deepEqual(reader.told, [
    {
      says: 'A new edition, of 9 May 2026 (e2e2e2), is saved on this device. This page is of another one.',
      first: true,
      press: 'Show it',
    },
  ]);
  await update.ask(newer, { edition: later.edition, tookOver: true });
  assert.match(newer.says!, /^Available offline: .* edition of 9 May 2026 \(e2e2e2\)\.$/);
  host.state = 'none';
  assert.equal(await update.open('year/'), 'year 2');
});

test('after an update the scripts of the edition before serve the pages that are still open, and nothing else of it is left', async () => {
  const device = new Device();
  device.pages = [new Page('year/')];
  await serving(editionOf(first), new Host(first), device);
  const host = new Host(second);
  const update = await start(editionOf(second, later), host, device, { replaces: true });
  await update.install();
  await update.activate();
  assert.deepEqual(device.holds('copy'), Object.keys(second).sort());
  assert.deepEqual(device.holds('former'), ['assets/a.1.js']);
  assert.equal(await (await update.answer('assets/a.1.js'))!.text(), 'script 1');
});

test('an edition that was complete when the browser closed takes over when a page asks for it', async () => {
  const update = await start(editionOf(second, later), new Host(second), new Device(), { replaces: true });
  await update.ask(new Page(), 'new edition');
  assert.equal(update.skipped, 1);
});

test('a photograph that does not come is counted, one that went is let go, and the rest of the copy is whole', async () => {
  const device = new Device();
  const page = new Page();
  const host = new Host({ ...first, 'pictures/hive.webp': 'hive', 'pictures/old.webp': 'old' });
  await (await serving(editionOf(first, { pictures: ['pictures/old.webp'] }), host, device)).ask(page, { edition: '' });
  assert.deepEqual(device.holds('pictures'), ['pictures/old.webp']);
  const next = await serving(editionOf(first, { pictures: ['pictures/hive.webp', 'pictures/lost.webp'] }), host, device);
  assert.deepEqual(device.holds('pictures'), [], 'pictures are fetched when a page asks, so that no page waits for them');
  await Promise.all([next.ask(page, { edition: '' }), next.ask(new Page(), { edition: '' })]);
  assert.deepEqual(device.holds('pictures'), ['pictures/hive.webp']);
  assert.equal(host.asked.filter((path) => path === 'pictures/hive.webp').length, 1);
  assert.match(page.says!, /1 of 2 pictures are not saved; their words are\.$/);
});
