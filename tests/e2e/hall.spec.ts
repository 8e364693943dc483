// The hall screen: what is on the wall is legible and whole, the clicker goes through a page, and every phone gets the page.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { expect, type Page } from '@playwright/test';
import decodeQR from 'qr/decode.js';
import sharp from 'sharp';
import { test } from './fixtures.ts';

const WALL = { width: 1920, height: 1080 };
const DAY = new Date('2026-06-04T14:00:00Z');

/** A tab that came from the first page of the hall. */
async function inHall(page: Page, url: string): Promise<void> {
  await page.setViewportSize(WALL);
  await page.clock.setFixedTime(DAY);
  await page.goto(new URL('hall/', url).href);
  await page.locator('.hall-bar').waitFor();
}

async function readCode(page: Page, place: string): Promise<string> {
  const { data, info } = await sharp(await page.locator(place).screenshot())
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return decodeQR({ width: info.width, height: info.height, data: new Uint8ClampedArray(data) });
}

const shownText = (page: Page) => page.locator('main > .text').innerText();
const counter = (page: Page) => page.locator('.hall-bar [role=status]').innerText();

/** Text that is drawn, is not in the bar, and is smaller than so many pixels. */
const smallerThan = (px: number): string[] =>
  [...document.querySelectorAll<HTMLElement>('.page *')]
    .filter((node) => [...node.childNodes].some((child) => child.nodeType === 3 && child.textContent!.trim()))
    .filter((node) => node.checkVisibility() && !node.closest('svg, .demonstration, .visually-hidden'))
    .filter((node) => parseFloat(getComputedStyle(node).fontSize) < px)
    .map((node) => `${node.tagName} ${node.textContent!.trim().slice(0, 40)}`);

test('the first page of the hall is whole on a wall of 1280 to 3840 px, and its code is the address of the almanac', async ({
  page,
  demo,
}) => {
  await page.addInitScript(() => {
    const asked: string[] = [];
    const wakeLock = { request: async (kind: string) => void asked.push(kind) };
    Object.assign(window, { asked });
    Object.defineProperty(Navigator.prototype, 'wakeLock', { get: () => wakeLock });
  });
  await inHall(page, demo.address);
  assert.deepEqual(await page.evaluate(() => (window as unknown as { asked: string[] }).asked), ['screen'], 'the screen stays on');
  for (const width of [1280, 1920, 3840]) {
    await page.setViewportSize({ width, height: (width / 16) * 9 });
    const { scrollHeight, scrollWidth } = await page.evaluate(() => ({
      scrollHeight: document.documentElement.scrollHeight,
      scrollWidth: document.documentElement.scrollWidth,
    }));
    assert.deepEqual({ scrollHeight, scrollWidth }, { scrollHeight: (width / 16) * 9, scrollWidth: width });
    // From ten metres: 27 px for text and 21 px for what stands beside it, where the wall has 1,920 px.
    assert.deepEqual(await page.evaluate(smallerThan, (21 / 1920) * width - 0.1), []);
  }
  await page.setViewportSize(WALL);
  assert.match(await page.locator('h1').innerText(), /^Main flow now\./);
  const address = await readCode(page, '.hall-phones .qr');
  assert.equal(new URL(address).pathname, new URL(demo.address).pathname);
  assert.equal(await page.locator('[data-hall-address]').innerText(), address.replace(/^https?:\/\/|\/$/g, ''));
});

test('a checklist goes on by the keys of a clicker, step by step, and no step is ticked', async ({ page, demo }) => {
  await inHall(page, demo.address);
  await page.goto(new URL('lists/package-arrival/', demo.address).href);
  const steps = await page.locator('.step').count();
  const seen: string[] = [];
  for (let slide = 0; slide < 40; slide += 1) {
    const before = await counter(page);
    const step = await page.locator('.step:visible .step-words').allInnerTexts();
    assert.ok(step.length <= 1, 'one step at a time');
    seen.push(...step);
    for (let press = 0; press < 9 && (await counter(page)) === before; press += 1) await page.keyboard.press('PageDown');
    if ((await counter(page)) === before) break;
  }
  assert.equal(seen.length, steps);
  assert.equal(new Set(seen).size, steps);
  await page.keyboard.press('Home');
  assert.match(await counter(page), /^1 of/);
  await page.goto(`${page.url()}#step-cluster`);
  await page.locator('.step:visible').click();
  assert.equal(await page.locator('.step input:checked').count(), 0);
  const at = await counter(page);
  // A letter is no shortcut (WCAG 2.2, 2.1.4).
  await page.keyboard.type('abcdefghijklmnopqrstuvwxyz.');
  assert.equal(await counter(page), at);
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('PageUp');
  assert.equal(await counter(page), at);
});

