// Season on the pages: dates of the reader's district, plants in bloom, the ring by keyboard, the wall sheet, the calendars.
import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { test } from './fixtures.ts';
import ICAL from 'ical.js';
import type { Browser, BrowserContextOptions, Page } from '@playwright/test';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { choose, desk, nothing, oneOfEachKind, visit } from './visit.ts';

let browser: Browser;
let site: Site;
test.beforeAll(async ({ browser: launched, demo }) => {
  browser = launched;
  site = demo;
});

/** Opens a page at noon in Ohio on a day. */
async function at(
  path: string,
  day: string,
  look: (page: Page) => Promise<void>,
  options: BrowserContextOptions & { of?: Site } = {},
): Promise<void> {
  const { of = site, ...rest } = options;
  const context = await browser.newContext({ timezoneId: 'Asia/Tokyo', ...rest });
  const page = await context.newPage();
  await page.clock.setFixedTime(new Date(`${day}T16:00:00Z`));
  await page.goto(of.address + path);
  await look(page);
  await context.close();
}

const shown = (page: Page, selector: string): Promise<string[]> =>
  page
    .locator(selector)
    .evaluateAll((rows) => rows.filter((row) => row.checkVisibility()).map((row) => row.textContent!.trim().replace(/\s+/g, ' ')));

test.describe('the first page', () => {
  const days: { day: string; bloom: RegExp[]; not: RegExp[] }[] = [
    // Members' notes: dandelion from 14 April for 41 days, white clover from 23 May for 50; apple's first flowers 22 April to 12 May.
    { day: '2026-04-25', bloom: [/Dandelion/, /Apple/], not: [/White clover/, /Goldenrod/] },
    { day: '2026-06-15', bloom: [/White clover/], not: [/Dandelion/, /Apple/] },
    { day: '2026-09-20', bloom: [/Goldenrod/, /Aster/], not: [/White clover/] },
  ];
  for (const { day, bloom, not } of days) {
    test(`on ${day}: in bloom ${bloom.join(' ')}, not ${not.join(' ')}`, () =>
      at('', day, async (page) => {
        const [open = ''] = (await page.locator('[data-blooming]').innerText()).split(' Next: ');
        for (const plant of bloom) assert.match(open, plant);
        for (const plant of not) assert.doesNotMatch(open, plant);
      }));
  }

  test('in January nothing blooms, and it says so', () =>
    at('', '2026-01-10', async (page) => {
      assert.match(await page.locator('[data-blooming]').innerText(), /^Nothing that is listed here\. Next: .+, about [A-Z][a-z]+\s\d+\.$/);
    }));

  test('without script it leads to every plant with its days', () =>
    at(
      '',
      '2026-04-25',
      async (page) => {
        assert.equal(await page.locator('[data-blooming]').isVisible(), false);
        await page.getByRole('link', { name: 'What blooms when' }).click();
        assert.ok((await page.locator('main details[id], main li[id]').count()) >= 12);
      },
      { javaScriptEnabled: false },
    ));
});

test("a reader of the hill sees the hill's days and their basis on every kind of page; without a choice, those of the valley", async () => {
  const wrong = (district: string): string[] => {
    const own = (list: string): string =>
      (list.split(';').find((each) => each.startsWith(`${district} `)) ?? list.split(';')[0]!).slice(district.length + 1);
    const faults = [...document.querySelectorAll<HTMLElement>('[data-windows]')].flatMap((place) => {
      const [from, to] = own(place.dataset.windows!).split(' ');
      const words = (day: string): string =>
        new Date(`2001-${day}T12:00:00Z`).toLocaleDateString(document.documentElement.lang, {
          day: 'numeric',
          month: 'long',
          timeZone: 'UTC',
        });
      const expected = [words(from!), words(to!)];
      const text = place.textContent!.replaceAll('\u00a0', ' ').replace(/ ?– ?/, ' to ');
      const [first, last] = expected as [string, string];
      const right =
        from === to
          ? text === expected[0]
          : text === expected.join(' to ') ||
            text === `${Number(from!.slice(3))} to ${last}` ||
            text === `${first} to ${Number(to!.slice(3))}`;
      return right ? [] : [`"${text}" for ${from} to ${to}`];
    });
    for (const place of document.querySelectorAll<HTMLElement>('[data-by-district]'))
      if (!place.dataset.byDistrict!.split('|').includes(`${district}=${place.textContent}`))
        faults.push(`"${place.textContent}" is not said of ${district}`);
    if (!document.querySelector('.where [data-by-district]')!.textContent!.endsWith(district))
      faults.push('another district is named at the head');
    return faults;
  };
  for (const district of ['hill', 'valley']) {
    nothing(await visit({ browser, site, pages: oneOfEachKind(site), prepare: async (page) => {
      await page.goto(site.address);
      await choose(page, site, 'district', district);
    } }, (page) => page.evaluate(wrong, district))); // prettier-ignore
  }
  nothing(
    await visit({ browser, site, pages: oneOfEachKind(site), context: { javaScriptEnabled: false } }, (page) =>
      page.evaluate(wrong, 'valley'),
    ),
  );
});

