/*
 * Fuzzing for injection: generated text from an address, a file or a form field is never treated as markup or code, in a browser with our
 * content policy.
 */
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import fc from 'fast-check';
import type { Browser, BrowserContext, Page } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { calculators } from './calculator-examples.ts';
import { harmDone, harmful, watchFor } from './harmful.ts';
import { nothing, phone } from './visit.ts';

/** Random in every run. A failure prints the text that caused it. */
const samples = <T>(of: fc.Arbitrary<T>, count: number): T[] => fc.sample(of, { numRuns: count });

/** Sets one fragment after another and returns those that did harm. Runs inside the page. */
async function tryTails(tails: string[]): Promise<string[]> {
  const here = globalThis as unknown as { harmDone: () => string[] };
  const found: string[] = [];
  for (const tail of tails) {
    location.hash = tail;
    await new Promise((resolve) => setTimeout(resolve));
    await new Promise((resolve) => setTimeout(resolve));
    found.push(...here.harmDone().map((harm) => `${JSON.stringify(tail)}: ${harm}`));
  }
  return found;
}

const withJudge = (page: Page): Promise<void> => page.evaluate(`globalThis.harmDone = ${harmDone.toString()}`).then(() => undefined);

/** Percent-encodes text, including half of a surrogate pair. */
function safeEncoded(text: string): string {
  return encodeURIComponent(text.toWellFormed());
}

const words = fc.oneof(harmful, fc.constant(''), fc.constant('2026-04-18'));
type Kind = <T>(of: fc.Arbitrary<T>) => fc.Arbitrary<unknown>;
const asItShouldBe: Kind = (of) => of;
/** Mostly valid content, sometimes another kind. */
const orOdd: Kind = (of) => fc.oneof({ weight: 40, arbitrary: of }, { weight: 1, arbitrary: fc.constantFrom(5, null, {}, [], true) });
const byName = <T>(of: fc.Arbitrary<T>): fc.Arbitrary<Record<string, T>> =>
  fc
    .array(fc.tuple(fc.oneof(harmful, fc.constantFrom('queen', 'the first', 'comb')), of), { maxLength: 3 })
    .map((pairs) => Object.fromEntries(pairs));
/** A saved file with a valid frame and any text in it, each part as `kind` makes it. */
function savedFile(kind: Kind): fc.Arbitrary<string> {
  const [text, day] = [kind(words), kind(fc.constantFrom('2026-04-18', '2025-12-31'))];
  const texts = kind(byName(text));
  const run = fc.record(
    {
      name: text,
      day,
      filed: day,
      choices: texts,
      ticks: kind(byName(kind(fc.record({ on: day, of: text })))),
      notes: texts,
      asked: texts,
    },
    { requiredKeys: ['name', 'ticks'] },
  );
  return fc.record({ yard: text, saved: text, open: text, runs: byName(run) }).map(({ yard, saved, runs, open }) =>
    JSON.stringify({
      format: 'almanac-runs',
      version: 2,
      club: 'tamarack-county',
      saved,
      yard,
      lists: { 'package-first-six-weeks': { open, runs } },
    }),
  );
}

