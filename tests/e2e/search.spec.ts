// Search in a browser: keyboard, screen reader, sub-folder, no network, odd words, and members' queries.
import assert from 'node:assert/strict';
import { note, test } from './fixtures.ts';
import type { Browser, BrowserContext, Page } from '@playwright/test';
import { ENGINE, WORDS } from '../../shared/words/search-files.ts';
import { questions } from '../tables/questions.ts';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { axe } from './look.ts';
import { numbersUnlike } from './index-numbers.ts';
import { sideways, smallTargets } from './rules.ts';
import { openSearch, placesFor } from './search-engine.ts';
import { desk, narrow, nothing, open, phone } from './visit.ts';
import { fileOf } from './weights.ts';

/** The query with the most requests: several words, each a slip with several corrections. */
const MANY_WORDS = ['mites', '13 mites in 250 bees', '2 or 3 eggs one cell', 'beatles temprature chimny recipie enterance quean nozema'];

let browser: Browser;
let site: Site;
test.beforeAll(async ({ browser: launched, demo }) => {
  browser = launched;
  site = demo;
});

async function searching(
  words: string,
  { at = site, ...size }: { at?: Site; width?: number; height?: number } = {},
): Promise<{ page: Page; context: BrowserContext }> {
  const opened = await open(
    browser,
    at.at(`${at.base}search/?q=${encodeURIComponent(words)}`),
    size.width ? { viewport: { width: size.width, height: size.height! } } : {},
  );
  await settled(opened.page);
  return opened;
}

const settled = (page: Page): Promise<unknown> => page.waitForFunction(() => document.querySelector('[role=status]')!.textContent !== '');
const links = (page: Page): Promise<string[]> =>
  page.locator('[data-search-list] li > a').evaluateAll((all) => all.map((each) => (each as HTMLAnchorElement).pathname));
const said = (page: Page): Promise<string> => page.getByRole('status').innerText();

test('an address with words lists results by group: title, section, the words marked', async () => {
  const { page, context } = await searching('varroa');
  assert.equal((await links(page))[0], '/pests/varroa/');
  const first = page.locator('[data-search-list] li').first();
  assert.match(await first.innerText(), /^Varroa\s/);
  assert.equal(await page.locator('[data-search-list] h2').first().innerText(), 'Problems');
  assert.match(await first.locator('mark').first().innerText(), /^(varroa|mites?)$/i);
  assert.match(await said(page), /^\d+ results$/);
  for (const group of await page.locator('[data-search-list] section').all()) assert.ok((await group.locator('li').count()) <= 3);
  await context.close();
});

test('by keyboard alone, from any page: the form leads here, typing lists, Tab and Enter open', async () => {
  const { page, context } = await open(browser, site.at('/lists/'), { viewport: desk });
  await page.getByRole('searchbox').focus();
  await page.keyboard.type('wax moth');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/search/?q=wax+moth');
  await settled(page);
  assert.equal((await links(page))[0], '/pests/wax-moth/');
  await page.locator('#words').focus();
  await page.keyboard.press('Control+A');
  await page.keyboard.type('sacbrood');
  await page.waitForFunction(() => document.querySelector('[data-search-list] a')?.getAttribute('href') === '/pests/sacbrood/');
  await page.waitForURL('**/search/?q=sacbrood');
  for (let step = 0; step < 20 && (await page.evaluate(() => document.activeElement!.getAttribute('href'))) !== '/pests/sacbrood/'; step++)
    await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/pests/sacbrood/');
  await page.goBack();
  await settled(page);
  assert.equal((await links(page))[0], '/pests/sacbrood/', 'Back finds the list again');
  await context.close();
});

test('on a phone the link, and on the 404 page the form, lead here', async () => {
  const { page, context } = await open(browser, site.at('/lists/'));
  await page.getByRole('link', { name: 'Search', exact: true }).click();
  await page.waitForURL('**/search/');
  await page.goto(site.at('/no/such/page/'));
  await page.getByRole('main').getByRole('searchbox').fill('robbing');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/search/?q=robbing');
  await settled(page);
  assert.equal((await links(page))[0], '/pests/robbing/');
  await context.close();
});