test.describe('the year', () => {
  const halfOf = (day: string): string => `half-${Number(day.slice(0, 2))}-${day.slice(3) > '15' ? 2 : 1}`;

  test('24 half-months in order, each thing in the one in which it begins; for the hill it moves', () =>
    at('year/', '2026-04-25', async (page) => {
      const halves = await page.locator('.year-list > li').evaluateAll((rows) => rows.map((row) => row.id));
      assert.deepEqual(
        halves,
        Array.from({ length: 24 }, (_, index) => `half-${Math.floor(index / 2) + 1}-${(index % 2) + 1}`),
      );
      const places = (): Promise<[string, string][]> =>
        page
          .locator('[data-begins]')
          .evaluateAll((rows) =>
            rows.map((row) => [row.closest('.year-list > li')!.id, (row as HTMLElement).dataset.begins!] as [string, string]),
          );
      const valley = await places();
      assert.ok(valley.length >= 40);
      for (const [id, windows] of valley) assert.equal(id, halfOf(/^valley (\S+)/.exec(windows)![1]!));
      await choose(page, site, 'district', 'hill');
      const hill = await places();
      for (const [id, windows] of hill) assert.equal(id, halfOf(/;hill (\S+)/.exec(windows)![1]!));
      assert.notDeepEqual(hill.map(([id]) => id).sort(), valley.map(([id]) => id).sort());
      assert.deepEqual(
        await page
          .locator('[data-ring]')
          .evaluateAll((groups) => groups.map((group) => [group.getAttribute('data-ring'), getComputedStyle(group).display !== 'none'])),
        [
          ['valley', false],
          ['hill', true],
        ],
      );
    }));

  test('by keyboard: each month of the ring leads to its half-months, with and without script', async () => {
    for (const javaScriptEnabled of [true, false]) {
      await at(
        'year/',
        '2026-04-25',
        async (page) => {
          const links = await page
            .locator('.ring a')
            .evaluateAll((all) => all.map((link) => [link.getAttribute('aria-label'), link.getAttribute('href')]));
          assert.equal(links.length, 12);
          assert.deepEqual(links[4], ['May: what begins in May', '#half-5-1']);
          await page.locator('.ring a').nth(4).focus();
          await page.keyboard.press('Enter');
          await page.waitForURL(/#half-5-1$/);
          const top = await page.locator('#half-5-1').evaluate((row) => row.getBoundingClientRect().top);
          assert.ok(top >= -2 && top < 400, `${top}`);
        },
        { javaScriptEnabled, reducedMotion: 'reduce', viewport: desk },
      );
    }
  });

  for (const format of ['A4', 'Letter'] as const) {
    test(`ring and list print on one sheet, ${format}, for either district`, () =>
      at('year/', '2026-04-25', async (page) => {
        for (const district of ['valley', 'hill']) {
          await choose(page, site, 'district', district);
          const pdf = (await page.pdf({ format })).toString('latin1');
          assert.equal(pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length, 1, district);
        }
        await page.emulateMedia({ media: 'print' });
        assert.ok(await page.locator('.ring').isVisible());
        assert.equal((await shown(page, '.year-list > li > h2')).length, 24);
      }));
  }

  test('the curve has its numbers in a table: twelve months of lows and highs', () =>
    at('year/', '2026-04-25', async (page) => {
      assert.equal(await page.locator('main details tbody tr').count(), 12);
      assert.ok((await page.locator('main svg.chart .dot').count()) >= 12);
      assert.match(
        await page
          .locator('main svg.chart title')
          .first()
          .evaluate((title) => title.textContent!),
        /degree-days up to 2,\d\d0/,
      );
    }));
});

test('the bloom calendar: every plant, in order, with days and their basis, or the reason for none; a sum has its method and place', () =>
  at('year/bloom/', '2026-04-25', async (page) => {
    const plants = await page.locator('main :is(details, li)[id]').evaluateAll((rows) =>
      rows.map((row) => ({
        id: row.id,
        text: row.textContent!.replace(/\s+/g, ' '),
        from: row.querySelector<HTMLElement>('[data-windows]')?.dataset.windows?.split(' ')[1],
      })),
    );
    assert.deepEqual(
      plants.map(({ id }) => id).sort(),
      readdirSync(join(site.content, 'forage'))
        .map((file) => file.replace('.yaml', ''))
        .sort(),
    );
    const starts = plants.flatMap(({ from }) => from ?? []);
    assert.deepEqual(starts, [...starts].sort());
    for (const { id, text, from } of plants) {
      if (from)
        assert.match(
          text,
          /\(about [A-Z][a-z]+\s\d+, (from \d years of members’ dates|from monthly normals by degree-days), about \d+ days either way\)/,
          id,
        );
      else assert.match(text, /No sum was found|No date: |not reached/, id);
      if (/degree-days over/.test(text))
        assert.match(
          text,
          /degree-days over \d+ [FC](?:, up to \d+ [FC],)? from [A-Z][a-z]+\s\d+, .*(simple|low-floored|sine|modified|maximum|does not name)\)?; \S/,
          id,
        );
    }
  }));