/** Defines the tests for the file that calls it, with `times` as many tries as the minimum. */
export function testAttacks(times: number): void {
  let site: Site;
  let browser: Browser;
  test.beforeAll(async ({ browser: launched, demo }) => {
    site = demo;
    browser = launched;
  });

  /** A page that reports every harm, opened at a path below the first page. */
  async function watched(path: string): Promise<{ page: Page; context: BrowserContext; told: string[] }> {
    const context = await browser.newContext({ viewport: phone, reducedMotion: 'reduce' });
    const page = await context.newPage();
    const told = await watchFor(page);
    await page.goto(site.address + path);
    return { page, context, told };
  }

  test('values of every calculator in an address', async () => {
    const { page, context, told } = await watched('about/');
    for (const { slug, values, wide, faulty } of calculators) {
      const names = [...new Set([values, wide, faulty].flatMap((tail) => tail.split('&').map((pair) => pair.split('=')[0]!)))];
      await page.goto(`${site.address}work-it-out/${slug}/#${values}`);
      await page.waitForFunction(() => document.querySelector('[data-part="status"]')?.textContent !== '');
      await withJudge(page);
      const pairs = fc.array(fc.tuple(fc.oneof(fc.constantFrom(...names), harmful), harmful, fc.boolean()), { minLength: 1, maxLength: 4 });
      const tails = samples(pairs, 8 * times).map((made) =>
        made.map(([name, value, raw]) => `${name}=${raw ? value : safeEncoded(value)}`).join('&'),
      );
      nothing([...(await page.evaluate(tryTails, tails)), ...told]);
    }
    await context.close();
  });

  test('signs in an address', async () => {
    const { page, context, told } = await watched('signs/');
    await withJudge(page);
    const tails = samples(fc.tuple(harmful, harmful, harmful), 15 * times).map(
      ([there, not, phase]) => `there=${safeEncoded(there)},yellow-legs&not=${not}&phase=${safeEncoded(phase)}`,
    );
    nothing([...(await page.evaluate(tryTails, tails)), ...told]);
    await context.close();
  });

  test('runs of a list in an address, imported', async () => {
    const { page, context, told } = await watched('lists/package-first-six-weeks/');
    await withJudge(page);
    const part = fc.oneof(harmful, fc.constantFrom('', '2026-04-18', '2026-99-99', 'candy,drawn'));
    const tails = samples(fc.tuple(part, part, part, part), 20 * times).map(
      ([day, choices, ticks, name]) => `run=${day};${choices};${ticks};${safeEncoded(name)}`,
    );
    nothing([...(await page.evaluate(tryTails, tails)), ...told]);
    for (const name of samples(harmful, 2 * times)) {
      await page.goto('about:blank');
      await page.goto(
        `${site.address}lists/package-first-six-weeks/#run=2026-04-18;candy,drawn;;${encodeURIComponent(name.toWellFormed())}`,
      );
      // The first is applied at once. Later ones are offered.
      await page.locator('.notice.shared').waitFor();
      const use = page.getByRole('button', { name: 'Use it here' });
      if (await use.isVisible()) await use.click();
      await page.reload();
      nothing([...(await page.evaluate(harmDone)), ...told]);
    }
    await context.close();
  });

  test('a saved file with any content is opened and imported, and the list still works when it is opened again', async () => {
    const { page, context, told } = await watched('lists/package-first-six-weeks/');
    let taken = 0;
    for (const text of [...samples(savedFile(asItShouldBe), 2 * times), ...samples(savedFile(orOdd), 3 * times)]) {
      await page.locator('#opened-file').setInputFiles({ name: 'runs.json', mimeType: 'application/json', buffer: Buffer.from(text) });
      await page.locator('[data-status]').filter({ hasText: /\S/ }).waitFor();
      const take = page.getByRole('button', { name: 'Use it here' });
      if (await take.isVisible()) {
        await take.click();
        taken += 1;
      }
      await page.reload();
      for (const summary of await page.locator('.desk summary').all()) await summary.click();
      await page.locator('[data-action=notes]').click();
      await page.locator('.note-field, [data-status]').first().waitFor();
      await page.locator('[data-action=calendar]').click();
      const box = page.locator('input[data-tick]:enabled').first();
      if ((await box.count()) > 0) await box.click();
      const text2 = await page.locator('main').innerText();
      nothing(
        [
          ...(await page.evaluate(harmDone)),
          ...told,
          ...(/\[object|undefined|NaN/.test(text2) ? ['the page shows a value that is none'] : []),
        ].map((harm) => `${text}: ${harm}`),
      );
      await page.evaluate(() => localStorage.clear());
      await page.reload();
    }
    assert.ok(taken >= 2 * times, `${taken} files were taken over`);
    await context.close();
  });

  test('search words', async () => {
    const { page, context, told } = await watched('search/');
    for (const typed of samples(harmful, 8 * times)) {
      await page.goto(
        `${site.address}search/?q=${encodeURIComponent(typed.toWellFormed())}&kind=${encodeURIComponent(typed.toWellFormed())}`,
      );
      await page.waitForFunction(
        () =>
          document.querySelector('[data-search-status]')?.textContent !== '' ||
          document.querySelector<HTMLElement>('[data-search-none]')?.hidden === false ||
          document.querySelector<HTMLInputElement>('main input[type=search]')?.value.trim() === '',
      );
      nothing([...(await page.evaluate(harmDone)), ...told].map((harm) => `${JSON.stringify(typed)}: ${harm}`));
    }
    await context.close();
  });

  test('the test detects each kind of harm', async () => {
    const context = await browser.newContext({ bypassCSP: true });
    const page = await context.newPage();
    const told = await watchFor(page);
    await page.goto(`${site.address}about/`);
    await page.evaluate(() =>
      document
        .querySelector('main')!
        .insertAdjacentHTML(
          'beforeend',
          '<planted-part></planted-part><img src=/planted onerror=planted()><a href="javascript:planted()">x</a><iframe></iframe>',
        ),
    );
    await page.waitForFunction(() => (globalThis as unknown as { told: string[] }).told.length > 0);
    const found = [...(await page.evaluate(harmDone)), ...told].join('\n');
    for (const each of [
      /<planted-part> came/,
      /<img onerror> came/,
      /it runs/,
      /<a href="javascript:planted\(\)"> came/,
      /<iframe> came/,
      /it asks for .*\/planted/,
    ])
      assert.match(found, each);
    await context.close();
  });
}