test('kinds are a choice with counts that add up; a choice is announced, and the focus stays', async () => {
  const { page, context } = await searching('mites');
  const kinds = page.getByLabel('Kind of page');
  const options = await kinds.locator('option').allInnerTexts();
  const counts = options.map((text) => Number(/\((\d+)\)$/.exec(text)![1]));
  assert.ok(counts.length > 4);
  assert.equal(
    counts.slice(1).reduce((sum, count) => sum + count, 0),
    counts[0],
  );
  const at = options.findIndex((text) => text.startsWith('Checklists ('));
  await kinds.focus();
  for (let press = 0; press < at; press++) await page.keyboard.press('ArrowDown');
  await page.waitForFunction(() => document.querySelector('[role=status]')!.textContent!.endsWith(': checklists'));
  assert.equal(await said(page), `${counts[at]} results: checklists`);
  assert.ok(await kinds.evaluate((select) => select === document.activeElement), 'the focus stays');
  assert.equal((await links(page)).length, counts[at], 'the whole group');
  for (const link of await links(page)) assert.match(link, /^\/lists\//);
  await context.close();
});

test("the time of year: these weeks by today, a part of the year by the reader's district; both choices together", async () => {
  const { page, context } = await open(browser, site.at('/search/'));
  await page.clock.install({ time: new Date('2026-05-05T15:00:00Z') });
  await page.goto(site.at('/search/?q=mites'));
  await settled(page);
  const season = page.getByLabel('Time of year');
  assert.deepEqual((await season.locator('option').allInnerTexts()).slice(0, 3), ['All the year', 'These weeks', 'Winter rest']);
  const all = Number(/^\d+/.exec(await said(page))![0]);
  const inPart = async (label: string): Promise<number> => {
    await season.selectOption({ label });
    await page.waitForFunction((words) => document.querySelector('[role=status]')!.textContent!.endsWith(words), label.toLowerCase());
    return Number(/^\d+/.exec(await said(page))![0]);
  };
  for (const label of ['These weeks', 'Swarming', 'Winter rest']) {
    const count = await inPart(label);
    assert.ok(count > 0 && count < all, label);
  }
  await page.getByLabel('Kind of page').selectOption('checklists');
  await page.waitForFunction(() => document.querySelector('[role=status]')!.textContent!.endsWith(': checklists, winter rest'));
  // 15 July to 5 September.
  assert.ok(!(await links(page)).includes('/lists/late-summer-mites/'));
  await inPart('Dearth');
  assert.ok((await links(page)).includes('/lists/late-summer-mites/'));
  for (const link of await links(page)) assert.match(link, /^\/lists\//);
  await page.locator('#words').fill('mites count');
  await page.waitForFunction(() => /^\d+ results$/.test(document.querySelector('[role=status]')!.textContent!));
  assert.equal(await season.inputValue(), '', 'a new question starts without a choice');
  await context.close();
});

test('more results of a group come on a press, and the first of them takes the focus', async () => {
  const { page, context } = await searching('queen');
  const group = page.locator('[data-search-list] section').first();
  await group.getByRole('button', { name: 'Show all' }).press('Enter');
  await page.waitForFunction(() => document.querySelectorAll('[data-search-list] section:first-child li').length > 3);
  await page.waitForFunction(() => document.activeElement?.closest('[data-search-list] li'));
  assert.equal(
    await page.evaluate(() => document.activeElement!.getAttribute('href')),
    await group.locator('li').nth(3).locator('a').getAttribute('href'),
  );
  assert.equal(await group.getByRole('button').count(), 0);
  await context.close();
});

// By the demo club's meetings and today; the club's own contacts.
test('a best answer leads with its page, its section and a call, in the first screen; results follow', async () => {
  const { page, context } = await open(browser, site.at('/search/'), { viewport: phone });
  await page.clock.setFixedTime(new Date('2026-05-05T15:00:00Z'));
  await page.goto(site.at('/search/?q=dead+queen+in+pakage'));
  await settled(page);
  const best = page.getByRole('region', { name: 'Best answer' });
  const link = best.getByRole('link', { name: 'The queen is dead in the package' });
  assert.equal(await link.getAttribute('href'), '/lists/package-arrival/#the-queen-is-dead');
  assert.match((await best.getByRole('link', { name: /^Call 330-555-0113$/ }).getAttribute('href')) ?? '', /^tel:/);
  assert.ok((await link.boundingBox())!.y < 300);
  await page.locator('#words').fill('next meeting');
  await best.getByRole('link', { name: /^Next meeting: Yard day/ }).waitFor();
  assert.match(await best.innerText(), /Saturday, May\s16,\s2026/);
  await page.locator('#words').fill('queen excluder');
  await best.waitFor({ state: 'hidden' });
  await page.waitForFunction(() => !document.querySelector('[data-search-list]')!.textContent!.includes('Yard day'));
  assert.ok((await page.locator('[data-search-list] li').first().boundingBox())!.y < 300, 'results begin in the first screen');
  await context.close();
});

test('before anything is typed: eight common questions of the season; without the index a best answer shows all the same', async () => {
  const { page, context } = await open(browser, site.at('/search/'), { viewport: phone });
  const asked = (): Promise<string[]> => page.locator('[data-search-answers] li:visible > a').allInnerTexts();
  await page.clock.setFixedTime(new Date('2026-01-15T15:00:00Z'));
  await page.goto(site.at('/search/'));
  const winter = await asked();
  await page.clock.setFixedTime(new Date('2026-05-05T15:00:00Z'));
  await page.goto(site.at('/search/'));
  const spring = await asked();
  for (const each of [winter, spring]) assert.equal(each.length, 8);
  assert.ok(winter.includes('Is the hive alive?') && !spring.includes('Is the hive alive?'));
  assert.ok(winter.includes('Someone was stung') && spring.includes('Someone was stung'));
  await context.route('**/*.pf_meta', (route) => route.abort());
  await page.locator('#words').fill('someone stung');
  await page.getByRole('region', { name: 'Best answer' }).getByRole('link', { name: 'Call 911' }).waitFor();
  assert.deepEqual(await asked(), [], 'the questions give way');
  await context.close();
});

test('odd input breaks nothing: a letter, signs, a face, five hundred letters', async () => {
  const { page, context } = await open(browser, site.at('/search/'));
  for (const typed of ['q', '"', '🐝🐝', 'x'.repeat(500), '<script>alert(1)</script>', '%', '\\', "'; --"]) {
    await page.locator('#words').fill(typed);
    await page.waitForURL((url) => url.searchParams.get('q') === typed);
    await settled(page);
    assert.doesNotMatch(await said(page), /did not load/, typed);
    nothing(await page.evaluate(sideways));
  }
  await page.locator('#words').fill('');
  await page.getByRole('heading', { name: 'Common questions' }).waitFor();
  await context.close();
});

test('nothing found: says so, once, with words to try, whom to ask and the line for someone unwell', async () => {
  const { page, context } = await searching('qqqqzz');
  assert.equal(await said(page), 'No page found');
  const main = page.getByRole('main');
  for (const [name, href] of [
    ['word list', '/words/'],
    ['Everyone, by duty', '/who-to-ask/'],
  ])
    assert.equal(await main.getByRole('link', { name: name!, exact: true }).getAttribute('href'), href);
  assert.equal(await page.getByRole('link', { name: 'Call 911' }).getAttribute('href'), 'tel:911');
  assert.ok(await main.getByRole('link', { name: 'word list', exact: true }).isVisible());
  await context.close();
});

test('results are announced once per word, not per letter', async () => {
  const { page, context } = await open(browser, site.at('/search/'));
  await page.evaluate(() => {
    const heard: string[] = ((window as unknown as { heard: string[] }).heard = []);
    new MutationObserver(() => heard.push(document.querySelector('[role=status]')!.textContent!)).observe(
      document.querySelector('[role=status]')!,
      { childList: true, characterData: true, subtree: true },
    );
  });
  // Typed inside the page, so that a busy machine does not add pauses.
  await page.evaluate(async () => {
    const field = document.querySelector<HTMLInputElement>('#words')!;
    for (const letter of 'sacbrood') {
      field.value += letter;
      field.dispatchEvent(new Event('input', { bubbles: true }));
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  });
  await settled(page);
  // A further search is told after all that the first had to tell.
  await page.locator('#words').fill('swarm');
  await page.waitForFunction(() => (window as unknown as { heard: string[] }).heard.filter(Boolean).length > 1);
  await settled(page);
  const heard = await page.evaluate(() => (window as unknown as { heard: string[] }).heard.filter(Boolean));
  assert.equal(heard.length, 2, heard.join(' | '));
  await context.close();
});

test('queries and results are text, never a tag', async () => {
  const club = await fixtureSite('hostile');
  const { page, context } = await searching('<img src=x onerror="document.title=1"> prose mites', { at: club });
  const title = await page.title();
  assert.ok((await links(page)).includes('/know-how/odd-prose/'));
  const row = page.locator('[data-search-list] li', { has: page.locator('a[href^="/know-how/odd-prose/"]') });
  const text = await row.innerText();
  assert.ok(text.includes('Prose: <3, {name}, 2~3, 5\'10" & é'), text);
  assert.equal(await row.locator('small > :not(mark, b), b > *, mark > *, a > :not(span, svg), span > :not(b, small)').count(), 0);
  assert.equal(await page.title(), title);
  await context.close();
  await club.close();
});

test('numbers in the index read as on their pages, to the last character: every twelfth page, the rest in the slow tests', {}, async () => {
  test.setTimeout(120_000);
  const { found, numbers } = await numbersUnlike({ browser, site }, (_, at) => at % 12 === 0);
  nothing(found);
  assert.ok(numbers > 50, `${numbers} numbers`);
});

test('a result shows ratios, ranges and degrees as its page does', async () => {
  for (const [typed, shows] of [
    ['layer of dead bees 1/2 inch', /½\sin \(13\smm\)/],
    ['bees 3 weeks 55 to 64 %', /55 to 64\s%/],
    ['days near 50 degrees syrup', /50 to 55\s°F \(10/],
    ['2:1 sirup one gallon', /2 to 1|2:1/],
  ] as const) {
    const { page, context } = await searching(typed);
    assert.match(await page.locator('[data-search-list]').innerText(), shows);
    await context.close();
  }
});

test('under a sub-folder every address begins with it, and none changes between visits', async () => {
  const club = await fixtureSite('sub-folder');
  const asked: string[][] = [];
  for (let time = 0; time < 2; time++) {
    const { page, context } = await open(browser, club.at('/club/'), { viewport: desk });
    const own: string[] = [];
    asked.push(own);
    page.on('request', (request) => own.push(request.url().slice(club.at('').length)));
    await page.getByRole('searchbox').fill('bees');
    await page.keyboard.press('Enter');
    await settled(page);
    for (const link of await links(page)) assert.match(link, /^\/club\//);
    assert.ok((await links(page)).length > 0);
    await page.locator('[data-search-list] a').first().click();
    await page.waitForURL((url) => !url.pathname.endsWith('/search/'));
    assert.equal(await page.locator('h1').count(), 1);
    assert.ok(!(await page.locator('h1').innerText()).includes('No page'));
    await context.close();
  }
  for (const address of asked.flat()) assert.match(address, /^\/club\//);
  const print = /data-print="(\w+)"/.exec(club.read('search/index.html'))![1];
  for (const file of [WORDS, ENGINE]) assert.ok(asked[0]!.includes(`/club/${file}?ts=${print}`), file);
  assert.deepEqual(new Set(asked[1]), new Set(asked[0]));
  await club.close();
});

for (const [what, files] of [
  ['the words', '**/search/words.json*'],
  ['the engine', '**/pagefind.js*'],
  ['its program', '**/wasm.en.pagefind'],
  ['the list of pieces', '**/*.pf_meta'],
  ['a piece of the index', '**/*.pf_index'],
  ['the text of a result', '**/*.pf_fragment'],
] as const) {
  test(`${what} fails to load: the page says so and lists all pages, and the next word tries again`, async () => {
    const { page, context } = await open(browser, site.at('/search/'));
    await context.route(files, (route) => route.abort());
    await page.locator('#words').fill('mites');
    await page.waitForFunction(() => document.querySelector('[role=status]')!.textContent!.startsWith('Search did not load'));
    assert.ok(await page.getByRole('main').getByRole('link', { name: 'Wax moth' }).isVisible());
    await context.unroute(files);
    await page.locator('#words').fill('wax moth');
    await page.waitForFunction(() => document.querySelector('[data-search-list] a')?.getAttribute('href') === '/pests/wax-moth/');
    await context.close();
  });
}

test('the policy allows WebAssembly on the search page, and on no other', async () => {
  for (const [path, runs] of [
    ['/search/', true],
    ['/', false],
    ['/lists/', false],
    ['/404.html', false],
  ] as const) {
    const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(site.read(fileOf(site, path)))![1]!;
    assert.equal(policy.includes("'wasm-unsafe-eval'"), runs, path);
    const { page, context } = await open(browser, site.at(path));
    const ran = await page.evaluate(() =>
      // The smallest valid module: its four letters and its version.
      WebAssembly.compile(new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0])).then(
        () => true,
        () => false,
      ),
    );
    assert.equal(ran, runs, path);
    await context.close();
  }
});

test('without script the page still leads to every page', async () => {
  const { page, context } = await open(browser, site.at('/search/?q=mites'), { javaScriptEnabled: false });
  await page.getByText('All pages, A to Z').click();
  const listed = await page
    .getByRole('main')
    .getByRole('link')
    .evaluateAll((all) => all.map((each) => (each as HTMLAnchorElement).pathname));
  const wanted = site.pages.filter((address) => /^\/(lists|pests|know-how|meetings)\/[^/]+\/$/.test(address));
  assert.ok(wanted.length > 40);
  assert.deepEqual(
    wanted.filter((address) => !listed.includes(address)),
    [],
  );
  assert.equal(await page.getByRole('button', { name: 'Show all' }).count(), 0);
  assert.ok(
    await page.getByRole('main').getByText('Keep back, and keep children and dogs in.').isVisible(),
    'the questions have their answers',
  );
  await context.close();
});

test('results pass axe, push no page sideways and are large enough to press', async () => {
  for (const words of ['mites', 'qqqqzz', 'verroa how many is to many']) {
    const { page, context } = await searching(words);
    nothing(await axe(page));
    for (const size of [narrow, desk]) {
      await page.setViewportSize(size);
      nothing(await page.evaluate(sideways));
      nothing(await page.evaluate(smallTargets));
    }
    await context.close();
  }
});

test('bytes: a first question, with all that it fetches, is 127 kB in the middle and 140 kB at worst', async () => {
  const asked = [...questions.filter((_, at) => at % 6 === 0).map(({ typed }) => typed), ...MANY_WORDS];
  const measured: { typed: string; bytes: number; files: number }[] = [];
  for (const typed of asked) {
    const { page, context: tab } = await open(browser, site.at('/year/'));
    const fetched: Promise<number>[] = [];
    page.on('requestfinished', (request) => {
      if (/\.(js|json|pagefind|pf_\w+)(\?|$)/.test(request.url()))
        fetched.push(request.sizes().then(({ responseBodySize }) => responseBodySize));
    });
    await page.goto(site.at(`/search/?q=${encodeURIComponent(typed)}`));
    await settled(page);
    await page.waitForLoadState('networkidle');
    const bytes = (await Promise.all(fetched)).reduce((sum, each) => sum + each, 0);
    measured.push({ typed, bytes, files: fetched.length });
    await tab.close();
  }
  measured.sort((one, other) => one.bytes - other.bytes);
  for (const { typed, bytes, files } of measured) note(`"${typed}": ${bytes} B in ${files} files`);
  const [middle, worst] = [measured[measured.length >> 1]!, measured.at(-1)!];
  assert.ok(measured[0]!.bytes > 80_000, 'the engine was measured');
  assert.ok(middle.bytes <= 127_000, `"${middle.typed}": ${middle.bytes} B, ${middle.bytes - 127_000} B over the middle`);
  assert.ok(worst.bytes <= 140_000, `"${worst.typed}": ${worst.bytes} B, ${worst.bytes - 140_000} B over the worst`);
});

test('a query finds the same in the browser as without one', async () => {
  const engine = await openSearch(site.folder, site.address);
  const { page, context } = await open(browser, site.at('/search/'));
  const today = await page.evaluate(() => new Intl.DateTimeFormat('sv-SE', { timeZone: document.documentElement.dataset.zone! }).format());
  for (const { typed } of questions.filter((_, at) => at % 8 === 0)) {
    await page.locator('#words').fill(typed);
    const [first, ...wanted] = (await placesFor(typed, engine, 3, today)).map((place) => `/${place}`);
    await page.waitForFunction(
      ({ first, wanted }) => {
        const hrefs = [...document.querySelectorAll<HTMLAnchorElement>('[data-search-list] li > a')].map(
          (link) => link.pathname + (/^\/words\/|^\/reading\//.test(link.pathname) ? link.hash : ''),
        );
        return hrefs[0] === first && wanted.every((place) => hrefs.includes(place));
      },
      { first, wanted },
    );
  }
  await context.close();
});

test('a product name: the page on the active ingredient is offered, with pages and without', async () => {
  const { page, context } = await searching('Zorbomite strips how long');
  assert.ok((await links(page)).length > 0);
  assert.ok(await page.getByRole('main').getByRole('link', { name: 'Find the active ingredient on your label' }).first().isVisible());
  await page.locator('#words').fill('zorbomitexx');
  await page.waitForFunction(() => document.querySelector('[role=status]')!.textContent === 'No page found');
  assert.ok(await page.getByRole('main').getByRole('link', { name: 'Find the active ingredient on your label' }).first().isVisible());
  await context.close();
});
