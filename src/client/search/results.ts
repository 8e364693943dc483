/*
 * Results of the search page: a best answer, results by group, one announced count, and choices of kind and time of year. Loads when a
 * reader begins to search. Everything from outside is only ever set as text.
 */
import { todayIn } from '../../../shared/days/today.ts';
import { languageHere } from '../../../shared/country/language-here.ts';
import { tongueOf, type Tongue } from '../../../shared/country/language.ts';
import { ENGINE, PAGEFIND_FOLDER, wasmOf, WORDS } from '../../../shared/words/search-files.ts';
import { readAnswers } from './best-answer.ts';
import { openEngine, type Engine, type Entry, type Shown } from './engine.ts';
import { excerptOf } from './excerpt.ts';
import { lookUp, type Hit, type Hits } from './look-up.ts';
import { fallsInto, spanOf } from './season.ts';
import * as text from './results.en.ts';

type Group = keyof typeof text.groups;

/** Results of a group before all are shown. Those of the last two groups seldom answer. */
const SHOWN = 3;
const LAST_GROUPS: readonly Group[] = ['reading', 'club'];
/** The best results show an excerpt. Each costs a file. */
const EXCERPTS = 3;
/** With more results than these, kinds and times are a choice. */
const FEW = 10;

/** Groups of results by kind. A kind that is not here is among the articles. */
const GROUPS: Record<string, Group> = {
  'pest or disease': 'problems',
  signs: 'problems',
  checklist: 'checklists',
  calculator: 'calculators',
  word: 'words',
  meeting: 'meetings',
  sheet: 'sheets',
  reading: 'reading',
  about: 'club',
  club: 'club',
  contact: 'club',
  counts: 'club',
  file: 'club',
};
const groupOf = ({ kind }: Entry): Group => GROUPS[kind] ?? 'articles';

const base = import.meta.env.BASE_URL;
const part = <E extends HTMLElement = HTMLElement>(name: string): E => document.querySelector<E>(`[data-search-${name}]`)!;
const form = part<HTMLFormElement>('page');
const field = form.querySelector('input')!;
const [kinds, season] = [part<HTMLSelectElement>('kinds'), part<HTMLSelectElement>('season')];
const [status, list, best] = [part('status'), part('list'), part('best')];
const rowAsDrawn = part<HTMLTemplateElement>('row').content.querySelector('li')!;
const pages = [...part('pages').querySelectorAll('a')];
const answers = [...document.querySelectorAll<HTMLElement>('[data-asks]')];

const bestAnswer = readAnswers(answers.map(({ dataset }) => dataset.asks!.split(';')));

let opening: Promise<Engine> | undefined;
let openingOther: Promise<Engine> | undefined;
let typed = '';
let lastQuery = 0;
let found: Hits = { hits: [], corrected: [], sought: [], strange: false, isForeign: false };
let whole = new Set<string>();

const make = <K extends keyof HTMLElementTagNameMap>(tag: K, has: Partial<HTMLElementTagNameMap[K]>): HTMLElementTagNameMap[K] =>
  Object.assign(document.createElement(tag), has);

const print = form.dataset.print!;

/** Loads when somebody begins to search. The engine requests one file after another, so the large ones are requested here at once. */
async function open(): Promise<Engine> {
  document.head.append(
    make('link', { rel: 'modulepreload', href: `${base}${ENGINE}?ts=${print}` }),
    ...[wasmOf(tongueOf(languageHere())), `${PAGEFIND_FOLDER}pagefind-entry.json?ts=${print}`, `${WORDS}?ts=${print}`].map((file) =>
      make('link', { rel: 'preload', as: 'fetch', crossOrigin: 'anonymous', href: base + file }),
    ),
  );
  return openEngine(base, print);
}

const today = todayIn(document.documentElement.dataset.zone!, new Date());
const inSeason = (): Hit[] => found.hits.filter(({ entry }) => !season.value || fallsInto(entry.windows, spanOf(season.value, today)));
const chosen = (): Hit[] => inSeason().filter(({ entry }) => !kinds.value || groupOf(entry) === kinds.value);

/** Starts to load what a query needs. If it fails now, the first query tries again. */
export const prepare = (): void => {
  opening ??= open();
  opening.catch(() => (opening = undefined));
};

