// Sign finder: a key without script, and in a browser an order of what to check that never names what it is.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser, Page } from '@playwright/test';
import { readFolder } from '../../src/source/folder.ts';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { nothing, open } from './visit.ts';

type Listed = { sign: string; strength: string; shows: string };
let site: Site;
let browser: Browser;
let bulletins: { id: string; title: string; status: string; signs: Listed[] }[];
let signs: Map<string, { title: string; usually?: string }>;

test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
  const { entries } = readFolder(site.content);
  const of = (collection: string) =>
    entries.filter((entry) => entry.collection === collection).map(({ id, fields }) => ({ id, ...(fields.value as Record<string, any>) }));
  bulletins = of('bulletins')
    .filter(({ draft }: any) => !draft)
    .map((each: any) => ({ ...each, signs: each.signs ?? [] }));
  signs = new Map(of('signs').map((each: any) => [each.id, each]));
});

const MISS =
  /This list can miss things\. If brood looks or smells wrong, close the hive, keep the tools there, and call the state apiary inspection office, 330-555-0101\./;

/** The text of the page once these signs are ticked. */
async function said(
  hash: string,
  look: (page: Page) => Promise<void> = async () => {},
): Promise<{ headline: string; found: string[]; why: string[]; text: string; usually: string; address: string }> {
  const { page, context } = await open(browser, `${site.at('/signs/')}${hash}`);
  await look(page);
  const told = await page.evaluate(() => ({
    headline: document.querySelector('[data-part="status"]')!.textContent!,
    found: [...document.querySelectorAll('[data-part="found"] > details h3')].map((link) => link.textContent!),
    why: [...document.querySelectorAll('[data-part="found"] > details [data-part="why"]')].map((place) => (place as HTMLElement).innerText),
    text: document.querySelector<HTMLElement>('.result')!.innerText,
    usually: document.querySelector<HTMLElement>('[data-part="usually"]')!.innerText,
    address: location.hash,
  }));
  await context.close();
  return told;
}

test('without script it is a key: each sign with what it points at, each trouble with its signs, its test, its look-alikes and whom to ask', async () => {
  const { page, context } = await open(browser, site.at('/signs/'), { javaScriptEnabled: false });
  const key = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.signs .step')].map((row) => ({ id: row.id, text: row.textContent!.replace(/\s+/g, ' ') })),
  );
  assert.ok(key.length >= 40, `${key.length} signs`);
  const cards = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('[data-trouble]')].map((card) => ({
      id: card.dataset.trouble!,
      text: card.textContent!.replace(/\s+/g, ' '),
    })),
  );
  await context.close();
  nothing(
    [...signs].flatMap(([id, { title, usually }]) => {
      const row = key.find((each) => each.id === id);
      if (!row?.text.includes(title)) return [`${id} is not in the key`];
      const points = bulletins.filter((bulletin) => bulletin.signs.some(({ sign, shows }) => sign === id && shows !== 'never'));
      return [
        ...(usually && !row.text.includes(usually) ? [`${id}: not what it mostly is`] : []),
        ...(usually
          ? []
          : points.filter((bulletin) => !row.text.includes(bulletin.title)).map((bulletin) => `${id}: no ${bulletin.title}`)),
      ];
    }),
  );
  nothing(
    bulletins
      .filter((bulletin) => bulletin.signs.length > 0)
      .flatMap((bulletin) => {
        const text = cards.find((card) => card.id === bulletin.id)?.text ?? '';
        const wanted = [
          'Field test:',
          'Looks like it:',
          bulletin.status === 'law' ? 'Close the hive, leave the tools there, and call:' : 'Ask:',
          ...bulletin.signs.map(({ sign }) => signs.get(sign)!.title),
        ];
        return wanted.filter((words) => !text.includes(words)).map((words) => `${bulletin.id}: no "${words}"`);
      }),
  );
});

test('every bulletin can be found by its signs', () =>
  assert.deepEqual(
    bulletins.filter((bulletin) => bulletin.signs.length === 0).map(({ id }) => id),
    [],
  ));

