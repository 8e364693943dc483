// Decisions of pages at reading time: the part of the year, the due tasks, the next meeting, in the club's own time zone.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser, BrowserContext, Page } from '@playwright/test';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { tooLong } from './lengths.ts';
import { arranged, choose } from './visit.ts';

let browser: Browser;
test.beforeAll(async ({ browser: launched }) => {
  browser = launched;
});

/** Opens a page on a day, with the reader's clock in `zone`. */
async function on(instant: string, site: Site, path = '', zone = 'America/New_York'): Promise<{ page: Page; context: BrowserContext }> {
  const context = await browser.newContext({ timezoneId: zone });
  const page = await context.newPage();
  await page.clock.setFixedTime(new Date(instant));
  await page.goto(site.address + path);
  return { page, context };
}

interface Said {
  title: string;
  today: string;
  begun: string[];
  due: string[];
  out: string[];
  read: string[];
  meetings: string[];
}

/** The rows of a section: the title, and the small line below it after a comma. */
const said = async (page: Page): Promise<Said> => {
  // The first page's script is a file of its own.
  await arranged(page);
  return page.evaluate(() => {
    const rows = (id: string): string[] => {
      const section = document.querySelector<HTMLElement>(`[data-now=${id}]`)!;
      const text = (row: Element): string =>
        [...row.querySelectorAll('b, small')].map((part) => part.textContent!.trim().replaceAll('\u00a0', ' ')).join(', ');
      return section.checkVisibility() ? [...section.querySelectorAll('li')].map(text) : [];
    };
    const shown = [...document.querySelectorAll<HTMLElement>('[data-meeting-day], [data-next-meeting]')].filter((row) =>
      row.checkVisibility(),
    );
    return {
      // Without the joiner that keeps a hyphen whole.
      title: document.querySelector('h1')!.textContent!.replaceAll('\u2060', '').replaceAll('\u00a0', ' '),
      today: document.querySelector('[data-today]')!.textContent!.replaceAll('\u00a0', ' '),
      begun: rows('begun'),
      due: rows('due'),
      out: rows('out'),
      read: rows('read'),
      meetings: shown.map((row) => (row.querySelector('a') ?? row).textContent!.trim()),
    };
  });
};

test.describe('a club of the south', () => {
  let site: Site;
  test.beforeAll(async () => {
    site = await fixtureSite('southern');
  });
  test.afterAll(() => site?.close());

  // Noon in Auckland is the evening before in Greenwich.
  const days: { day: string; expect: Partial<Said> }[] = [
    {
      day: '2026-02-19T23:00Z',
      expect: {
        title: 'Dearth now. Autumn preparation starts in 9 days.',
        today: 'Friday 20 February',
        due: ['Autumn feed, 2 steps · from 1 March'],
        out: ['Varroa mites', 'Wasps at the entrance'],
      },
    },
    { day: '2026-03-10T00:00Z', expect: { due: ['Autumn feed, 2 steps · until 15 April'], out: ['Wasps at the entrance'] } },
    { day: '2026-04-15T00:00Z', expect: { due: ['Autumn feed, 2 steps · until 15 April'] } },
    { day: '2026-04-16T00:00Z', expect: { due: [], out: ['Wasps at the entrance'] } },
    { day: '2026-07-20T00:00Z', expect: { due: [], out: [] } },
    { day: '2026-07-21T00:00Z', expect: { due: ['First look of spring, 5 steps · from 11 August'] } },
    { day: '2026-12-31T00:00Z', expect: { read: ['Mānuka, kānuka and the January flow'], out: [] } },
    { day: '2027-01-01T00:00Z', expect: { read: ['Mānuka, kānuka and the January flow'] } },
    { day: '2028-02-28T23:00Z', expect: { today: 'Tuesday 29 February', due: ['Autumn feed, 2 steps · from 1 March'] } },
  ];
  for (const { day, expect } of days) {
    test(`on ${day}: ${Object.entries(expect)
      .map(([key, value]) => `${key} ${String(value) || 'nothing'}`)
      .join('; ')}`, async () => {
      const { page, context } = await on(day, site);
      const got = await said(page);
      assert.deepEqual(Object.fromEntries(Object.keys(expect).map((key) => [key, got[key as keyof Said]])), expect);
      await context.close();
    });
  }

  for (const zone of ['America/New_York', 'Asia/Tokyo', 'Australia/Sydney', 'Pacific/Auckland', 'Pacific/Honolulu']) {
    test(`read in ${zone}, the day changes at midnight in Auckland`, async () => {
      const late = await on('2026-02-28T10:59:59Z', site, '', zone);
      assert.equal((await said(late.page)).today, 'Saturday 28 February');
      await late.context.close();
      const early = await on('2026-02-28T11:00:00Z', site, '', zone);
      assert.equal((await said(early.page)).today, 'Sunday 1 March');
      await early.context.close();
    });
  }

  test('the phases of its year and its words are its own', async () => {
    const { page, context } = await on('2026-03-10T00:00Z', site);
    assert.equal(await page.locator('[data-ring-phase]').textContent(), 'autumn preparation');
    assert.doesNotMatch(await page.locator('body').innerText(), /\bfall\b/i);
    assert.equal(await page.locator('.where').count(), 0);
    assert.equal(await page.locator('.ring .now').getAttribute('data-month'), '3');
    await context.close();
  });
});

