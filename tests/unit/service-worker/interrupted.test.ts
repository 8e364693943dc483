/*
 * An update that ends at any moment: the browser dies at each operation of its caches in turn, the host stops at each file, or the device
 * is full. Without signal the reader has one whole edition, with each page that was seen newer; the next visit completes the update.
 */
import assert from 'node:assert/strict';
import { afterEach, test, vi } from 'vitest';
import { aDay } from '../../days.ts';
import { Device, editionOf, Host, serving, start, type Worker } from './worker-scope.ts';

const page = (edition: number, words: string): string => `<html data-edition="${edition}">${words} ${edition}`;
const ONE = {
  '': page(1, 'home'),
  'dose/': page(1, 'dose'),
  'gone/': page(1, 'gone'),
  'year/': page(1, 'year'),
  '404.html': 'none',
  'assets/a.1.js': 'a 1',
  'assets/both.js': 'both',
};
const TWO = { '': page(2, 'home'), 'dose/': page(2, 'dose'), 'new/': page(2, 'new'), 'year/': page(2, 'year'), '404.html': 'none', 'assets/a.2.js': 'a 2', 'assets/both.js': 'both' }; // prettier-ignore
const [one, two] = [
  editionOf(ONE, { edition: '1' }),
  editionOf(TWO, { edition: '2', day: aDay('2026-04-18'), print: 'second', name: '18 April 2026 (e2e2e2)' }),
];

afterEach(() => {
  vi.unstubAllGlobals();
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
});

/** What the reader gets without signal, page by page. */
async function without(worker: Worker, host: Host, paths: readonly string[]): Promise<string[]> {
  host.state = 'none';
  const shown: string[] = [];
  for (const path of paths) shown.push(await worker.open(path));
  host.state = 'well';
  return shown;
}
const allOf = (files: Record<string, string>): string[] => Object.keys(files).filter((path) => path === '' || path.endsWith('/'));

/** The second edition comes to a device with the first, which dies after some operations. Returns the worker that then serves. */
async function updated(device: Device, host: Host, left: number): Promise<{ worker: Worker; by: 1 | 2; died: boolean }> {
  const update = await start(two, host, device, { replaces: true });
  [device.left, device.done] = [left, 0];
  let by: 1 | 2 = 1;
  const whole = update.install().then(() => {
    by = 2;
    return update.activate();
  });
  const died = await Promise.race([whole.then(() => false), device.died.then(() => true)]);
  const took = device.done;
  device.revive();
  device.done = took;
  return { worker: await start(by === 1 ? one : two, host, device, { replaces: true }), by, died };
}

/** The first edition is saved. With signal, its reader has then opened two addresses of the second one. */
async function reading(): Promise<{ device: Device; host: Host }> {
  const [device, host] = [new Device(), new Host({ ...ONE })];
  const worker = await serving(one, host, device);
  host.files = { ...TWO, 'gone/': undefined! };
  host.missing = page(2, 'no such page');
  for (const [path, words] of [
    ['dose/', page(2, 'dose')],
    ['gone/', '404 none'],
  ] as const) {
    assert.equal(await worker.open(path), words);
    await Promise.all(worker.rest);
  }
  return { device, host };
}

test('whenever the browser dies: one whole edition, the newer page that was seen, and never a page that was seen to be gone', async () => {
  const { device: counted, host } = await reading();
  await updated(counted, host, Infinity);
  const most = counted.done;
  const editions = new Set<number>();
  for (let left = 0; left <= most; left += 1) {
    const { device, host } = await reading();
    const { worker, by, died } = await updated(device, host, left);
    assert.equal(died, left < most, `after ${left} of ${most}`);
    editions.add(by);
    const files = by === 1 ? { ...ONE, 'dose/': TWO['dose/'], 'gone/': `404 ${page(2, 'no such page')}` } : TWO;
    assert.deepEqual(
      await without(worker, host, allOf(files)),
      allOf(files).map((path) => files[path as keyof typeof files]),
      `after ${left}`,
    );
    for (const script of by === 1 ? ['a.1.js', 'both.js'] : ['a.2.js', 'both.js']) {
      host.state = 'none';
      assert.ok(await worker.answer(`assets/${script}`), `${script} after ${left}`);
      host.state = 'well';
    }
    if (by === 2) assert.match((await without(worker, host, ['gone/']))[0]!, /^404/);
    // The next visit completes what was begun.
    const next = by === 1 ? await serving(two, host, device) : worker;
    assert.deepEqual(await without(next, host, [...allOf(TWO), 'gone/']), [...allOf(TWO).map((path) => TWO[path as keyof typeof TWO]), '404 none']); // prettier-ignore
  }
  assert.deepEqual([...editions], [1, 2], 'it died before and after the second edition took over');
});

