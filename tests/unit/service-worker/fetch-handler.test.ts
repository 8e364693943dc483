// What a page or a file is answered with: the host first, the copy when nothing comes, and never two editions in one answer.
import assert from 'node:assert/strict';
import { afterEach, test, vi } from 'vitest';
import { Device, editionOf, Host, serving, start } from './worker-scope.ts';

const files = {
  '': 'home',
  'year/': 'year',
  'pests/Varroa/': 'varroa',
  '404.html': 'no such page',
  'assets/a.1.js': 'script',
  'search/index.json': 'index',
  'meetings.ics': 'calendar',
};
const edition = editionOf(files, { pictures: ['pictures/hive.webp'] });

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
});

test('with signal a page is the host’s, even where the copy has an older one', async () => {
  const host = new Host({ ...files });
  const worker = await serving(edition, host);
  host.files['year/'] = 'year, corrected';
  assert.equal(await worker.open('year/'), 'year, corrected');
});

for (const [address, shown] of [
  ['year/', 'year'],
  ['year/index.html', '/club/year/'],
  ['year', '/club/year/'],
  ['YEAR/', '/club/year/'],
  ['year?from=link', '/club/year/?from=link'],
  ['pests/varroa', '/club/pests/Varroa/'],
  ['', 'home'],
  ['nowhere/', '404 no such page'],
  ['%E0%A4%A/', '404 no such page'],
] as const) {
  test(`without signal /club/${address} gives ${shown}`, async () => {
    const host = new Host(files);
    const worker = await serving(edition, host);
    host.state = 'none';
    assert.equal(await worker.open(address), shown);
  });
}

test('a host that answers with a fault of its own: the copy serves what it has, and the fault is passed on for the rest', async () => {
  const host = new Host(files);
  const worker = await serving(edition, host);
  host.state = 'error';
  assert.equal(await worker.open('year/'), 'year');
  assert.equal(await worker.open('nowhere/'), '500 broken');
});

test('a page that a script reads, for a hand-out, is the one that its reader would see', async () => {
  const host = new Host({ ...files });
  const worker = await serving(edition, host);
  const read = async (path: string): Promise<string> => (await worker.answer(path))!.text();
  host.files['year/'] = 'year, corrected';
  assert.equal(await read('year/'), 'year, corrected');
  delete host.files['pests/Varroa/'];
  assert.equal(await read('pests/Varroa/'), 'no such page');
  host.state = 'none';
  assert.equal(await read(''), 'home');
});

test('a page that the host no longer has is not brought back from the copy', async () => {
  const host = new Host({ ...files });
  const worker = await serving(edition, host);
  delete host.files['year/'];
  assert.equal(await worker.open('year/'), '404 no such page');
});

test('nothing comes for three seconds: the copy serves, and for half a minute after it serves at once', async () => {
  const host = new Host(files);
  const worker = await serving(edition, host);
  vi.useFakeTimers({ now: 1_000_000 });
  host.state = 'silent';
  let shown: string | undefined;
  void worker.open('year/').then((text) => (shown = text));
  await vi.advanceTimersByTimeAsync(2900);
  assert.equal(shown, undefined, 'it still waits for the host');
  await vi.advanceTimersByTimeAsync(200);
  assert.equal(shown, 'year');
  shown = undefined;
  void worker.open('').then((text) => (shown = text));
  await vi.advanceTimersByTimeAsync(10);
  assert.equal(shown, 'home');
});

test('without a copy a request fails as it would without a worker', async () => {
  const host = new Host(files);
  const worker = await start(edition, host);
  host.state = 'none';
  assert.equal((await worker.answer('year/', { navigate: true }))!.type, 'error');
  await assert.rejects(
    worker.answer('assets/a.1.js').then((answer) => answer!.text()),
    /Failed to fetch/,
  );
});

test('a listed file comes from the copy, a calendar from the host as long as there is one', async () => {
  const host = new Host({ ...files });
  const worker = await serving(edition, host);
  host.asked = [];
  assert.equal(await (await worker.answer('assets/a.1.js'))!.text(), 'script');
  assert.deepEqual(host.asked, []);
  host.files['meetings.ics'] = 'calendar with a new meeting';
  assert.equal(await (await worker.answer('meetings.ics'))!.text(), 'calendar with a new meeting');
  host.state = 'none';
  assert.equal(await (await worker.answer('meetings.ics'))!.text(), 'calendar');
});

test('the index of another edition is asked of the host, never taken from this copy', async () => {
  const host = new Host({ ...files, 'search/index.json': 'newer index' });
  host.files = { ...files };
  const worker = await serving(edition, host);
  host.files = { ...files, 'search/index.json': 'newer index' };
  assert.equal(await (await worker.answer('search/index.json?ts=first'))!.text(), 'index');
  assert.equal(await (await worker.answer('search/index.json?ts=second'))!.text(), 'newer index');
});

test('a photograph is kept the first time it is seen', async () => {
  const host = new Host({ ...files });
  const device = new Device();
  const worker = await serving(edition, host, device);
  assert.deepEqual(device.holds('pictures'), []);
  host.files['pictures/hive.webp'] = 'hive';
  assert.equal(await (await worker.answer('pictures/hive.webp'))!.text(), 'hive');
  host.state = 'none';
  assert.equal(await (await worker.answer('pictures/hive.webp'))!.text(), 'hive');
});

test('other hosts, other folders and other methods are left to the browser', async () => {
  const worker = await serving(edition, new Host(files));
  for (const address of ['https://elsewhere.example/club/year/', '/other-club/assets/a.1.js'])
    assert.equal(await worker.answer(address), undefined, address);
  assert.equal(await worker.answer('assets/a.1.js', { method: 'POST' }), undefined);
});

test("a club's larger file is stored when it is opened, and forgotten when an edition has another one", async () => {
  const device = new Device();
  const host = new Host({ ...files, 'files/form.pdf': 'form', 'files/rules.pdf': 'rules' });
  const first = editionOf(files, { ownFiles: [['files/form.pdf', 'a'], ['files/rules.pdf', 'b']] }); // prettier-ignore
  const worker = await serving(first, host, device);
  assert.deepEqual(device.holds('files'), [], 'nothing before it is opened');
  assert.equal(await worker.open('files/form.pdf'), 'form');
  host.state = 'none';
  assert.equal(await worker.open('files/form.pdf'), 'form');
  assert.equal(await worker.open('files/rules.pdf'), '404 no such page');
  host.state = 'well';
  await serving(editionOf(files, { ownFiles: [['files/form.pdf', 'c']], print: 'second' }), host, device);
  assert.deepEqual(device.holds('files'), []);
});