test.describe('the demo club', () => {
  let site: Site;
  test.beforeAll(async ({ demo }) => {
    site = demo;
  });

  test('without script nothing is called current, and the page leads to the year in order', async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(site.address);
    const got = await said(page);
    assert.equal(got.title, 'The Tamarack Almanac');
    assert.deepEqual([got.begun, got.due, got.out, got.read, got.today], [[], [], [], [], '']);
    assert.ok(got.meetings.length >= 6);
    assert.equal(await page.locator('.ring .now').count(), 0);
    await page.getByRole('link', { name: 'The whole year', exact: true }).click();
    assert.ok((await page.locator('[data-begins]').count()) >= 20);
    await context.close();
  });

  test('three of each at most, each page once, and no longer than that page may be', async () => {
    const context = await browser.newContext({ timezoneId: 'America/New_York', viewport: { width: 390, height: 844 } });
    const page = await context.newPage();
    for (const day of ['2026-01-15', '2026-04-15', '2026-07-15', '2026-09-12', '2026-11-28']) {
      await page.clock.setFixedTime(new Date(`${day}T16:00Z`));
      await page.goto(site.address);
      const { due, out, read, meetings } = await said(page);
      assert.ok(due.length > 0 && due.length <= 3 && out.length <= 3 && read.length <= 5 && meetings.length === 1, day);
      const led = await page.locator('main [data-now] li a').evaluateAll((links) => links.map((link) => link.getAttribute('href')));
      assert.equal(new Set(led).size, led.length, day);
      assert.deepEqual(await tooLong(page, ''), [], day);
    }
    await context.close();
  });

  test('a list that a reader has begun stands above the others, with the steps that are left', async () => {
    const { page, context } = await on('2026-04-15T16:00Z', site, 'lists/package-arrival/');
    await page.locator('input[data-tick]').nth(0).check();
    await page.locator('input[data-tick]').nth(1).check();
    await page.goto(site.address);
    const { begun, due } = await said(page);
    assert.deepEqual(begun, ['A package of bees: the evening you install it, 26 of 28 steps left · until May 10']);
    assert.ok(!due.some((row) => row.startsWith('A package of bees')));
    await context.close();
  });

  test('a list that starts on the day of its reader is there once it is begun, without a window', async () => {
    const { page, context } = await on('2026-04-15T16:00Z', site, 'lists/package-first-six-weeks/');
    await page.locator('input[data-tick]').first().check();
    await page.goto(site.address);
    const { begun, due } = await said(page);
    assert.equal(begun.length, 1);
    assert.match(begun[0]!, /^A package: the first six weeks, \d+ of \d+ steps left$/);
    assert.ok(!due.some((row) => row.startsWith('A package: the first six weeks')));
    await context.close();
  });

  // The yard day of 16 May is the next meeting until that day is over in Ohio, in any reader's time zone.
  const turns: [string, string[]][] = [
    ['2026-05-16T16:00Z', ['Yard']],
    ['2026-05-17T03:59Z', ['Yard']],
    // The next one is called off, so the one after it is shown too.
    ['2026-05-17T04:00Z', ['Queens', 'Mite count']],
    ['2026-11-13T04:59Z', ['Annual']],
    ['2026-11-13T05:00Z', ['Winter']],
    ['2027-02-12T04:59Z', ['Ordering']],
    ['2027-02-12T05:00Z', ['No further meeting is set in this edition.']],
  ];
  for (const [instant, words] of turns) {
    for (const zone of ['America/New_York', 'Asia/Tokyo', 'Australia/Sydney']) {
      test(`next meeting at ${instant}, read in ${zone}: ${words}`, async () => {
        const { page, context } = await on(instant, site, '', zone);
        const { meetings } = await said(page);
        assert.equal(meetings.length, words.length, meetings.join('; '));
        for (const [at, word] of words.entries()) assert.match(meetings[at]!, new RegExp(word, 'i'));
        await context.close();
      });
    }
  }

  // Brood is least in late November and December: Avitabile (1978), from the north-east of the US, as quoted elsewhere; the club's own guess.
  for (const [instant, open] of [
    ['2026-11-28T16:00Z', true],
    ['2026-12-20T16:00Z', true],
    ['2026-10-20T16:00Z', false],
    ['2027-01-10T16:00Z', false],
  ] as const) {
    test(`at ${instant} the broodless weeks are ${open ? 'due' : 'not due'}`, async () => {
      const { page, context } = await on(instant, site);
      assert.equal(
        (await said(page)).due.some((row) => /^Mites in the broodless weeks, .* until /.test(row)),
        open,
      );
      await context.close();
    });
  }

  test('a meeting is on its own day in every time zone', async () => {
    for (const zone of ['America/New_York', 'Asia/Tokyo', 'Australia/Sydney']) {
      const { page, context } = await on('2026-04-20T12:00Z', site, 'meetings/2026-05-16-yard-day/', zone);
      assert.match(await page.locator('main time').first().innerText(), /^Saturday, May\s16,\s2026, /);
      await context.close();
    }
  });

  test('the list of meetings has past ones below those to come, and the first page shows one that is called off before the next', async () => {
    const { page, context } = await on('2026-05-17T12:00Z', site, 'meetings/');
    const days = (list: string) =>
      page.locator(`${list} [data-meeting-day]`).evaluateAll((all) => all.map((row) => (row as HTMLElement).dataset.meetingDay!));
    const [ahead, past] = [await days('.programme'), await days('[data-past]')];
    assert.ok(ahead.length > 0 && past.length > 0);
    assert.deepEqual(ahead, [...ahead].sort());
    assert.deepEqual(past, [...past].sort().reverse());
    assert.ok(ahead.every((day) => day >= '2026-05-17') && past.every((day) => day < '2026-05-17'));
    await page.goto(site.address);
    assert.deepEqual(await page.locator('[data-meetings] li:visible s').allInnerTexts(), ['Queens, swarms and the colony left behind']);
    assert.deepEqual(
      await page.locator('[data-meetings] li:visible').evaluateAll((all) => all.map((row) => (row as HTMLElement).dataset.meetingDay)),
      ['2026-06-11', '2026-07-18'],
    );
    await context.close();
  });

  test("the reader's district is stored, and every date follows it", async () => {
    const { page, context } = await on('2026-04-25T16:00Z', site);
    const valley = await said(page);
    assert.equal(valley.title, 'Swarming now. Main flow starts on May 20.');
    assert.match(valley.today, /dates for the valley$/);
    await choose(page, site, 'district', 'hill');
    const hill = await said(page);
    assert.equal(hill.title, 'Build-up now. Swarming starts in 5 days.');
    assert.match(hill.today, /dates for the hill$/);
    assert.notDeepEqual(hill.due, valley.due);
    await page.reload();
    assert.deepEqual(await said(page), hill);
    await page.goto(`${site.address}lists/swarm-season/`);
    const windows = page.locator('main [data-windows]').first();
    assert.match((await windows.getAttribute('data-windows'))!, /^valley \d\d-\d\d \d\d-\d\d;hill /);
    const [, from, to] = /hill (\d\d-\d\d) (\d\d-\d\d)/.exec((await windows.getAttribute('data-windows'))!)!;
    const [text, first, last] = [await windows.innerText(), Number(from!.slice(3)), Number(to!.slice(3))];
    assert.match(text, new RegExp(`^[A-Z][a-z]+\\s${first}(?:\\s– [A-Z][a-z]+\\s|–)${last}$`));
    await choose(page, site, 'district', 'valley');
    await page.goto(site.address);
    assert.deepEqual(await said(page), valley);
    await context.close();
  });

  test('a page past its next check says so when it is read', async () => {
    const before = await on('2026-06-01T12:00Z', site, 'pests/varroa/');
    assert.doesNotMatch(await before.page.locator('.checked').innerText(), /past/);
    await before.context.close();
    const later = await on('2027-12-01T12:00Z', site, 'pests/varroa/');
    assert.match(await later.page.locator('.checked').innerText(), /: past\. Ask before you rely on this page\./);
    await later.context.close();
  });
});

