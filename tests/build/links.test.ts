// Links, forms and files of every page lead to existing targets, in the demo club at the root of a host, in its sub-folder, and in the
// small clubs.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { addressesIn } from '../e2e/addresses.ts';
import { demoSite, fixtureSite, type Site } from '../setup/built-site.ts';
import { faultsAt, linksOf } from '../e2e/links.ts';
import { nothing } from '../e2e/visit.ts';

const clubs: [string, () => Promise<Site>][] = [
  ['the demo club', () => demoSite()],
  ['the demo club under /club/', () => demoSite({ base: '/club/' })],
  ...['southern', 'sub-folder', 'hostile'].map((name): [string, () => Promise<Site>] => [name, () => fixtureSite(name)]),
];

for (const [name, publish] of clubs) {
  test(`${name}: every link, form and file leads to an existing target`, { tags: name.endsWith('/club/') ? ['slow'] : [] }, async () => {
    const site = await publish();
    try {
      const { named, faults } = await linksOf(site);
      assert.ok(named > site.pages.length, `${named} addresses`);
      nothing(faults);
    } finally {
      await site.close();
    }
  });
}

test('the test finds addresses of every kind and reports each fault', async () => {
  const html = `<p title="a > b"><a class="x" href="nowhere/?a=1&amp;b=2#x">to</a><a href='not read'>..</a></p><form action="/find/"><img src="/a.png" alt=""></form>
    <script src="/s.js">const no = '<a href="/never/">';</script><svg><use href="#shape"/></svg><a href="mailto:a">a</a><a href="http://other.example/">o</a>`;
  const site = await demoSite();
  const found = addressesIn(html, site.at('/year/'));
  assert.deepEqual(
    found.map((address) => address.replace(site.address, '/')),
    ['/year/nowhere/?a=1&b=2#x', '/find/', '/a.png', '/s.js', '/year/#shape', 'mailto:a', 'http://other.example/'],
  );
  const faults = await Promise.all(found.map((address) => faultsAt(address, site)));
  assert.deepEqual(faults, [
    ['answers 404'],
    ['answers 404'],
    ['answers 404'],
    ['answers 404'],
    ['names a place that is not on that page'],
    ['is no address to write to or call'],
    ['is another host, without https'],
  ]);
  assert.deepEqual(await faultsAt(site.at('/year'), site), ['answers 301']);
  await site.close();
});