test('wherever the host stops: the first edition stays whole, and the next visit fetches what is missing', async () => {
  const changed = Object.keys(TWO).filter((path) => TWO[path as keyof typeof TWO] !== ONE[path as keyof typeof ONE]).length;
  for (let answers = 0; answers < changed; answers += 1) {
    const [device, host] = [new Device(), new Host({ ...ONE })];
    await serving(one, host, device);
    host.files = TWO;
    host.stopsAfter = answers;
    const update = await start(two, host, device, { replaces: true });
    await assert.rejects(update.install(), `after ${answers}`);
    host.stopsAfter = Infinity;
    const old = await start(one, host, device, { replaces: true });
    assert.deepEqual(await without(old, host, allOf(ONE)), allOf(ONE).map((path) => ONE[path as keyof typeof ONE])); // prettier-ignore
    host.asked = [];
    const next = await serving(two, host, device);
    assert.equal(host.asked.length, changed - answers, 'no file is fetched twice');
    assert.deepEqual(device.holds('copy'), Object.keys(TWO).sort());
    assert.deepEqual(await without(next, host, allOf(TWO)), allOf(TWO).map((path) => TWO[path as keyof typeof TWO])); // prettier-ignore
  }
});

test('however full the device: photographs make room first; without room the first edition stays whole, and a page still opens', async () => {
  const ends = new Set<number>();
  const pictureless = new Set<boolean>();
  for (let room = Object.keys(ONE).length + 1; room <= 16; room += 1) {
    const [device, host] = [new Device(), new Host({ ...ONE, 'pictures/hive.webp': 'hive' })];
    const pictures = ['pictures/hive.webp'];
    const before = await serving(editionOf(ONE, { pictures }), host, device);
    assert.equal(await (await before.answer('pictures/hive.webp'))!.text(), 'hive');
    device.room = room;
    host.files = { ...TWO };
    assert.equal(await before.open('dose/'), page(2, 'dose'));
    await Promise.all(before.rest);
    const update = await start({ ...two, pictures }, host, device, { replaces: true });
    const by = await update.install().then(
      () => 2,
      () => 1,
    );
    // Files that were under way when one failed.
    await new Promise((resolve) => setTimeout(resolve, 5));
    if (by === 2) await update.activate();
    ends.add(by);
    if (by === 2) pictureless.add(device.holds('pictures').length === 0);
    const worker = await start(by === 1 ? one : two, host, device, { replaces: true });
    const files: Record<string, string> = by === 1 ? ONE : TWO;
    for (const path of allOf(files).filter((each) => each !== 'dose/'))
      assert.deepEqual(await without(worker, host, [path]), [files[path]], `room for ${room}`);
  }
  assert.deepEqual([...ends].sort(), [1, 2]);
  assert.deepEqual([...pictureless], [true, false], 'where there is room for all, the photographs stay');
});

test('a page of a network, or of another program, is not taken for a page of the almanac', async () => {
  const [device, host] = [new Device(), new Host({ ...ONE })];
  const worker = await serving(one, host, device);
  for (const words of ['<html>Sign in to this network', '<html data-edition="2"><form data-search-page>']) {
    host.files['year/'] = words;
    assert.equal(await worker.open('year/'), words);
    await Promise.all(worker.rest);
    assert.deepEqual(await without(worker, host, ['year/']), [ONE['year/']]);
  }
});

test('a page that is again as the copy has it is forgotten; a mistyped address is not stored; a late answer is', async () => {
  const [device, host] = [new Device(), new Host({ ...ONE })];
  const worker = await serving(one, host, device);
  host.missing = page(1, 'no such page');
  host.files['year/'] = page(2, 'year');
  for (const path of ['year/', 'no-such-page/']) {
    await worker.open(path);
    await Promise.all(worker.rest);
  }
  assert.deepEqual(device.holds('seen first'), ['year/']);
  host.files['year/'] = ONE['year/'];
  await worker.open('year/?from=letter');
  await Promise.all(worker.rest);
  assert.deepEqual(device.holds('seen first'), []);
  vi.useFakeTimers();
  host.files['year/'] = page(2, 'year');
  host.delay = 4000;
  const slow = worker.open('year/');
  await vi.advanceTimersByTimeAsync(3500);
  assert.equal(await slow, ONE['year/'], 'the copy answers first');
  await vi.advanceTimersByTimeAsync(1000);
  vi.useRealTimers();
  await Promise.all(worker.rest);
  assert.deepEqual(await without(worker, host, ['year/']), [page(2, 'year')]);
});
