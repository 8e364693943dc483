// Number with a consent that ends: shown from its first day until its last, on every kind of page, without a new build. No published file
// contains it in the clear.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { test } from './fixtures.ts';
import { gunzipSync } from 'node:zlib';
import { strFromU8, unzipSync } from 'fflate';
import type { Browser, BrowserContextOptions } from '@playwright/test';
import { addDays } from '../../shared/days/day.ts';
import { readFolder } from '../../src/source/folder.ts';
import type { Club } from '../../src/schemas/club.ts';
import type { Site } from '../setup/built-site.ts';
import { openHost, openReader } from './kept.ts';

test.use({ offlineCopy: true });

let site: Site;
let browser: Browser;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
});

const { contacts, mistakes } = readFolder(join(import.meta.dirname, '../../content/demo-club')).club!.fields.value as Club;
const people = contacts.filter((each) => each['public-office'] !== true && each.until !== undefined);
const offices = contacts.filter((each) => each['public-office'] === true);
const digits = (text: string): string => text.replace(/\D/g, '');
/** The club's own address for mistakes belongs to no person, even where a duty uses it. */
const waysTo = ({ phone, email }: Club['contacts'][number]): string[] =>
  [phone, email].filter((each) => each !== undefined && each !== mistakes) as string[];

/** Everything that a reader can see or press on a page at noon of a day: words, shown or folded, and link targets. */
async function seen(path: string, day: string, options: BrowserContextOptions = {}): Promise<string> {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  await page.clock.setFixedTime(new Date(`${day}T16:00:00Z`));
  await page.goto(site.at(path));
  if (options.javaScriptEnabled !== false) await page.waitForFunction(() => document.documentElement.classList.contains('arranged'));
  const text = await seenNow(page);
  await context.close();
  return text;
}

const seenNow = (page: { evaluate: (look: () => string) => Promise<string> }): Promise<string> =>
  page.evaluate(
    () => `${document.body.textContent} ${[...document.querySelectorAll('a')].map((link) => link.getAttribute('href')).join(' ')}`,
  );

/** One page of each kind that draws a person's number, by address and by content. */
function pagesWithNumbers(): string[] {
  const kinds = new Map<string, string>();
  for (const path of site.pages) {
    const html = site.read(path.slice(1).replace(/(^|\/)$/, '$1index.html'));
    if (!html.includes('data-reach=')) continue;
    const main = html.slice(html.indexOf('<main'));
    const parts = ['<aside', 'class="text"', 'class="trouble"'].filter((part) =>
      main
        .split(part)
        .slice(1)
        .some((each) => each.split('</aside>')[0]!.includes('data-reach')),
    );
    const kind = `${path.split('/')[1]} ${parts.join(' ')}`;
    if (!kinds.has(kind)) kinds.set(kind, path);
  }
  return [...kinds.values()];
}

test('the demo club has people and offices on many kinds of page', () => {
  assert.ok(people.length >= 3 && offices.length >= 3);
  const pages = pagesWithNumbers();
  assert.ok(pages.length >= 6, pages.join(' '));
  assert.ok(pages.includes('/who-to-ask/'));
});

test('no published file contains such a number in the clear', () => {
  const texts = readdirSync(site.folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => statSync(join(site.folder, file)).isFile() && !/\.(woff2|png|jpe?g)$/.test(file))
    .flatMap((file) => {
      const bytes = readFileSync(join(site.folder, file));
      if (file.endsWith('.epub'))
        return Object.entries(unzipSync(bytes)).map(([name, part]) => ({ file: `${file}/${name}`, text: strFromU8(part) }));
      return [{ file, text: (bytes[0] === 0x1f && bytes[1] === 0x8b ? gunzipSync(bytes) : bytes).toString('utf8') }];
    });
  assert.ok(texts.length > 200);
  const isPage = (file: string): boolean => file.endsWith('.html') && file !== 'handbook.html' && !file.includes('.epub/');
  let hidden = 0;
  const found = texts.flatMap(({ file, text }) => {
    const clear = isPage(file) ? text.replace(/ data-reach-(?:to|words)="[^"]*"/g, () => ((hidden += 1), '')) : text;
    return people
      .flatMap(waysTo)
      .filter((way) => clear.includes(way) || (/\d{7}/.test(digits(way)) && clear.includes(digits(way))))
      .map((way) => `${file}: ${way}`);
  });
  assert.deepEqual(found, []);
  assert.ok(hidden > 100, 'pages hold them for their script');
  for (const file of ['club.ics', 'handbook.html', 'handbook.epub', 'search/index.html'])
    assert.ok(
      texts.some((each) => each.file.startsWith(file)),
      file,
    );
  assert.ok(
    texts.some(({ file, text }) => file === 'handbook.html' && text.includes(offices[0]!.phone!)),
    'an office’s number stands in the book',
  );
});

