// Every page of the almanac opens without signal, after one visit to one of them.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { demoSite, openBrowser } from '../site/built-site.ts';
import { openHost, openReader, wrongWithoutSignal } from '../site/kept.ts';

test('every page opens with the bytes that were published', async () => {
  const site = await demoSite();
  const browser = await openBrowser({ workers: true });
  const host = await openHost();
  await host.put('/', site.folder);
  const { page, told } = await openReader(browser, `${host.origin}/about/`);
  await told(/^Saved on/);
  host.stop();
  assert.ok(site.pages.length > 150);
  assert.deepEqual(await wrongWithoutSignal(page, site, `${host.origin}/`, site.pages), []);
  await browser.close();
  await host.close();
  await site.close();
});
