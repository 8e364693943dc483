/*
 * Page of hand-outs: a member chooses pages, changes their order, and prints them as one set or saves them as an EPUB. The address has
 * the whole choice. Code for the sheets loads with the first page that is chosen.
 */
import { isWithinSpan, monthDayOf } from '../../../shared/days/year-span.ts';
import { todayIn } from '../../../shared/days/today.ts';
import { windowHere } from '../../calculators/form/window-here.ts';
import { addressOf, choiceIn, moved, type Choice } from './address.ts';
import * as text from './hand-out.en.ts';
import type { About, Asked } from './printed.ts';

const root = document.documentElement;
const base = import.meta.env.BASE_URL;
const find = <T extends HTMLElement = HTMLElement>(name: string): T => document.querySelector<T>(`[data-${name}]`)!;
const [frame, list, row, sheets] = [find('hand-out'), find('chosen'), find<HTMLTemplateElement>('chosen-row'), find('sheets')];
const [filter, title, apart] = [find<HTMLInputElement>('filter'), find<HTMLInputElement>('set-title'), find<HTMLInputElement>('apart')];
const boxes = new Map([...frame.querySelectorAll<HTMLInputElement>('input[data-page]')].map((box) => [box.value, box]));
const rowOf = (box: HTMLInputElement): HTMLElement => box.closest('li')!;
const today = todayIn(root.dataset.zone!, new Date());
const names = new Map(frame.dataset.districts!.split('|').map((each) => each.split('=') as [string, string]));

const { refused, ...asked } = choiceIn(location.search);
let choice: Choice = asked;
/** Pages that were loaded, or why not. A page that is asked for and not here is still loading. */
const answers = new Map<string, Asked>();
let builds = 0;

const say = (words: string): void => void (find('set-status').textContent = words);
const titleOf = (page: string): string => {
  const answer = answers.get(page);
  return boxes.get(page)?.dataset.page || (answer && 'leaf' in answer ? answer.leaf.title : page);
};
/** A hand-out with a meeting is that evening's. */
function usualTitle(): string {
  const meeting = choice.pages.find((page) => page.startsWith('meetings/') && boxes.has(page));
  return text.title(meeting && titleOf(meeting));
}
const about = (): About => ({
  title: choice.title || usualTitle(),
  club: frame.dataset.club!,
  almanac: frame.dataset.almanac!,
  // The name of an edition is its day and a short mark.
  day: root.dataset.edition!.slice(0, 10),
  edition: frame.dataset.editionWords!,
  base,
  root: frame.dataset.root || location.origin + base,
  address: `${frame.dataset.root || location.origin + base}hand-out/${addressOf(choice)}`,
});

function choose(next: Partial<Choice>): void {
  choice = { ...choice, ...next };
  history.replaceState(null, '', location.pathname + addressOf(choice));
  show();
  void prepare();
}

function show(): void {
  for (const [page, box] of boxes) box.checked = choice.pages.includes(page);
  list.replaceChildren(...choice.pages.map(chosenRow));
  find('none').hidden = choice.pages.length > 0;
  find('set').hidden = choice.pages.length === 0;
  title.placeholder = usualTitle();
  sheets.classList.toggle('apart', choice.apart);
}

function chosenRow(page: string, at: number): HTMLElement {
  const shown = row.content.firstElementChild!.cloneNode(true) as HTMLElement;
  const answer = answers.get(page);
  const link = shown.querySelector('a')!;
  Object.assign(link, { href: `${base}${page}/`, textContent: titleOf(page) });
  shown.querySelector('b')!.textContent = `${at + 1}`;
  shown.querySelector('small')!.textContent = !answer ? text.loading : 'why' in answer ? answer.why : '';
  shown.classList.toggle('wrong', answer !== undefined && 'why' in answer);
  for (const button of shown.querySelectorAll('button')) {
    button.value = page;
    button.setAttribute('aria-label', text.button(button.dataset.words!, titleOf(page)));
  }
  shown.querySelector<HTMLButtonElement>('[data-do=up]')!.disabled = at === 0;
  shown.querySelector<HTMLButtonElement>('[data-do=down]')!.disabled = at === choice.pages.length - 1;
  return shown;
}

/** Loads what is missing, and draws the sheets anew. An older call that ends later draws nothing. */
async function prepare(): Promise<readonly Asked[]> {
  const build = (builds += 1);
  const { pages } = choice;
  if (pages.length > 0) {
    const { load, leafOf } = await import('./load.ts');
    await Promise.all(
      pages
        .filter((page) => !answers.has(page))
        .map(async (page) => {
          const loaded = await load(page);
          answers.set(page, 'why' in loaded ? { page, why: loaded.why } : { leaf: leafOf(loaded.page, loaded.document, today, names) });
        }),
    );
  }
  followMoves();
  const all = choice.pages.map((page) => answers.get(page)!);
  if (build !== builds) return all;
  show();
  const drawn = all.length > 0 ? (await import('./printed.ts')).sheetsOf(all, about()) : [];
  if (build === builds) sheets.replaceChildren(...drawn);
  return all;
}

