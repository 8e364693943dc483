/*
 * The journeys of a reader through the almanac, the same in every engine: pages, ticks, days of her own, calculators, search, display,
 * sharing, the hall, the card, paper, and the offline copy with the host stopped.
 */
import assert from 'node:assert/strict';
import { paleEdges } from '../e2e/edges.ts';
import { openHost } from '../e2e/kept.ts';
import { lettersOf, sheetsIn } from '../e2e/printed.ts';
import { brokenWords, paleText, sideways } from '../e2e/rules.ts';
import { nothing, oneOfEachKind } from '../e2e/visit.ts';
import { worked, type Worked } from './calculators.ts';
import { fill, pressNamed, saying, travel, until, type Reader } from './reader.ts';
import { wrongIn, type WatchedSite } from './watched-site.ts';

export interface Journey {
  name: string;
  /** Throws where something is wrong. Returns what the table of results says besides, if anything. */
  take: (reader: Reader, site: WatchedSite) => Promise<string | void>;
  /** True where the driver must be able to print. */
  prints?: boolean;
  /** A second reader, who opens the link that the first one returned. */
  then?: (reader: Reader, link: string) => Promise<void>;
}

const LIST = 'lists/package-arrival/';
const DATED = 'lists/package-first-six-weeks/';

const ticked = (reader: Reader): Promise<string[]> =>
  reader.run(() => [...document.querySelectorAll<HTMLElement>('input[data-tick]:checked')].map((box) => box.dataset.tick!));
const steps = (reader: Reader): Promise<string[]> =>
  reader.run(() => [...document.querySelectorAll<HTMLElement>('input[data-tick]')].map((box) => box.dataset.tick!));
const results = (reader: Reader, first: string): Promise<string[]> =>
  until(
    reader,
    `the first result is ${first}`,
    (first) => {
      const links = [...document.querySelectorAll<HTMLAnchorElement>('[data-search-list] li > a')].map(({ pathname }) => pathname);
      return links.slice(0, 3).includes(first) && links;
    },
    first,
  );
const textOf = (reader: Reader, selector: string): Promise<string> =>
  reader.run((selector) => document.querySelector(selector)!.textContent!.replace(/\s+/g, ' ').trim(), selector);

async function tickByMouseAndKey(reader: Reader): Promise<string[]> {
  const [, second, third] = await steps(reader);
  await reader.press(`label:has(input[data-tick="${second}"])`);
  await reader.run((tick) => document.querySelector<HTMLElement>(`input[data-tick="${tick}"]`)!.focus(), third);
  await reader.key('Space');
  await saying(reader, '[data-progress]', /^2 of \d+ done/);
  return [second!, third!];
}

async function giveDay(reader: Reader, text: string): Promise<void> {
  await fill(reader, '#own-day', text);
  await reader.key('Tab');
}

