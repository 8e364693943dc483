// Every page of the demo club without script: text, marks, review, cautions, and the emergency line.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser, Page } from '@playwright/test';
import { formatDay } from '../../shared/days/show-day.ts';
import type { Day } from '../../shared/days/day.ts';
import { readFolder, type Entry } from '../../src/source/folder.ts';
import { HAZARDS_OF } from '../../src/schemas/hazards.ts';
import type { Site } from '../setup/built-site.ts';
import { waitsForScript } from './rules.ts';
import { nothing, oneOfEachKind, phone, visit } from './visit.ts';
import { aDay } from '../days.ts';

let site: Site;
let browser: Browser;
let club: Record<string, any>;
let edition: Day;

/** The content of a page, as its reader sees it. */
interface Seen {
  text: string;
  margin: string;
  robots: string;
  tel: string;
  hazards: string[];
  boxes: number;
  waits: string[];
  /** Headings, buttons and labels. */
  labels: string[];
}
const seen = new Map<string, Seen>();

/** The entries with their own page. */
let entries: { page: string; entry: Entry; fields: Record<string, any> }[];
const places: Record<string, string> = { checklists: 'lists', bulletins: 'pests', articles: 'know-how', meetings: 'meetings' };

test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
  const folder = readFolder(site.content);
  club = folder.club!.fields.value as Record<string, any>;
  edition = JSON.parse(site.read('edition.json')).day;
  entries = folder.entries
    .filter(({ collection, fields }) => places[collection] && !(fields.value as Record<string, any>).draft)
    .map((entry) => ({ entry, page: `/${places[entry.collection]}/${entry.id}/`, fields: entry.fields.value as Record<string, any> }));
  await visit({ browser, site, context: { javaScriptEnabled: false } }, async (page, address) => {
    seen.set(address, { ...(await page.evaluate(read)), waits: await page.evaluate(waitsForScript) });
    return [];
  });
});

function read(): Omit<Seen, 'waits'> {
  const line = document.querySelector('.emergency');
  for (const fold of document.querySelectorAll('details')) fold.open = true;
  return {
    text: document.body.innerText,
    margin: document.querySelector<HTMLElement>('.sidebar')?.innerText ?? '',
    robots: document.querySelector<HTMLMetaElement>('meta[name=robots]')?.content ?? '',
    tel: [...(line?.querySelectorAll('a') ?? [])].map((link) => link.getAttribute('href')!).find((href) => href.startsWith('tel:')) ?? '',
    hazards: [...document.querySelectorAll<HTMLElement>('[data-hazard]')].map((place) =>
      place.checkVisibility() ? place.dataset.hazard! : `${place.dataset.hazard} out of sight`,
    ),
    labels: [...document.querySelectorAll('h1, h2, h3, h4, button, label, legend, th, summary')].map((part) => part.textContent!),
    boxes: [...document.querySelectorAll('.box')].filter((box) => box.matches('[data-hazard]') || box.querySelector('[data-hazard]'))
      .length,
  };
}

const each = (look: (page: Seen, address: string) => string[]): string[] =>
  [...seen].flatMap(([address, page]) => look(page, address).map((fault) => `${address}: ${fault}`));

test('every entry has its page, and there is no other', () => {
  assert.ok(entries.length >= 30, `${entries.length} entries`);
  const own = Object.values(places).flatMap((place) => site.pages.filter((page) => page.startsWith(`/${place}/`) && page !== `/${place}/`));
  assert.deepEqual(own.sort(), entries.map(({ page }) => page).sort());
});

test('without script every page shows its title, its text and the five parts, and waits for nothing', () => {
  nothing(each(({ waits }) => waits));
});

test('where the style sheet does not come, no icon fills the screen', async () => {
  const withoutStyle = { javaScriptEnabled: false, viewport: phone };
  let refused = 0;
  const prepare = async (page: Page): Promise<void> => {
    await page.route(/\.css(\?|$)/, (route) => {
      refused += 1;
      return route.abort();
    });
  };
  const pages = oneOfEachKind(site);
  nothing(
    await visit({ browser, site, pages, context: withoutStyle, prepare }, (page) =>
      page.evaluate(() =>
        [...document.querySelectorAll('svg[aria-hidden]')]
          .map((each) => ({ height: each.getBoundingClientRect().height, drawn: each.outerHTML.slice(0, 80) }))
          .filter(({ height }) => height > 100)
          .map(({ height, drawn }) => `${Math.round(height)} px high: ${drawn}`),
      ),
    ),
  );
  assert.ok(refused >= pages.length, `${refused} style sheets refused of ${pages.length} pages`);
});

