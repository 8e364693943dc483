// The whole single-file book, tested by axe.
import { test } from './fixtures.ts';
import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { builtDemo } from '../setup/built-site.ts';
import { axe } from './look.ts';
import { nothing, phone } from './visit.ts';

test('axe finds nothing in the book', { tag: '@slow' }, async ({ browser }) => {
  test.setTimeout(300_000);
  const { folder } = await builtDemo();
  const page = await browser.newPage({ viewport: phone });
  await page.goto(pathToFileURL(join(folder, 'handbook.html')).href);
  nothing(await axe(page));
});