test('reportable troubles come first where any sign fits', async () => {
  const { headline, found, why, text } = await said('#there=pierced-caps,chalky-lumps,rattling-comb');
  const law = found.map((title) => bulletins.find((bulletin) => bulletin.title === title)!.status === 'law');
  const foulbrood = found.indexOf('American foulbrood');
  assert.ok(law[0] && foulbrood >= 0 && found.includes('Chalkbrood'), found.join());
  assert.deepEqual(
    law,
    [...law].sort((a, b) => Number(b) - Number(a)),
  );
  assert.equal(headline, `Check these ${found.length}, this first: ${found[0]}.`);
  assert.match(why[foulbrood]!, /Fits: Caps have holes or ragged edges \(often\)\./);
  assert.match(why[foulbrood]!, /Does not fit: Hard white, gray or black lumps in cells, which never shows in it\./);
  assert.match(text, MISS);
});

test('then the one with the most points comes first: trembling, black and crawling is not poison before paralysis', async () => {
  const { found } = await said('#there=trembling,black-shiny,crawling');
  // 3x4 + 3x3 + 2x3 = 27 for paralysis; 1x2 + 1x3 - 1 = 4 for a pesticide kill.
  assert.equal(found[0], 'Chronic paralysis');
  assert.ok(found.indexOf('Pesticide kill') > 0);
});

test('no match, and only harmless signs, say that the list can miss things and whom to call', async () => {
  const none = await said('#there=drones-out');
  assert.equal(none.headline, 'Mostly nothing, and nothing else in this list fits.');
  assert.match(none.usually, /Drones are dragged out alive: This is mostly normal in fall/);
  assert.match(none.text, MISS);
  const harmless = await said('#there=cocoons');
  assert.equal(harmless.headline, 'Only harmless things fit: Wax moth.');
  assert.match(harmless.text, MISS);
});

test('a press that a sign is absent changes the order and the address', async () => {
  const { found, address, text } = await said('#there=crawling', async (page) => {
    const before = await page.locator('[data-part="found"] > details h3').allTextContents();
    assert.ok(before.includes('Chronic paralysis'));
    await page.getByRole('button', { name: 'It is not there: Bees shake all over' }).click();
  });
  assert.match(address, /not=trembling/);
  assert.match(text, /Looked for, not there: Bees shake all over\./);
  assert.notEqual(found[0], 'Chronic paralysis');
});

test('ticks and the part of the year are read from the address and written to it; Clear empties all', async () => {
  const { address } = await said('#there=webs-tunnels', async (page) => {
    await page.locator('details.signs').first().locator('summary').click();
    await page.getByLabel('Bees wrestle in pairs').check();
    await page.getByLabel('Part of the year').selectOption('dearth');
  });
  assert.equal(address, '#there=fights,webs-tunnels&phase=dearth');
  const cleared = await said('#there=webs-tunnels', async (page) => {
    await page.getByRole('button', { name: 'Clear' }).click();
    await page.waitForFunction(() => location.hash === '');
  });
  assert.deepEqual([cleared.address, cleared.found, cleared.headline], ['', [], '']);
});

test('unknown names in the address do no harm', async () => {
  const { found } = await said('#there=nonsense,cocoons,%3Cb%3E&not=%22&phase=monsoon&x=1');
  assert.deepEqual(found, ['Wax moth']);
});

test('it never says what it is', async () => {
  for (const hash of ['#there=brown-thread,sunken-caps', '#there=cocoons', '#there=fights', '#there=mites-on-bees']) {
    const { text } = await said(hash);
    assert.doesNotMatch(text, /\b(?:[Ii]t is|[Tt]his is|[Yy]ou have|[Dd]iagnos\w+|[Cc]onfirmed)\b(?! (?:there|not there))/, hash);
  }
});

test('a club without signs has no page of them', async () => {
  const southern = await fixtureSite('southern');
  try {
    assert.ok(southern.pages.length > 10 && !southern.pages.includes('/signs/'));
  } finally {
    await southern.close();
  }
});
