// The small clubs look as the demo club does: one of the south, one under a sub-folder, one of odd words.
import { after, before, describe, test } from 'node:test';
import type { Browser } from 'playwright-core';
import { fixtureSite, openBrowser, type Site } from '../site/built-site.ts';
import { lookAt, lookedFor, type Looks } from '../site/look.ts';
import { nothing } from '../site/visit.ts';

let browser: Browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

for (const name of ['southern', 'sub-folder', 'hostile']) {
  describe(name, () => {
    let site: Site;
    let found: Looks;
    before(async () => {
      site = await fixtureSite(name);
      found = await lookAt({ browser, site });
    });
    after(() => site?.close());
    for (const [rule, words] of Object.entries(lookedFor)) test(words, () => nothing(found[rule as keyof Looks]));
  });
}
