// What a page is told of its copy when it asks.
import assert from 'node:assert/strict';
import { afterEach, test, vi } from 'vitest';
import { Device, editionOf, Host, Page, serving } from './worker-scope.ts';

const files = { '': 'home', 'year/': 'year', '404.html': 'no such page' };

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
});

for (const [today, old] of [
  ['2026-06-17T12:00:00Z', ''],
  ['2026-06-18T12:00:00Z', ' It is more than 60 days old: ask before you rely on a number.'],
] as const) {
  test(`a page from the copy says so on ${today.slice(0, 10)}${old ? ', and that the edition is old' : ''}`, async () => {
    const host = new Host(files);
    const worker = await serving(editionOf(files), host);
    host.state = 'none';
    const [page, before] = [new Page('year/', 'read without signal'), new Page('', 'open before')];
    await worker.open('year/', page.id);
    vi.useFakeTimers({ now: new Date(today) });
    await worker.ask(page, { edition: '2026-04-18 f1f1f1' });
    assert.deepEqual(page.told, [{ says: `No signal: this is the saved edition of 18 April 2026 (f1f1f1).${old}`, first: true }]);
    await worker.ask(before, { edition: '2026-04-18 f1f1f1' });
    assert.match(before.says!, /^Available offline/);
  });
}

test('the day is the club’s: an evening in New York is not yet the next day', async () => {
  const host = new Host(files);
  const worker = await serving(editionOf(files), host);
  host.state = 'none';
  const page = new Page();
  await worker.open('', page.id);
  vi.useFakeTimers({ now: new Date('2026-06-18T03:00:00Z') });
  await worker.ask(page, { edition: '2026-04-18 f1f1f1' });
  assert.doesNotMatch(page.says!, /days old/);
});

test('pictures that are not saved are counted', async () => {
  const device = new Device();
  const worker = await serving(editionOf(files, { pictures: ['pictures/a.webp', 'pictures/b.webp'] }), new Host(files), device);
  const page = new Page();
  await worker.ask(page, { edition: '2026-04-18 f1f1f1' });
  assert.match(page.says!, /2 of 2 pictures are not saved; their words are\.$/);
});