export const journeys: readonly Journey[] = [
  {
    name: 'a page of each kind: no error, nothing refused by the policy, nothing wider than the window, no word of a button broken, no pale edge',
    take: async (reader, { at, built }) => {
      const faults: string[] = [];
      const pages = oneOfEachKind(built);
      const widths = new Set<number>();
      for (const page of pages) {
        await reader.go(at(page));
        await until(reader, 'the page is in order', () => document.documentElement.classList.contains('arranged'));
        const found = await reader.run(() => (document.querySelector('h1')?.textContent?.trim() ? [] : ['no title']));
        for (const width of [320, 390, 1280]) {
          const laid = await reader.resize(width, 844);
          widths.add(laid);
          for (const rule of [sideways, brokenWords, paleEdges])
            found.push(...(await reader.run(rule)).map((fault) => `at ${laid} px: ${fault}`));
        }
        faults.push(...[...found, ...(await wrongIn(reader))].map((fault) => `${page}: ${fault}`));
      }
      nothing(faults);
      return `${pages.length} pages at ${[...widths].join(', ')} px`;
    },
  },
  {
    name: 'a tick by mouse and one by keyboard are there after a reload and after Back',
    take: async (reader, { at }) => {
      await reader.go(at(LIST));
      const both = await tickByMouseAndKey(reader);
      await reader.reload();
      assert.deepEqual(await ticked(reader), both);
      await reader.go(at('lists/package-day-before/'));
      assert.deepEqual(await ticked(reader), []);
      await travel(reader, -1);
      await until(reader, 'Back leads to the list', (path) => location.pathname === path, `/${LIST}`);
      await saying(reader, '[data-progress]', /^2 of \d+ done/);
      assert.deepEqual(await ticked(reader), both);
    },
  },
  {
    name: 'a list counts from the day that she gives, and keeps it; a wrong day is answered',
    take: async (reader, { at }) => {
      await reader.go(at(DATED));
      await giveDay(reader, 'soon');
      await saying(reader, '#own-day-fault', /not a date/);
      await giveDay(reader, '18 April 2026');
      // Four to seven days after installing.
      const queen = (): Promise<string> =>
        until(reader, 'the step has its days', () => {
          const words = document.querySelector('#step-queen-out .step-day')!.textContent!;
          return /Apr.22.*Apr.25/.test(words) && words;
        });
      const before = await queen();
      await reader.reload();
      assert.equal(await queen(), before);
      assert.equal(await reader.run(() => document.querySelector<HTMLInputElement>('#own-day')!.value), 'April 18, 2026');
    },
  },
  {
    name: 'each calculator: a wrong value, right values, and the same after Back, Forward and Back',
    take: async (reader, site) => {
      for (const each of worked) await work(reader, site, each);
      return `${worked.length} calculators`;
    },
  },
  {
    name: 'search: by typing, from an address, and with a slip',
    take: async (reader, { at }) => {
      await reader.go(at('search/'));
      await fill(reader, '#words', 'sacbrood');
      assert.equal((await results(reader, '/pests/sacbrood/'))[0], '/pests/sacbrood/');
      await reader.go(at('search/?q=varroa'));
      assert.equal((await results(reader, '/pests/varroa/'))[0], '/pests/varroa/');
      await fill(reader, '#words', 'fowlbrood');
      const found = await results(reader, '/pests/american-foulbrood/');
      assert.ok(found.slice(0, 4).includes('/pests/european-foulbrood/'), found.join(' '));
      assert.deepEqual(await wrongIn(reader), []);
    },
  },
  {
    name: 'night is chosen once, holds on every page, and every word has a contrast of 7 to 1',
    take: async (reader, { at }) => {
      await reader.go(at('about/access/'));
      const paper = () => getComputedStyle(document.body).backgroundColor;
      const day = await reader.run(paper);
      await reader.press('button[data-form=light][value=night]');
      for (const path of ['', LIST, 'pests/varroa/', 'work-it-out/mite-count/#samples=A:9/300', 'search/?q=varroa']) {
        await reader.go(at(path));
        assert.notEqual(await reader.run(paper), day);
        nothing((await reader.run(paleText)).map((fault) => `/${path}: ${fault}`));
      }
    },
  },
  {
    name: 'a checklist is sent as a link, and opens with its day and its ticks',
    take: async (reader, { at }) => {
      await reader.go(at(DATED));
      const [one, two] = await steps(reader);
      for (const tick of [one, two]) await reader.press(`label:has(input[data-tick="${tick}"])`);
      await giveDay(reader, '18 April 2026');
      await pressNamed(reader, 'Share');
      await pressNamed(reader, 'Show QR code');
      return until(reader, 'the link is there', () => document.querySelector('.qr')?.getAttribute('aria-label'));
    },
    then: async (reader, link) => {
      await reader.go(link);
      await saying(reader, '.notice.shared', /installed April 18, 2026, 2 of \d+ steps done/);
      assert.equal((await ticked(reader)).length, 2);
      assert.equal(await reader.run(() => location.hash), '');
      await reader.reload();
      await saying(reader, '[data-progress]', /^2 of \d+ done/);
    },
  },
  {
    name: 'the hall: whole on a wall, and the keys of a clicker lead through a checklist',
    take: async (reader, { at }) => {
      await reader.resize(1280, 720);
      await reader.go(at('hall/'));
      await until(reader, 'the bar of the hall is there', () => document.querySelector('.hall-bar') !== null);
      await until(reader, 'the code for phones is drawn', () => document.querySelector('.hall-phones .qr') !== null);
      nothing(await reader.run(sideways));
      const { high, room } = await reader.run(() => ({ high: document.documentElement.scrollHeight, room: innerHeight }));
      assert.ok(high <= room, `${high} px high on a wall of ${room} px`);
      await reader.go(at(LIST));
      const first = await saying(reader, '.hall-bar [role=status]', /^1 of \d+/);
      for (let press = 0; press < 9 && (await textOf(reader, '.hall-bar [role=status]')) === first; press += 1)
        await reader.key('PageDown');
      await saying(reader, '.hall-bar [role=status]', /^2 of \d+/);
      await pressNamed(reader, 'Leave the hall');
      await until(reader, 'the hall is left', () => document.querySelector('.hall-bar') === null);
      assert.deepEqual(await wrongIn(reader), []);
    },
  },
  {
    name: 'the pocket card: eight sides, below each other on a screen',
    take: async (reader, { at }) => {
      await reader.go(at('card/'));
      const sides = await reader.run(() =>
        [...document.querySelectorAll<HTMLElement>('.card .side')].map((side) => ({
          title: side.querySelector('h2')!.innerText,
          top: side.getBoundingClientRect().top,
          cut: side.scrollWidth > side.clientWidth + 1,
        })),
      );
      assert.equal(sides.length, 8);
      assert.deepEqual(
        sides.filter(({ title, cut }) => title === '' || cut),
        [],
      );
      assert.deepEqual(
        sides.map(({ top }) => top),
        sides.map(({ top }) => top).toSorted((a, b) => a - b),
      );
    },
  },
  {
    name: 'on paper: a checklist with every step, a result without its form, and the card on two sheets',
    prints: true,
    take: async (reader, { at }) => {
      const printed = async (path: string): Promise<{ letters: string; sheets: number }> => {
        await reader.go(at(path));
        if (path.includes('#')) await saying(reader, '[data-part="status"]', /./);
        const sheets = await sheetsIn(await reader.print!());
        return { letters: sheets.map(({ letters }) => letters).join(''), sheets: sheets.length };
      };
      const list = await printed(LIST);
      const words = await reader.run(() =>
        [...document.querySelectorAll('.step-words > strong')].map((step) => step.textContent!.replace(/\s+/g, '')),
      );
      assert.ok(words.length > 10, `${words.length} steps`);
      nothing(words.filter((each) => !list.letters.includes(each)));
      assert.ok(!list.letters.includes('Addahive'), 'no button is printed');
      const result = await printed('work-it-out/mite-count/#samples=A:9/300&method=wash');
      assert.ok(result.letters.includes(lettersOf(await textOf(reader, '[data-part="question-printed"]'))), 'the question is printed');
      assert.ok(!result.letters.includes('Calculate'), 'the form is not printed');
      const card = await printed('card/');
      assert.equal(card.sheets, 2);
      return `${list.sheets} sheets for the checklist`;
    },
  },
  {
    name: 'without signal, after one visit: home, pest, checklist with its ticks, calculator with values, search, and the page for none',
    take: async (reader, { built }) => {
      const host = await openHost();
      try {
        await host.put('/', built.folder);
        return await withoutSignal(reader, host, (path) => `${host.origin}/${path}`);
      } finally {
        await host.close();
      }
    },
  },
];