/** A page that answered at another address is chosen by that one. */
function followMoves(): void {
  const now = choice.pages.map((page) => {
    const answer = answers.get(page);
    if (!answer || 'why' in answer || answer.leaf.page === page) return page;
    answers.set(answer.leaf.page, answer);
    say(text.moved(answer.leaf.title));
    return answer.leaf.page;
  });
  if (now.join() === choice.pages.join()) return;
  choice = { ...choice, pages: [...new Set(now)] };
  history.replaceState(null, '', location.pathname + addressOf(choice));
}

const DEEDS: Record<string, (page: string) => void | Promise<void>> = {
  up: (page) => move(page, -1),
  down: (page) => move(page, 1),
  remove(page) {
    const at = choice.pages.indexOf(page);
    say(text.removed(titleOf(page)));
    choose({ pages: choice.pages.filter((each) => each !== page) });
    const next = list.children[Math.min(at, choice.pages.length - 1)];
    (next?.querySelector<HTMLElement>('[data-do=remove]') ?? filter).focus();
  },
  async print() {
    say(text.loadingPages);
    const lacking = (await prepare()).filter((each) => 'why' in each).length;
    say(lacking === 0 ? '' : text.lacking(lacking, choice.pages.length));
    window.print();
  },
  async epub() {
    say(text.makingFile);
    const all = await prepare();
    const leaves = all.flatMap((each) => ('leaf' in each ? [each.leaf] : []));
    const lacking = all.length - leaves.length;
    if (leaves.length === 0) return say(text.noFile);
    const { epubOf } = await import('./epub.ts');
    const bytes = epubOf(leaves, about(), root.lang);
    const file = URL.createObjectURL(new Blob([bytes], { type: 'application/epub+zip' }));
    const name = about()
      .title.normalize('NFKD')
      .replace(/\p{M}/gu, '')
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '');
    Object.assign(document.createElement('a'), { href: file, download: `${name || text.fileName}.epub` }).click();
    setTimeout(() => URL.revokeObjectURL(file), 1000);
    say(text.fileSaved(lacking, all.length));
  },
  async copy() {
    await navigator.clipboard.writeText(about().address).then(
      () => say(text.copied),
      () => say(text.copyThis(about().address)),
    );
  },
};

function move(page: string, by: 1 | -1): void {
  choose({ pages: moved(choice.pages, page, by) });
  say(text.isNumber(titleOf(page), choice.pages.indexOf(page) + 1, choice.pages.length));
  const shown = list.children[choice.pages.indexOf(page)]!;
  const same = shown.querySelector<HTMLButtonElement>(`[data-do=${by < 0 ? 'up' : 'down'}]`)!;
  (same.disabled ? shown.querySelector<HTMLElement>('button:not(:disabled)') : same)?.focus();
}

frame.addEventListener('click', ({ target }) => {
  const button = (target as Element).closest<HTMLButtonElement>('button[data-do]');
  if (button) void DEEDS[button.dataset.do!]!(button.value);
});
frame.addEventListener('change', ({ target }) => {
  const box = target as HTMLInputElement;
  if (box === title) choose({ title: title.value.trim() });
  else if (box === apart) choose({ apart: apart.checked });
  else if (boxes.has(box.value))
    choose({ pages: box.checked ? [...choice.pages, box.value] : choice.pages.filter((page) => page !== box.value) });
});
filter.addEventListener('input', () => {
  const terms = filter.value.toLowerCase().split(/\s+/).filter(Boolean);
  let found = 0;
  for (const box of boxes.values()) {
    const words = box.dataset.page!.toLowerCase();
    rowOf(box).hidden = !terms.every((term) => words.includes(term));
    found += Number(!rowOf(box).hidden);
  }
  for (const fold of frame.querySelectorAll('details')) {
    fold.hidden = terms.length > 0 && !fold.querySelector('li:not([hidden])');
    if (terms.length > 0) fold.open = !fold.hidden;
  }
  find('filter-status').textContent = terms.length === 0 ? '' : text.found(found);
});

/** What is due today is first in its kind; of meetings, the next one. */
function dueFirst(): void {
  for (const rows of frame.querySelectorAll('details ul')) {
    const ranked = [...rows.children].map((each) => [each as HTMLElement, rankOf(each as HTMLElement)] as const);
    rows.append(...ranked.toSorted(([, a], [, b]) => a - b).map(([each]) => each));
  }
}
function rankOf(each: HTMLElement): number {
  const { due, day } = each.dataset;
  const isDue = due !== undefined && isWithinSpan(monthDayOf(today), ...windowHere(due));
  const note = each.querySelector('small')!;
  note.textContent = isDue ? text.dueNow : day && day < today ? text.past(note.dataset.words!) : (note.dataset.words ?? '');
  return isDue || (day && day >= today) ? 0 : day ? 2 : 1;
}

addEventListener('online', () => {
  for (const [page, answer] of answers) if ('why' in answer) answers.delete(page);
  show();
  void prepare();
});

frame.hidden = false;
title.value = choice.title;
apart.checked = choice.apart;
dueFirst();
document.addEventListener('almanac-district', dueFirst);
if (refused.length > 0) say(text.leftOut(refused));
show();
void prepare();
