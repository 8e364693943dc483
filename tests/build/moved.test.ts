// Redirects from old addresses, in any folder of a host. No list of the site contains the old addresses.
import assert from 'node:assert/strict';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import { builtFixture } from '../setup/built-site.ts';
import { recordsIn } from '../e2e/search-engine.ts';

for (const [name, from, to] of [
  ['sub-folder', 'lists/swarms/', 'lists/swarm-check/'],
  ['cold', 'know-how/bee-stings/', 'know-how/stings/'],
  ['hostile', 'know-how/older-prose/', 'know-how/odd-prose/'],
] as const) {
  test(`${name}: ${from} redirects to ${to}`, async () => {
    const built = await builtFixture(name);
    assert.ok(existsSync(join(built.folder, to, 'index.html')));
    const html = built.read(`${from}index.html`);
    const address = built.base + to;
    assert.ok(html.includes(`<meta http-equiv="refresh" content="0; url=${address}">`));
    assert.ok(html.includes(`<link rel="canonical" href="${address}">`));
    assert.ok(html.includes(`<a href="${address}">`), 'a link for those whose browser does not follow');
    assert.match(html, /<meta name="robots" content="noindex">/);
    const record = JSON.parse(built.read('edition.json')) as { pages: object };
    assert.ok(!(from in record.pages) && to in record.pages);
    assert.ok(!recordsIn(built.folder).some(({ place }) => place.startsWith(from)), 'not found by search');
    assert.ok(built.read('worker.js').includes(`"${from}"`), 'without signal too');
  });
}
