// Every address on every page leads somewhere, in the demo club at the root of a host, in its sub-folder, and in the small clubs.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { addressesIn, idsIn } from './addresses.ts';
import { demoSite, fixtureSite, type Site } from './built-site.ts';
import { nothing } from './visit.ts';

const clubs: [string, () => Promise<Site>][] = [
  ['the demo club', () => demoSite()],
  ['the demo club under /club/', () => demoSite({ base: '/club/' })],
  ...['southern', 'sub-folder', 'hostile'].map((name): [string, () => Promise<Site>] => [name, () => fixtureSite(name)]),
];

for (const [name, publish] of clubs) {
  test(`${name}: every link, form and file leads to what is there`, async () => {
    const site = await publish();
    try {
      const named = namedBy(site);
      assert.ok(named.size > site.pages.length, `${named.size} addresses`);
      nothing((await Promise.all([...named].map(async ([address, page]) => (await faultsAt(address, site)).map((fault) => `${page}: ${address} ${fault}`)))).flat());
    } finally {
      await site.close();
    }
  });
}

const fileOf = (page: string, site: Site): string => {
  const path = page.slice(site.base.length);
  return path === '' || path.endsWith('/') ? `${path}index.html` : path;
};

/** Each address, and a page that names it. */
function namedBy(site: Site): Map<string, string> {
  return new Map(site.pages.flatMap((page) => addressesIn(site.read(fileOf(page, site)), site.at(page)).map((address): [string, string] => [address, page])));
}

interface Reply {
  status: number;
  ids: Set<string>;
}
const held = new Map<string, Promise<Reply>>();

async function faultsAt(address: string, site: Site): Promise<string[]> {
  const { origin, pathname, hash, protocol } = new URL(address);
  if (/^(mailto|tel):$/.test(protocol)) return /^(mailto:[^@\s]+@[^@\s]+|tel:\+?\d{3,})$/.test(address) ? [] : ['is no address to write to or ring'];
  if (origin !== new URL(site.address).origin) return protocol === 'https:' ? [] : ['is another host, without https'];
  if (!pathname.startsWith(site.base)) return [`lies outside ${site.base}`];
  if (/\\|\/\//.test(pathname)) return ['has a doubled or a wrong slash'];
  const { status, ids } = await (held.get(origin + pathname) ?? ask(origin + pathname));
  if (status !== 200) return [`answers ${status}`];
  // What stands behind a calculator's # with an equals sign is values, not a place.
  if (hash === '' || (hash.includes('=') && pathname.includes('/work-it-out/'))) return [];
  return ids.has(decodeURIComponent(hash.slice(1))) ? [] : ['names a place that is not on that page'];
}

function ask(address: string): Promise<Reply> {
  const reply = fetch(address, { redirect: 'manual' }).then(async (response) => ({ status: response.status, ids: idsIn(await response.text()) }));
  held.set(address, reply);
  return reply;
}

test('addresses of every sort are found, and each fault is told', async () => {
  const html = `<p title="a > b"><a class="x" href="nowhere/?a=1&amp;b=2#x">to</a><a href='not read'>..</a></p><form action="/find/"><img src="/a.png" alt=""></form>
    <script src="/s.js">const no = '<a href="/never/">';</script><svg><use href="#shape"/></svg><a href="mailto:a">a</a><a href="http://other.example/">o</a>`;
  const site = await demoSite();
  const found = addressesIn(html, site.at('/year/'));
  assert.deepEqual(found.map((address) => address.replace(site.address, '/')), ['/year/nowhere/?a=1&b=2#x', '/find/', '/a.png', '/s.js', '/year/#shape', 'mailto:a', 'http://other.example/']);
  const told = await Promise.all(found.map((address) => faultsAt(address, site)));
  assert.deepEqual(told, [['answers 404'], ['answers 404'], ['answers 404'], ['answers 404'], ['names a place that is not on that page'], ['is no address to write to or ring'], ['is another host, without https']]);
  assert.deepEqual(await faultsAt(site.at('/year'), site), ['answers 301']);
  await site.close();
});