test('look-alikes stand side by side, dark and light, and the code of the page is read back', async ({ page, demo }) => {
  await inHall(page, demo.address);
  await page.goto(new URL('pests/american-foulbrood/#side-by-side', demo.address).href);
  await page.locator('.hall-bar [role=status]').waitFor();
  const text = await shownText(page);
  for (const name of ['American foulbrood', 'European foulbrood', 'Sacbrood', 'Chalkbrood']) assert.ok(text.includes(name), name);
  assert.ok(!text.includes('What not to do'), 'the other parts are away');
  const isWithin = await page.locator('.signs-beside').evaluate((table) => table.scrollWidth <= table.parentElement!.clientWidth);
  assert.ok(isWithin, 'no column is cut');
  const paper = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  const light = await paper();
  await page.getByRole('button', { name: 'Dark or light' }).click();
  assert.notEqual(await paper(), light);
  await page.getByRole('button', { name: 'Code for phones' }).click();
  await page.locator('dialog .qr').waitFor();
  assert.equal(await readCode(page, 'dialog .qr'), page.url());
  await page.keyboard.press('Escape');
  await page.locator('dialog').waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Leave the hall' }).click();
  assert.ok((await shownText(page)).includes('What not to do'));
  await page.reload();
  assert.equal(await page.locator('.hall-bar').count(), 0);
});

test('a count that the hall calls out is judged while it is typed', async ({ page, demo }) => {
  await inHall(page, demo.address);
  await page.goto(new URL('work-it-out/mite-count/', demo.address).href);
  await page.locator('input[name=mites]').fill('3');
  await page.getByRole('button', { name: 'Calculate' }).click();
  const verdict = page.locator('[data-part=status]');
  await expect(verdict).not.toBeEmpty();
  const low = await verdict.innerText();
  await page.locator('input[name=mites]').fill('30');
  await expect(verdict).not.toHaveText(low);
  assert.equal(await page.locator('[data-part=status]').evaluate((line) => parseFloat(getComputedStyle(line).fontSize) >= 50), true);
});

test('the counts of an evening: typed once, drawn on the wall, and saved as the file of the club', async ({ page, demo }) => {
  await inHall(page, demo.address);
  await page.goto(new URL('work-it-out/count-day/', demo.address).href);
  await page.locator('#box-counts-list').evaluate((box) => box.closest('details')!.setAttribute('open', ''));
  await page.locator('#box-counts-list').fill('Oak 9 300\nAsh 0 300\nElm 25 310');
  await page.locator('#box-date').fill('August 15, 2026');
  await page.locator('[name=phase]').selectOption('fall-preparation');
  await page.getByRole('button', { name: 'Calculate' }).click();
  await expect(page.locator('[data-part=status]')).toHaveText('2 of 3 colonies are at or over 2 per hundred bees.');
  assert.equal(await page.locator('.result .chart .dot').count(), 3);
  const [chart, next] = [await page.locator('.result .chart').boundingBox(), await page.locator('.result .next').boundingBox()];
  assert.ok(chart!.y < next!.y && chart!.y + chart!.height < WALL.height, 'the drawing is on the wall without scrolling');
  const [file] = await Promise.all([page.waitForEvent('download'), page.locator('[data-counts-file]').click()]);
  assert.equal(file.suggestedFilename(), 'counts-2026-08-15.csv');
  const text = readFileSync((await file.path())!, 'utf8');
  assert.equal(
    text,
    'date,district,mites,bees,method\n2026-08-15,valley,9,300,wash\n2026-08-15,valley,0,300,wash\n2026-08-15,valley,25,310,wash\n',
  );
  // The phone that counted hands its numbers on as a code.
  await page.getByRole('button', { name: 'Code for phones' }).click();
  await page.locator('dialog .qr').waitFor();
  assert.match(decodeURIComponent(await readCode(page, 'dialog .qr')), /#counts=Oak:9\/300;Ash:0\/300;Elm:25\/310&date=2026-08-15/);
});