test('every page says that the club is invented, and keeps search engines away', () => {
  assert.equal(club.demonstration, true);
  nothing(
    each(({ text, robots }) => [
      ...(text.includes('Demo site: this club, its county') ? [] : ['no mark']),
      ...(robots === 'noindex' ? [] : [`robots "${robots}"`]),
    ]),
  );
});

test('every page has the emergency line, with the number to call', () => {
  nothing(
    each(({ text, tel }) => [
      ...(/Emergency:/.test(text) ? [] : ['no line']),
      ...(tel === `tel:${club.emergency.number}` ? [] : [`the link is "${tel}"`]),
    ]),
  );
});

test('every page names its publisher and the day of its edition', () => {
  nothing(
    each(({ text }) =>
      [club.name, club.place, `Edition of ${formatDay(edition, 'en-US')}`]
        .filter((words) => !text.includes(words))
        .map((words) => `no "${words}"`),
    ),
  );
});

test('every reviewed page shows its last and next check with their duty, its sources, and whom to ask', () => {
  const folder = readFolder(site.content);
  const editors = new Map(folder.books.map(({ id, entry }) => [id, (entry!.fields.value as { editors: string }).editors]));
  const sources = new Map(
    folder.entries.filter(({ collection }) => collection === 'sources').map(({ id, fields }) => [id, fields.value as Record<string, any>]),
  );
  nothing(
    // A meeting needs no review.
    entries.flatMap(({ page, entry, fields }) => {
      if (entry.collection === 'meetings' && !fields.checked) return [];
      const ask = club.contacts.find((contact: { duty: string }) => contact.duty === fields.ask);
      const wanted = [
        `Last checked\n${formatDay(fields.checked, 'en-US')}`,
        `Next check\n${formatDay(fields['next-check'], 'en-US')}`,
        `by the ${entry.book ? editors.get(entry.book) : fields.by}`,
        club.name,
        ...(fields.history ?? []).map(({ changed, what }: Record<string, string>) => `${formatDay(aDay(changed!), 'en-US')}: ${what}`),
        ...(fields.sources ?? []).map((id: string) => sources.get(id)!.who),
      ];
      // A bulletin calls in its head, and other pages in their sidebar. The script adds a number with a consent that ends.
      const calls = [ask.name, ask.until ? 'See who to call' : (ask.phone ?? ask.name)];
      const { margin, text } = seen.get(page)!;
      const place = entry.collection === 'bulletins' ? text : margin;
      return [...wanted.filter((words) => !margin.includes(words)), ...calls.filter((words) => !place.includes(words))].map(
        (words) => `${page}: no "${words.replace('\n', ' ')}"`,
      );
    }),
  );
});

test("every hazard of a page's work is on it once, in two boxes at most", () => {
  const called = entries.filter(({ fields }) => fields.work);
  assert.ok(called.length >= 20, `${called.length} pages with work`);
  nothing(
    entries.flatMap(({ page, fields }) => {
      const due = [...new Set((fields.work ?? []).flatMap((work: keyof typeof HAZARDS_OF) => HAZARDS_OF[work]))].sort();
      const { hazards, boxes } = seen.get(page)!;
      const stands = [...hazards].sort();
      return [
        ...(JSON.stringify(due) === JSON.stringify(stands) ? [] : [`${page}: called for: ${due.join(', ')}; there: ${stands.join(', ')}`]),
        ...(boxes <= 2 ? [] : [`${page}: ${boxes} boxes`]),
      ];
    }),
  );
});

test('no heading, button or label uses the words of a pesticide label', () => {
  const kept = /\b(danger|warning|caution)\b/i;
  assert.ok([...seen.values()].reduce((sum, { labels }) => sum + labels.length, 0) > 1000);
  nothing(each(({ labels }) => labels.filter((label) => kept.test(label))));
});