export async function ask(): Promise<void> {
  const turn = (lastQuery += 1);
  typed = field.value.trim();
  history.replaceState(null, '', typed ? `?q=${encodeURIComponent(typed)}` : location.pathname);
  part('common')?.toggleAttribute('hidden', typed !== '');
  try {
    // What is typed right is answered before the index has come, and without it.
    drawBest(bestAnswer(typed, () => true));
    const engine = await (opening ??= open());
    const answer = await lookUp(typed, engine, today);
    if (turn !== lastQuery) return;
    drawBest(bestAnswer(typed, engine.vocabulary.has));
    found = answer;
    whole = new Set();
    kinds.value = season.value = '';
    part('also').textContent = found.corrected[0] ? text.alsoLookedFor(found.corrected) : '';
    part('narrow').hidden = found.hits.length <= FEW;
    season.hidden = !found.hits.some(({ entry }) => entry.windows);
    drawKinds();
    await drawList(turn);
    await drawOther(turn).catch(() => (openingOther = undefined));
    part('none').hidden = !typed || (!!found.hits[0] && !found.strange);
  } catch (error) {
    // No network now. The next word tries again.
    opening = undefined;
    if (turn === lastQuery) throw error;
  }
}

const nextMeeting = (): HTMLAnchorElement | undefined =>
  pages.filter(({ dataset }) => dataset.day && dataset.day >= today).sort((a, b) => (a.dataset.day! < b.dataset.day! ? -1 : 1))[0];

/** A copy of the answer in the page, with its button. */
function drawBest(at: number): void {
  best.hidden = at < 0;
  if (at < 0) return;
  const item = answers[at]!.cloneNode(true) as HTMLElement;
  const link = item.querySelector('a')!;
  const meeting = link.pathname === `${base}meetings/` && nextMeeting();
  if (meeting) {
    link.href = meeting.href;
    link.querySelector('b')!.textContent = text.nextMeeting(meeting.textContent!);
    item.querySelector('p')!.textContent = `${meeting.dataset.when}.`;
  }
  best.replaceChildren(make('p', { className: 'small quiet', textContent: text.bestAnswer }), ...item.children);
}

/** The groups of the results, with the number of each in the chosen time of year. */
function drawKinds(): void {
  const counts = new Map<Group, number>();
  for (const { entry } of inSeason()) counts.set(groupOf(entry), (counts.get(groupOf(entry)) ?? 0) + 1);
  const held = counts.has(kinds.value as Group) ? kinds.value : '';
  const option = (value: string, words: string, count: number): HTMLOptionElement =>
    make('option', { value, textContent: `${words} (${count})` });
  kinds.replaceChildren(
    option('', text.allKinds, inSeason().length),
    ...[...counts].map(([each, count]) => option(each, text.groups[each], count)),
  );
  kinds.value = held;
  kinds.hidden = counts.size < 2 && !season.value;
}

/** Overviews first, then the next meeting, those after it, and those that are over. */
const byDay = ({ entry: { day: a = '' } }: Hit, { entry: { day: b = '' } }: Hit): number => {
  const turn = (day: string): string => (day === '' ? '' : day < today ? `9${day}` : day);
  return turn(a) < turn(b) ? -1 : 1;
};

/** The group of the best result comes first. */
async function drawList(turn: number): Promise<void> {
  const hits = chosen();
  const groups = new Map<Group, Hit[]>();
  for (const hit of hits) groups.set(groupOf(hit.entry), [...(groups.get(groupOf(hit.entry)) ?? []), hit]);
  const drawn = await Promise.all(
    [...groups].map(async ([name, ranked]) => {
      const all = name === 'meetings' ? ranked.sort(byDay) : ranked;
      const shown = whole.has(name) || kinds.value === name ? all : all.slice(0, LAST_GROUPS.includes(name) ? 1 : SHOWN);
      return { name, all, rows: await Promise.all(shown.map((hit) => row(hit.entry, hits.indexOf(hit)))) };
    }),
  );
  if (turn !== lastQuery) return;
  list.replaceChildren(...drawn.map(groupAsDrawn));
  const filters = [kinds.value && text.groups[kinds.value as Group], season.value && season.selectedOptions[0]!.text].filter(Boolean);
  status.textContent = !typed ? '' : filters.length > 0 ? text.foundIn(hits.length, filters) : text.found(hits.length);
}