test('the about page lists each anchor in every district with its basis', () =>
  at('about/', '2026-04-25', async (page) => {
    const rows = await page
      .locator('table[aria-label="The days of the year in each district"] tbody tr')
      .evaluateAll((all) => all.map((row) => [...row.children].map((cell) => cell.textContent!.replace(/\s+/g, ' ').trim())));
    assert.equal(rows.length, 11);
    for (const [name, valley, hill, from] of rows) {
      // A published day has no range. Every other has one.
      const form = from!.includes('from a published date')
        ? /^[a-z ]+: [A-Z][a-z]+\s\d+$/
        : /^[a-z ]+: [A-Z][a-z]+\s\d+ likely [A-Z][a-z]*\s?\d/;
      for (const cell of [valley, hill]) assert.match(cell!, form, name);
      assert.match(
        from!,
        /^the valley: (from \d years of members’ dates|from a published date|from monthly normals|a guess)the hill: \d days? (later|earlier) than in the valley/,
        name,
      );
    }
  }));

test('each district has its calendar, with the days of its pages', async () => {
  for (const district of ['valley', 'hill']) {
    const events = new ICAL.Component(ICAL.parse(site.read(`season-${district}.ics`)))
      .getAllSubcomponents('vevent')
      .map((event) => new ICAL.Event(event));
    assert.ok(events.length >= 8);
    for (const event of events) {
      const list = event.uid.split('.')[0]!;
      const window = new RegExp(`${district} (\\d\\d-\\d\\d) (\\d\\d-\\d\\d)`).exec(
        /data-windows="([^"]*)"/.exec(site.read(`lists/${list}/index.html`))![1]!,
      )!;
      const last = event.endDate.clone();
      last.adjust(-1, 0, 0, 0);
      assert.deepEqual([event.startDate.toString().slice(5), last.toString().slice(5)], [window[1], window[2]], event.uid);
    }
  }
});

test('a club of one district has one calendar; a part of the year that was guessed is said to be a guess; its summer lies over New Year', async () => {
  const southern = await fixtureSite('southern');
  assert.deepEqual(
    readdirSync(southern.folder).filter((file) => /^season-.*\.ics$/.test(file)),
    ['season-valley.ics'],
  );
  await at(
    'pests/varroa/',
    '2026-03-10',
    async (page) => {
      assert.match((await page.locator('main').innerText()).replace(/\s+/g, ' '), /21 January (?:–|to) 28 February \(a guess\)/);
    },
    { of: southern },
  );
  await at(
    'year/',
    '2026-03-10',
    async (page) => {
      assert.equal(await page.locator('.year-list > li').count(), 24);
      assert.match(await page.locator('main').innerText(), /autumn preparation/i);
    },
    { of: southern },
  );
  await southern.close();
});
