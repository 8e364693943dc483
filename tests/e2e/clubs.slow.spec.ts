// The small clubs pass the same visual rules as the demo club: one of the south, one in a sub-folder, one of odd words, one that speaks Spanish.
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { lookAt, lookedFor, type Looks } from './look.ts';
import { nothing } from './visit.ts';

let browser: Browser;
test.beforeAll(async ({ browser: launched }) => {
  browser = launched;
});

for (const name of ['southern', 'sub-folder', 'hostile', 'spanish']) {
  test.describe(name, () => {
    let site: Site;
    let found: Looks;
    test.beforeAll(async () => {
      site = await fixtureSite(name);
      found = await lookAt({ browser, site });
    });
    test.afterAll(() => site?.close());
    for (const [rule, words] of Object.entries(lookedFor)) test(words, { tag: '@slow' }, () => nothing(found[rule as keyof Looks]));
  });
}