test('a meeting of two days is next until its last day is over', async () => {
  const site = await fixtureSite('sub-folder');
  for (const [instant, words] of [
    ['2026-06-14T22:59Z', 'Open hives & tea < 4 pm'],
    ['2026-06-14T23:00Z', 'No further meeting is set in this edition. Ask the club.'],
  ] as const) {
    const { page, context } = await on(instant, site, '', 'Asia/Tokyo');
    assert.deepEqual((await said(page)).meetings, [words]);
    await context.close();
  }
  await site.close();
});

test('a keyboard reader who comes back to the first page is still on the same row', async ({ demo }) => {
  const { page, context } = await on('2026-04-20T12:00:00-04:00', demo);
  await said(page);
  const row = page.locator('[data-now=due] li a').nth(1);
  await row.focus();
  const href = await row.getAttribute('href');
  // A browser that kept the page says so when the reader comes back. The driver keeps no pages.
  await page.evaluate(() => window.dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true })));
  assert.equal(await page.evaluate(() => document.activeElement?.getAttribute('href')), href);
  await context.close();
});

test('29 February is an ordinary day', async () => {
  const site = await fixtureSite('hostile');
  const { page, context } = await on('2028-02-29T15:00Z', site);
  const { today, due } = await said(page);
  assert.match(today, /^Tuesday, February 29/);
  // From 28 February to 1 March: the day between is included.
  assert.match(due[0]!, /^Steps: odd <b>but<\/b> legal & "quoted", .*until March 1$/);
  await context.close();
  await site.close();
});

test('the first page of a club without meetings is arranged', async ({ browser, demo }) => {
  const page = await browser.newPage();
  const broken: string[] = [];
  page.on('pageerror', (error) => broken.push(String(error)));
  await page.route(demo.address, async (route) => {
    const response = await route.fetch();
    const text = await response.text();
    // The part that such a club has not.
    const body = text.replace(/<p data-next-meeting[^>]*><\/p>/, '');
    assert.notEqual(body, text);
    await route.fulfill({ response, body });
  });
  await page.goto(demo.address);
  await arranged(page);
  assert.deepEqual(broken, []);
  await page.close();
});
