// The offline copy: all files of an edition or none, from one edition only, and an update that disturbs no open page.
import assert from 'node:assert/strict';
import { afterEach, test, vi } from 'vitest';
import { aDay } from '../../days.ts';
import { Device, editionOf, Host, Page, serving, start } from './worker-scope.ts';

const first = { '': 'home 1', 'year/': 'year 1', '404.html': 'no such page', 'assets/a.1.js': 'script 1', 'search/index.json': 'index 1' };
const second = { ...first, '': 'home 2', 'year/': 'year 2', 'assets/a.2.js': 'script 2', 'assets/a.1.js': undefined! };
delete (second as Record<string, unknown>)['assets/a.1.js'];
const later = { day: aDay('2026-05-09'), dayInWords: '9 May 2026', print: 'second' };

afterEach(() => {
  vi.unstubAllGlobals();
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
});

test('every listed file is saved, and the open pages are told so', async () => {
  const device = new Device();
  device.pages = [new Page('year/'), new Page('../other-club/')];
  const worker = await serving(editionOf(first), new Host(first), device);
  assert.deepEqual(device.holds('copy'), Object.keys(first).sort());
  assert.ok(worker.claimed && worker.skipped === 1, 'the first edition serves at once');
  assert.equal(device.pages[0]!.says, 'Available offline: all 2 pages, search and calendars, 1.4 MB, edition of 18 April 2026.');
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

test('an update waits while a page is open, and takes over when the reader asks for it', async () => {
  const device = new Device();
  const [reader, other] = [new Page('year/', 'reader'), new Page('', 'other')];
  device.pages = [reader, other];
  await serving(editionOf(first), new Host(first), device);
  const host = new Host(second);
  const update = await start(editionOf(second, later), host, device, { replaces: true });
  await update.install();
  assert.equal(update.skipped, 0, 'it waits');
  assert.ok(!host.asked.includes('404.html'), 'what did not change is not fetched again');
  await update.ask(reader, '2026-04-18');
  assert.deepEqual(reader.told.at(-1), {
    says: 'A new edition, of 9 May 2026, is saved on this device.',
    first: true,
    press: 'Show it',
  });
  await update.ask(reader, 'new edition');
  assert.equal(update.skipped, 1);
  await update.activate();
  assert.equal(reader.told.at(-1)?.again, true, 'only the page that asked is loaded again');
  assert.ok(other.told.every(({ again }) => !again));
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

test('a page of the new edition alone is not asked: the edition takes over by itself', async () => {
  const device = new Device();
  const page = new Page('', 'reader');
  device.pages = [page];
  const update = await start(editionOf(second, later), new Host(second), device, { replaces: true });
  await update.install();
  await update.ask(page, later.day);
  assert.equal(update.skipped, 1);
  assert.match(page.says!, /^Available offline: .* edition of 9 May 2026\.$/);
});

test('a photograph that does not come is counted, one that went is let go, and the rest of the copy is whole', async () => {
  const device = new Device();
  device.pages = [new Page()];
  const host = new Host({ ...first, 'pictures/hive.webp': 'hive', 'pictures/old.webp': 'old' });
  await serving(editionOf(first, { pictures: ['pictures/old.webp'] }), host, device);
  assert.deepEqual(device.holds('pictures'), ['pictures/old.webp']);
  await serving(editionOf(first, { pictures: ['pictures/hive.webp', 'pictures/lost.webp'] }), host, device);
  assert.deepEqual(device.holds('pictures'), ['pictures/hive.webp']);
  assert.match(device.pages[0]!.says!, /1 of 2 pictures are not saved; their words are\.$/);
});
