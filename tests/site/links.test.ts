// Every address on every page leads somewhere, in the demo club at the root of a host and in a club's sub-folder.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import type { Browser } from 'playwright-core';
import { demoSite, openBrowser, type Site } from './built-site.ts';
import { addresses } from './rules.ts';
import { nothing, visit } from './visit.ts';

let browser: Browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

for (const base of ['/', '/club/']) {
  test(`published under ${base}, every link, form and file leads to what is there`, async () => {
    const site = await demoSite({ base });
    try {
      const named = await collect(site);
      assert.ok(named.size > site.pages.length, `${named.size} addresses`);
      nothing((await Promise.all([...named].map(async ([address, pages]) => (await faultsAt(address, site)).map((fault) => `${pages[0]}: ${address} ${fault}`)))).flat());
    } finally {
      await site.close();
    }
  });
}

/** Each address, and the pages that name it. */
async function collect(site: Site): Promise<Map<string, string[]>> {
  const named = new Map<string, string[]>();
  await visit({ browser, site, context: { javaScriptEnabled: false } }, async (page, from) => {
    for (const { address } of await page.evaluate(addresses)) named.set(address, [...(named.get(address) ?? []), from]);
    return [];
  });
  return named;
}

const held = new Map<string, Promise<{ status: number; ids: Set<string>; text: string }>>();

async function faultsAt(address: string, site: Site): Promise<string[]> {
  const { origin, pathname, hash, protocol } = new URL(address);
  if (/^(mailto|tel):$/.test(protocol)) return /^(mailto:[^@\s]+@[^@\s]+|tel:\+?\d{3,})$/.test(address) ? [] : ['is no address to write to or ring'];
  if (origin !== new URL(site.address).origin) return protocol === 'https:' ? [] : ['is another host, without https'];
  if (!pathname.startsWith(site.base)) return [`lies outside ${site.base}`];
  if (/[A-Z]:|\\|\/\//.test(pathname)) return ['has a doubled or a wrong slash'];
  const { status, ids } = await (held.get(origin + pathname) ?? fetched(origin + pathname));
  if (status !== 200) return [`answers ${status}`];
  // What stands behind a calculator's # with an equals sign is values, not a place.
  if (hash === '' || (hash.includes('=') && pathname.includes('/work-it-out/'))) return [];
  return ids.has(decodeURIComponent(hash.slice(1))) ? [] : ['names a place that is not on that page'];
}

function fetched(address: string): Promise<{ status: number; ids: Set<string>; text: string }> {
  const reply = fetch(address, { redirect: 'manual' }).then(async (response) => {
    const text = await response.text();
    return { status: response.status, text, ids: new Set([...text.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]!)) };
  });
  held.set(address, reply);
  return reply;
}