test('the day before, the day, the day after: on every kind of page', async () => {
  for (const path of pagesWithNumbers()) {
    const html = site.read(path.slice(1).replace(/(^|\/)$/, '$1index.html'));
    const here = people.filter((each) => waysTo(each).some((way) => html.includes(way)));
    assert.ok(here.length > 0, path);
    const until = here.map((each) => each.until!).sort()[0]!;
    const first = here.filter((each) => each.until === until);
    for (const [day, shows] of [
      [addDays(until, -1), true],
      [until, false],
      [addDays(until, 1), false],
      [addDays(first[0]!.agreed!, -1), false],
    ] as const) {
      const text = await seen(path, day);
      for (const { phone } of first) if (html.includes(phone!)) assert.equal(text.includes(phone!), shows, `${path} on ${day}: ${phone}`);
      for (const way of first.flatMap(waysTo)) if (!shows) assert.ok(!text.includes(way), `${path} on ${day}: ${way}`);
      for (const { phone } of offices)
        if (html.includes(`>Call ${phone}<`)) assert.ok(text.includes(phone!), `${path} on ${day}: an office`);
    }
  }
});

test('a page that stays open overnight removes the number, which can be pressed before', async () => {
  const [person] = people;
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.clock.setFixedTime(new Date(`${addDays(person!.until!, -1)}T16:00:00Z`));
  await page.goto(site.at('/who-to-ask/'));
  const link = page.locator(`#${person!.duty} a`).first();
  await page.waitForFunction(() => document.documentElement.classList.contains('arranged'));
  assert.equal(await link.innerText(), `Call ${person!.phone}`);
  assert.equal(await link.getAttribute('href'), `tel:${digits(person!.phone!)}`);
  await page.clock.setFixedTime(new Date(`${person!.until}T16:00:00Z`));
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  const text = await seenNow(page);
  for (const way of waysTo(person!)) assert.ok(!text.includes(way), way);
  assert.match(await link.innerText(), /^Write to the club: /);
  assert.match((await link.getAttribute('href'))!, /^mailto:/);
  await context.close();
});

test('without script no such number is shown; the page says how to reach the club', async () => {
  const text = await seen('/who-to-ask/', people[0]!.agreed!, { javaScriptEnabled: false });
  for (const way of people.flatMap(waysTo)) assert.ok(!text.includes(way), way);
  assert.match(text, /Write to the club: almanac@example\.org/);
  for (const { phone } of offices) assert.ok(text.includes(phone!), phone);
});

test('the offline copy hides the number on the same day', async () => {
  const [person] = people;
  const host = await openHost();
  await host.put('/', site.folder);
  const reader = await openReader(browser, `${host.origin}/`);
  await reader.told(/^Available offline/);
  host.stop();
  for (const [day, shows] of [
    [addDays(person!.until!, -1), true],
    [person!.until!, false],
  ] as const) {
    await reader.page.clock.setFixedTime(new Date(`${day}T16:00:00Z`));
    await reader.page.goto(`${host.origin}/who-to-ask/`);
    await reader.page.waitForFunction(() => document.documentElement.classList.contains('arranged'));
    assert.equal((await seenNow(reader.page)).includes(person!.phone!), shows, day);
  }
  await reader.context.close();
  await host.close();
});