function groupAsDrawn({ name, all, rows }: { name: Group; all: Hit[]; rows: HTMLElement[] }): HTMLElement {
  const section = make('section', {});
  section.dataset.group = name;
  const items = make('ul', { className: 'rows' });
  items.append(...rows);
  section.append(make('h2', { textContent: text.groups[name] }), items);
  if (rows.length < all.length) {
    const more = make('button', { type: 'button', textContent: text.showAll(all.length) });
    more.append(make('span', { className: 'visually-hidden', textContent: `: ${text.groups[name]}` }));
    more.addEventListener('click', () => {
      whole.add(name);
      // The first new result takes the focus from the button, so that nobody has to go back up.
      void drawList((lastQuery += 1)).then(() => {
        const again = list.querySelector(`[data-group=${name}]`);
        again?.querySelectorAll('a')[rows.length]?.focus();
      });
    });
    section.append(more);
  }
  return section;
}

/** Pages in another language of the almanac. They are asked for where the club's language lacks most of the words that were typed. */
async function drawOther(turn: number): Promise<void> {
  const other = document.querySelector<HTMLElement>('[data-search-other]');
  if (!other) return;
  other.hidden = true;
  if (!typed || (found.hits[0] && !found.isForeign)) return;
  const engine = await (openingOther ??= openEngine(base, print, other.lang as Tongue));
  const { hits, corrected, strange, sought } = await lookUp(typed, engine, today);
  if (turn !== lastQuery || !hits[0] || corrected[0] || strange) return;
  const rows = hits
    .slice(0, 2 * SHOWN)
    .map(async ({ entry }) => shownIn(rowAsDrawn.cloneNode(true) as HTMLElement, entry, await engine.shownOf(entry), sought));
  other.querySelector('ul')!.replaceChildren(...(await Promise.all(rows)));
  if (turn !== lastQuery) return;
  other.hidden = false;
  status.textContent += `. ${other.querySelector('h2')!.textContent}: ${rows.length}`;
}

/** `rank` counts from the best result. */
async function row(entry: Entry, rank: number): Promise<HTMLElement> {
  const engine = await opening!;
  const item = rowAsDrawn.cloneNode(true) as HTMLElement;
  const [link, title, words] = (['a', 'b', 'small'] as const).map((tag) => item.querySelector(tag)!) as [
    HTMLAnchorElement,
    HTMLElement,
    HTMLElement,
  ];
  const page = entry.listed === undefined ? undefined : pages[entry.listed];
  if (page?.lang) item.lang = page.lang;
  const word = entry.kind === 'word' && engine.named.find(({ own }) => own === entry.at);
  if (rank >= EXCERPTS && (page || word)) {
    title.textContent = page ? page.textContent : (word as { names: string[] }).names[0]!;
    link.href = page ? page.getAttribute('href')! : `${base}words/#${(word as { id: string }).id}`;
    words.textContent = page?.dataset.when ?? '';
    link.classList.toggle('plain', !words.textContent);
    return item;
  }
  return shownIn(item, entry, await engine.shownOf(entry), found.sought);
}

/** The row with the part of the page that answers. */
function shownIn(item: HTMLElement, entry: Entry, shown: Shown, sought: readonly string[]): HTMLElement {
  const [link, title, words] = [item.querySelector('a')!, item.querySelector('b')!, item.querySelector('small')!];
  const { pieces, section } = excerptOf(shown, sought);
  title.textContent = shown.title;
  link.href = section ? `${shown.url}#${section.id}` : shown.url;
  words.append(
    ...(section ? [make('b', { textContent: section.text }), ' '] : []),
    ...(entry.day ? [`${shown.when}. `] : []),
    ...pieces.map((piece) => (piece.marked ? make('mark', { textContent: piece.text }) : piece.text)),
  );
  return item;
}

kinds.addEventListener('change', () => void drawList((lastQuery += 1)));
season.addEventListener('change', () => {
  drawKinds();
  void drawList((lastQuery += 1));
});
