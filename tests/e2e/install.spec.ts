// The home screen: what the browser needs to install the almanac, and an offer that a reader can end.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import { open } from './visit.ts';

test('the browser reads the manifest without a fault, and the settings offer the home screen until it is closed', async ({
  browser,
  demo,
}) => {
  const { page, context } = await open(browser, demo.at('/about/access/'));
  const devtools = await context.newCDPSession(page);
  const { errors, data } = await devtools.send('Page.getAppManifest');
  assert.deepEqual(errors, []);
  assert.match(data ?? '', /"name": "Checklists"/);
  const offer = page.locator('[data-install]');
  const [button, words] = [offer.locator('[data-install-now]'), offer.locator('[data-install-words]')];
  assert.deepEqual([await words.isVisible(), await button.isVisible()], [true, false]);
  // Chromium sends this event only to visitors who have been on a page for a while, so the test sends it.
  await page.evaluate(() => {
    const event = Object.assign(new Event('beforeinstallprompt', { cancelable: true }), {
      prompt: () => document.documentElement.setAttribute('data-asked', ''),
    });
    if (dispatchEvent(event)) document.documentElement.setAttribute('data-strip', '');
  });
  assert.deepEqual([await words.isVisible(), await button.isVisible()], [false, true]);
  const marks = () => page.evaluate(() => ['data-asked', 'data-strip'].map((name) => document.documentElement.hasAttribute(name)));
  assert.deepEqual(await marks(), [false, false], 'nothing asks before a press');
  await button.click();
  assert.deepEqual(await marks(), [true, false]);
  await offer.locator('[data-install-close]').click();
  assert.ok(await offer.isHidden());
  await page.reload();
  assert.ok(await offer.isHidden());
  await page.evaluate(() => {
    localStorage.clear();
    dispatchEvent(new Event('appinstalled'));
  });
  await page.reload();
  assert.ok(await offer.isHidden(), 'nor once it is installed');
  await context.close();
});