async function withoutSignal(
  reader: Reader,
  host: { stop: () => void; asked: () => string[] },
  at: (path: string) => string,
): Promise<string> {
  await reader.go(at(LIST));
  const both = await tickByMouseAndKey(reader);
  const stored = await saying(reader, '[data-offline]', /^Available offline: all \d+ pages/);
  host.stop();
  host.asked();
  await reader.go(at(''));
  await saying(reader, '[data-offline]', /No signal: this is the saved edition/);
  await reader.go(at('pests/varroa/'));
  await saying(reader, 'h1', /^Varroa/);
  await reader.go(at(LIST));
  await saying(reader, '[data-progress]', /^2 of \d+ done/);
  assert.deepEqual(await ticked(reader), both);
  await reader.go(at('work-it-out/mite-count/#samples=A:9/300&method=wash'));
  // 9 in 300 are 3 in 100.
  await until(reader, 'the result is there', () => document.querySelector('output[name="per-100"][data-value="3"]') !== null);
  await reader.go(at('search/?q=verroa'));
  await results(reader, '/pests/varroa/');
  await reader.go(at('no-such-page/'));
  await saying(reader, 'h1', /^No page at this address$/);
  assert.deepEqual(host.asked(), [], 'the host answered nothing');
  return /all \d+ pages.*?MB/.exec(stored)?.[0] ?? stored;
}

