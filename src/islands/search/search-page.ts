/*
 * The search page's list: results as somebody types, one count that is read aloud, kinds as buttons. What the engine
 * hands over is only ever set as text. Without script the form leads here and the list of all pages stands below it.
 */
import { openEngine } from './engine.ts';
import { piecesOf } from './excerpt.ts';
import { lookUp, type Hit, type Hits } from './look-up.ts';

/** Long enough that a word is typed and not each of its letters is looked for. */
const PAUSE_MS = 150;
const SHOWN = 8;
/** Pages that say next to nothing beside the best are left out. */
const LEAST_SHARE = 0.12;

/** As a reader names them, one and several, in the order of the buttons. */
const KINDS: Record<string, [string, string]> = {
  checklist: ['checklist', 'checklists'],
  'pest or disease': ['pest or disease', 'pests and diseases'],
  calculator: ['calculator', 'calculators'],
  'know-how': ['know-how', 'know-how'],
  meeting: ['meeting', 'meetings'],
  words: ['word list', 'word list'],
  reading: ['reading', 'reading'],
  contact: ['contact', 'contacts'],
};

const base = import.meta.env.BASE_URL;
const part = <E extends HTMLElement>(name: string): E => document.querySelector<E>(`[data-search-${name}]`)!;
const form = part<HTMLFormElement>('page');
const field = form.querySelector('input')!;
const [status, kinds, named, list, more, none] = ['status', 'kinds', 'named', 'list', 'more', 'none'].map((name) => part(name)) as [HTMLElement, HTMLElement, HTMLElement, HTMLElement, HTMLElement, HTMLElement];

let asked = 0;
let found: Hits = { hits: [], named: [], meant: [] };
let kind = '';
let shown = SHOWN;

const make = <K extends keyof HTMLElementTagNameMap>(tag: K, words = ''): HTMLElementTagNameMap[K] => Object.assign(document.createElement(tag), { textContent: words });
const one = (of: string): string => KINDS[of]?.[0] ?? of;
const several = (of: string): string => KINDS[of]?.[1] ?? of;
const ofKind = (): Hit[] => found.hits.filter((hit) => kind === '' || hit.kind === kind);

async function ask(): Promise<void> {
  const turn = (asked += 1);
  const typed = field.value.trim();
  history.replaceState(null, '', typed ? `?q=${encodeURIComponent(typed)}` : location.pathname);
  try {
    const all = typed ? await lookUp(typed, await openEngine()) : { hits: [], named: [], meant: [] };
    if (turn !== asked) return;
    const least = (all.hits[0]?.score ?? 0) * LEAST_SHARE;
    found = { ...all, hits: all.hits.filter(({ score }) => score >= least) };
    [kind, shown] = ['', SHOWN];
    drawKinds();
    drawNamed();
    await drawList(turn);
    none.hidden = !typed || found.hits.length > 0;
  } catch {
    if (turn === asked) say('The search could not be loaded. All pages are listed below.');
  }
}

function say(words: string): void {
  if (status.textContent !== words) status.textContent = words;
}

function drawKinds(): void {
  const counts = new Map<string, number>();
  for (const hit of found.hits) counts.set(hit.kind, (counts.get(hit.kind) ?? 0) + 1);
  const order = [...new Set([...Object.keys(KINDS), ...counts.keys()])].filter((each) => counts.has(each));
  const button = (value: string, words: string): HTMLButtonElement => Object.assign(make('button', words), { type: 'button', value, ariaPressed: String(value === kind) });
  kinds.replaceChildren(button('', `All ${found.hits.length}`), ...order.map((each) => button(each, `${several(each)} ${counts.get(each)}`)));
  kinds.hidden = order.length < 2;
}

function drawNamed(): void {
  const links = found.named.flatMap(({ id, names }, at) => [at > 0 ? ', ' : '', Object.assign(make('a', names[0]), { href: `${base}words/#${id}` })]);
  const meant = [...new Set(found.meant)].filter((word) => !found.named.some(({ names }) => names[0] === word));
  named.replaceChildren(...(links.length > 0 ? ['In the word list: ', ...links, '. '] : []), meant.length > 0 ? `Also looked for: ${meant.join(', ')}.` : '');
  named.hidden = named.textContent === '';
}

async function drawList(turn: number): Promise<void> {
  const hits = ofKind();
  const rows = await Promise.all(hits.slice(0, shown).map(row));
  if (turn !== asked) return;
  list.replaceChildren(...rows);
  more.hidden = hits.length <= shown;
  const count = `${hits.length} ${hits.length === 1 ? 'page' : 'pages'}`;
  say(field.value.trim() === '' ? '' : hits.length === 0 ? 'No page found' : kind === '' ? count : `${count}: ${several(kind)}`);
}

async function row(hit: Hit): Promise<HTMLLIElement> {
  const { url, excerpt, meta } = await hit.read();
  const item = make('li');
  const words = make('p');
  words.append('… ', ...piecesOf(excerpt).map(({ text, marked }) => (marked ? make('mark', text) : text)), ' …');
  const about = Object.assign(make('span', [one(hit.kind), meta.when].filter(Boolean).join(', ')), { className: 'quiet' });
  item.append(Object.assign(make('a', meta.title), { href: url }), ' ', about, words);
  return item;
}

let pause: ReturnType<typeof setTimeout> | undefined;
field.addEventListener('input', () => {
  clearTimeout(pause);
  pause = setTimeout(() => void ask(), PAUSE_MS);
});
form.addEventListener('submit', (event) => {
  event.preventDefault();
  clearTimeout(pause);
  void ask();
});
kinds.addEventListener('click', ({ target }) => {
  const button = (target as HTMLElement).closest('button');
  if (!button) return;
  [kind, shown] = [button.value, SHOWN];
  for (const each of kinds.querySelectorAll('button')) each.ariaPressed = String(each === button);
  void drawList(asked);
});
more.addEventListener('click', () => {
  const first = shown;
  shown += SHOWN;
  // The first new one takes the focus that the button had, so that nobody has to go back up.
  void drawList(asked).then(() => list.children[first]?.querySelector('a')?.focus());
});

const typed = new URLSearchParams(location.search).get('q');
if (typed && field.value === '') field.value = typed;
if (field.value) void ask();
else openEngine().catch(() => undefined);
