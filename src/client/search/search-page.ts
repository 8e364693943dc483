/*
 * Search page: results while somebody types, one announced count, and choices of kind and time of year. Results are only ever set as
 * text. Without script the form leads here, and all pages are listed below it.
 */
import { todayIn } from '../../../shared/days/today.ts';
import { ENGINE, PAGEFIND_FOLDER, WASM, WORDS } from '../../../shared/words/search-files.ts';
import type { Engine } from './engine.ts';
import type { Hit, Hits } from './look-up.ts';
import { fallsInto, spanOf } from './season.ts';

/** Long enough to wait for a whole word instead of each letter. */
const PAUSE_MS = 150;
const SHOWN = 5;

type Five = [HTMLElement, HTMLElement, HTMLElement, HTMLElement, HTMLElement];
type Search = Engine & typeof import('./look-up.ts') & typeof import('./excerpt.ts');
const base = import.meta.env.BASE_URL;
const part = <E extends HTMLElement>(name: string): E => document.querySelector<E>(`[data-search-${name}]`)!;
const form = part<HTMLFormElement>('page');
const field = form.querySelector('input')!;
const [kinds, season] = [part<HTMLSelectElement>('kinds'), part<HTMLSelectElement>('season')];
const [status, also, list, more, none] = (['status', 'also', 'list', 'more', 'none'] as const).map((name) => part(name)) as Five;

let opening: Promise<Search> | undefined;
let typed = '';
let lastQuery = 0;
let found: Hits = { hits: [], corrected: [], sought: [], strange: false };
let shown = SHOWN;

const make = <K extends keyof HTMLElementTagNameMap>(tag: K, has: Partial<HTMLElementTagNameMap[K]>): HTMLElementTagNameMap[K] =>
  Object.assign(document.createElement(tag), has);

const print = form.dataset.print!;

/** Loads when somebody begins to search. The engine requests one file after another, so the large ones are requested here at once. */
async function open(): Promise<Search> {
  document.head.append(
    make('link', { rel: 'modulepreload', href: `${base}${ENGINE}?ts=${print}` }),
    ...[WASM, `${PAGEFIND_FOLDER}pagefind-entry.json?ts=${print}`, `${WORDS}?ts=${print}`].map((file) =>
      make('link', { rel: 'preload', as: 'fetch', crossOrigin: 'anonymous', href: base + file }),
    ),
  );
  const [engine, lookUp, excerpt] = await Promise.all([
    import('./engine.ts').then(({ openEngine }) => openEngine(base, print)),
    import('./look-up.ts'),
    import('./excerpt.ts'),
  ]);
  return { ...engine, ...lookUp, ...excerpt };
}

const today = todayIn(document.documentElement.dataset.zone!, new Date());
const inSeason = (): Hit[] => found.hits.filter(({ entry }) => !season.value || fallsInto(entry.windows, spanOf(season.value, today)));
const chosen = (): Hit[] => inSeason().filter(({ entry }) => !kinds.value || entry.kind === kinds.value);

async function ask(): Promise<void> {
  const turn = (lastQuery += 1);
  typed = field.value.trim();
  history.replaceState(null, '', typed ? `?q=${encodeURIComponent(typed)}` : location.pathname);
  try {
    const search = await (opening ??= open());
    const answer = await search.lookUp(typed, search);
    if (turn !== lastQuery) return;
    found = answer;
    shown = SHOWN;
    kinds.value = season.value = '';
    also.textContent = found.corrected[0] ? `Also looked for: ${found.corrected.join(', ')}.` : '';
    season.hidden = !found.hits.some(({ entry }) => entry.windows);
    drawKinds();
    await drawList(turn);
    none.hidden = !typed || (!!found.hits[0] && !found.strange);
  } catch {
    // No network now. The next word tries again.
    opening = undefined;
    if (turn === lastQuery) status.textContent = 'Search did not load. All pages are listed below.';
  }
}

/** The kinds of the results, with the number of each in the chosen time of year. */
function drawKinds(): void {
  const counts = new Map<string, number>();
  for (const { entry } of inSeason()) counts.set(entry.kind, (counts.get(entry.kind) ?? 0) + 1);
  const held = counts.has(kinds.value) ? kinds.value : '';
  const option = (value: string, text: string, count: number): HTMLOptionElement =>
    make('option', { value, textContent: `${text} (${count})` });
  kinds.replaceChildren(option('', 'All kinds', inSeason().length), ...[...counts].map(([each, count]) => option(each, each, count)));
  kinds.value = held;
  kinds.hidden = counts.size < 2 && !season.value;
}

async function drawList(turn: number): Promise<void> {
  const hits = chosen();
  const rows = await Promise.all(hits.slice(0, shown).map(row));
  if (turn !== lastQuery) return;
  list.replaceChildren(...rows);
  more.hidden = hits.length <= shown;
  const count = hits[0] ? `${hits.length} ${hits.length === 1 ? 'page' : 'pages'}` : 'No page found';
  const filters = [kinds.value, season.value && season.selectedOptions[0]!.text.toLowerCase()].filter(Boolean).join(', ');
  status.textContent = !typed ? '' : filters ? `${count}: ${filters}` : count;
}

async function row({ entry }: Hit): Promise<HTMLLIElement> {
  const search = await opening!;
  const { title, text, when, url } = await search.shownOf(entry);
  const words = make('p', {});
  words.append(
    ...search.excerptOf(text, found.sought).map((piece) => (piece.marked ? make('mark', { textContent: piece.text }) : piece.text)),
  );
  const item = make('li', {});
  item.append(
    make('a', { textContent: title, href: url }),
    ' ',
    make('span', { className: 'quiet', textContent: [entry.kind, when].filter(Boolean).join(', ') }),
    words,
  );
  return item;
}

let pause: ReturnType<typeof setTimeout> | undefined;
const askAfter = (pauseMs: number): void => {
  clearTimeout(pause);
  pause = setTimeout(ask, pauseMs);
};
const redraw = (): Promise<void> => drawList((lastQuery += 1));
field.addEventListener('input', () => askAfter(PAUSE_MS));
form.addEventListener('submit', (event) => {
  event.preventDefault();
  askAfter(0);
});
kinds.addEventListener('change', () => {
  shown = SHOWN;
  void redraw();
});
season.addEventListener('change', () => {
  shown = SHOWN;
  drawKinds();
  void redraw();
});
more.addEventListener('click', () => {
  const first = shown;
  shown += SHOWN;
  // The first new result takes the focus from the button, so that nobody has to go back up.
  void redraw().then(() => list.children[first]?.querySelector('a')?.focus());
});

// The engine loads when a reader begins to search, not with the page. If it fails now, the first query tries again.
form.addEventListener('focusin', () => {
  opening ??= open();
  opening.catch(() => (opening = undefined));
});
field.value ||= new URLSearchParams(location.search).get('q') ?? '';
if (field.value.trim()) void ask();