/** Presses a radio button. An option is chosen by script, because a list of options is drawn outside the page. */
async function choice(reader: Reader, name: string, value: string): Promise<void> {
  const isOption = await reader.run(
    (name, value) => {
      const list = document.querySelector<HTMLSelectElement>(`main form select[name="${name}"]`);
      if (!list) return false;
      list.value = value;
      return list.dispatchEvent(new Event('input', { bubbles: true }));
    },
    name,
    value,
  );
  if (!isOption) await reader.press(`label:has(input[name="${name}"][value="${value}"])`);
}

/** The form and its result as text, with lists in one line, because a driver may change the order of names. With an expected state, false where it is another one. */
const stateOf = (expected?: string): string | false => {
  const state = JSON.stringify({
    status: document.querySelector('[data-part="status"]')!.textContent!,
    fields: Object.fromEntries(
      [...document.querySelectorAll<HTMLInputElement>('main form :is(input, select, textarea)[name]')]
        .filter(({ type, checked }) => type !== 'radio' || checked)
        .map(({ name, value }, at) => [`${at} ${name}`, value.replace(/[\s,]+/g, ' ')]),
    ),
    outputs: Object.fromEntries(
      [...document.querySelectorAll('output')].flatMap((output, at) =>
        output.dataset.value === undefined ? [] : [[`${at} ${output.name}`, output.dataset.value]],
      ),
    ),
  });
  return expected !== undefined && expected !== state ? false : state;
};

async function work(reader: Reader, { at }: WatchedSite, { slug, wrong, right, choose = [], answer }: Worked): Promise<void> {
  const path = `/work-it-out/${slug}/`;
  const field = (name: string): string => `main form [name="${name}"]`;
  const calculate = async (): Promise<void> => {
    await reader.run(() => {
      for (const fold of document.querySelectorAll<HTMLDetailsElement>('.asked, form details')) fold.open = true;
    });
    await pressNamed(reader, 'Calculate');
  };
  await reader.go(at(path));
  for (const [name, value] of choose) await choice(reader, name, value);
  await fill(reader, field(wrong[0]), wrong[1]);
  await calculate();
  await saying(reader, '[data-part="status"]', /^No result yet\./);
  await saying(reader, 'main form .fault', new RegExp(wrong[1]));
  for (const [name, text] of right) await fill(reader, field(name), text);
  await calculate();
  await until(
    reader,
    `${slug} answers ${answer.join(' ')}`,
    (output, value) => [...document.querySelectorAll('output')].some(({ name, dataset }) => name === output && dataset.value === value),
    ...answer,
  );
  const before = (await reader.run(stateOf)) as string;
  const isAsBefore = async (when: string): Promise<void> => {
    await until(reader, 'numbers and result are as before', stateOf, before).catch(async () =>
      assert.equal(await reader.run(stateOf), before, `${slug} ${when}`),
    );
  };
  const again = async (): Promise<void> => {
    await travel(reader, -1);
    await until(reader, 'Back leads to the calculator', (path) => location.pathname === path, path);
    await isAsBefore('after Back');
    // The result is made again of what stands in the boxes.
    await reader.run(() => document.querySelector<HTMLFormElement>('main form.asks')!.requestSubmit());
    await isAsBefore('calculated again after Back');
  };
  await reader.go(at('about/'));
  await again();
  await travel(reader, 1);
  await until(reader, 'Forward leads on', () => location.pathname === '/about/');
  await again();
  assert.deepEqual(await wrongIn(reader), []);
}
