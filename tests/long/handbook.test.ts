// The whole book in one file, looked at by axe.
import { test } from 'node:test';
import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { builtDemo, openBrowser } from '../site/built-site.ts';
import { axe } from '../site/look.ts';
import { nothing, phone } from '../site/visit.ts';

test('axe finds nothing in the book', { timeout: 300_000 }, async (context) => {
  const { folder } = await builtDemo();
  const browser = await openBrowser();
  context.after(() => browser.close());
  const page = await browser.newPage({ viewport: phone });
  await page.goto(pathToFileURL(join(folder, 'handbook.html')).href);
  nothing(await axe(page));
});
