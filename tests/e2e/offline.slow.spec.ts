// Every page of the almanac opens without signal after one visit.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import { openHost, openReader, wrongWithoutSignal } from './kept.ts';

test.use({ offlineCopy: true });

test('every page opens with the published bytes', { tag: '@slow' }, async ({ browser, demo: site }) => {
  const host = await openHost();
  await host.put('/', site.folder);
  const { page, told } = await openReader(browser, `${host.origin}/about/`);
  await told(/^Available offline/);
  host.stop();
  assert.ok(site.pages.length > 150);
  assert.deepEqual(await wrongWithoutSignal(page, site, `${host.origin}/`, site.pages), []);
  await host.close();
});
