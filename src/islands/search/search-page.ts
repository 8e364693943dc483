/*
 * The search page's list: results as somebody types, one count that is read aloud, kinds as buttons. What the engine
 * hands over is only ever set as text. Without script the form leads here and the list of all pages stands below it.
 */
import { openEngine, type Engine } from './engine.ts';
import { piecesOf } from './excerpt.ts';
import { lookUp, type Hit, type Hits } from './look-up.ts';

/** Long enough that a word is typed and not each of its letters is looked for. */
const PAUSE_MS = 150;
const SHOWN = 5;

type Six = [HTMLElement, HTMLElement, HTMLElement, HTMLElement, HTMLElement, HTMLElement];
const base = import.meta.env.BASE_URL;
const part = <E extends HTMLElement>(name: string): E => document.querySelector<E>(`[data-search-${name}]`)!;
const form = part<HTMLFormElement>('page');
const field = form.querySelector('input')!;
const [status, kinds, named, list, more, none] = (['status', 'kinds', 'named', 'list', 'more', 'none'] as const).map((name) => part(name)) as Six;

let opening: Promise<Engine> | undefined;
let typed = '';
let asked = 0;
let found: Hits = { hits: [], named: [], meant: [] };
let kind = '';
let shown = SHOWN;

const make = <K extends keyof HTMLElementTagNameMap>(tag: K, has: Partial<HTMLElementTagNameMap[K]>): HTMLElementTagNameMap[K] => Object.assign(document.createElement(tag), has);
const ofKind = (): Hit[] => found.hits.filter((hit) => !kind || hit.kind === kind);

async function ask(): Promise<void> {
  const turn = (asked += 1);
  typed = field.value.trim();
  history.replaceState(null, '', typed ? `?q=${encodeURIComponent(typed)}` : location.pathname);
  try {
    const answer = await lookUp(typed, await (opening ??= openEngine()));
    if (turn !== asked) return;
    found = answer;
    [kind, shown] = ['', SHOWN];
    drawKinds();
    drawNamed();
    await drawList(turn);
    none.hidden = !typed || !!found.hits[0];
  } catch {
    // Without a network now; the next word tries again.
    opening = undefined;
    if (turn === asked) status.textContent = 'Search did not load. All pages are listed below.';
  }
}

function drawKinds(): void {
  const counts = new Map<string, number>();
  for (const hit of found.hits) counts.set(hit.kind, (counts.get(hit.kind) ?? 0) + 1);
  const button = (value: string, textContent: string): HTMLButtonElement => make('button', { textContent, value, ariaPressed: String(value === kind) });
  kinds.replaceChildren(button('', `All ${found.hits.length}`), ...[...counts].map(([each, count]) => button(each, `${each} ${count}`)));
  kinds.hidden = counts.size < 2;
}

function drawNamed(): void {
  const links = found.named.flatMap(({ id, names }, at) => [at > 0 ? ', ' : '', make('a', { textContent: names[0]!, href: `${base}words/#${id}` })]);
  named.replaceChildren(...(found.named[0] ? ['In the word list: ', ...links, '. '] : []), found.meant[0] ? `Also looked for: ${found.meant.join(', ')}.` : '');
  named.hidden = !named.textContent;
}

async function drawList(turn: number): Promise<void> {
  const hits = ofKind();
  const rows = await Promise.all(hits.slice(0, shown).map(row));
  if (turn !== asked) return;
  list.replaceChildren(...rows);
  more.hidden = hits.length <= shown;
  const count = `${hits.length} ${hits.length === 1 ? 'page' : 'pages'}`;
  status.textContent = !typed ? '' : !hits[0] ? 'No page found' : kind ? `${count}: ${kind}` : count;
}

async function row(hit: Hit): Promise<HTMLLIElement> {
  const { url, excerpt, meta } = await hit.read();
  const item = make('li', {});
  const words = make('p', {});
  words.append(...piecesOf(excerpt).map(({ text, marked }) => (marked ? make('mark', { textContent: text }) : text)), ' …');
  item.append(make('a', { textContent: meta.title!, href: url }), ` ${[hit.kind, meta.when].filter(Boolean).join(', ')}`, words);
  return item;
}

let pause: ReturnType<typeof setTimeout> | undefined;
const askAfter = (pauseMs: number): void => {
  clearTimeout(pause);
  pause = setTimeout(ask, pauseMs);
};
field.addEventListener('input', () => askAfter(PAUSE_MS));
form.addEventListener('submit', (event) => {
  event.preventDefault();
  askAfter(0);
});
kinds.addEventListener('click', ({ target }) => {
  const button = (target as HTMLElement).closest('button');
  if (!button) return;
  [kind, shown] = [button.value, SHOWN];
  for (const each of kinds.querySelectorAll('button')) each.ariaPressed = String(each === button);
  void drawList((asked += 1));
});
more.addEventListener('click', () => {
  const first = shown;
  shown += SHOWN;
  // The first new one takes the focus that the button had, so that nobody has to go back up.
  void drawList((asked += 1)).then(() => list.children[first]?.querySelector('a')?.focus());
});

field.value ||= new URLSearchParams(location.search).get('q') ?? '';
// The engine is fetched when there is something to look for, and not with the page.
if (field.value.trim()) void ask();
