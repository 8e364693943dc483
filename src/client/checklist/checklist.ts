/*
 * Checklist that saves ticks, the reader's own day, and what is next. It draws the stored record and has no state of its own. Larger
 * parts (hives, notes, files, links) load on a press.
 */
import { todayIn } from '../../../shared/days/today.ts';
import { printOf } from '../../../shared/address/print.ts';
import { reveal, showFolds } from './folds.ts';
import { inOpenRun, openRun, own, tickOf, withTick, type Run } from './record.ts';
import { openStore } from './store.ts';

const root = document.documentElement;
export const list = document.querySelector<HTMLElement>('[data-list]')!;
export const id = list.dataset.list!;
export const key = `almanac ${root.dataset.shelf} lists`;
export const store = openStore(() => localStorage, key);
export const today = todayIn(root.dataset.zone!, new Date());
export const boxes = [...list.querySelectorAll<HTMLInputElement>('input[data-tick]')];
export const find = <T extends HTMLElement>(name: string): T => document.querySelector<T>(`[data-${name}]`)!;

export const stepOf = (box: HTMLInputElement): HTMLElement => box.closest<HTMLElement>('.step')!;
export const wordsOf = (box: HTMLInputElement): string =>
  stepOf(box).querySelector('.step-words')!.textContent!.replace(/\s+/g, ' ').trim();

/** A print of the words. A step in another language than the club's has that of the original, so that the ticks are the same. */
export const printFor = (box: HTMLInputElement): string => stepOf(box).dataset.print ?? printOf(wordsOf(box));

/** The words of the list's progress: `progress` in components/mdx/text.en.ts. */
type Says = Record<'saysCount' | 'saysDone' | 'saysNext' | 'saysThen' | 'saysAll', string>;

/** How many steps are done, in the words that the list has for it. Those are in the language of its steps. */
export const counted = (words: string, done: number, all: number): string => words.replace('{done}', `${done}`).replace('{all}', `${all}`);

/** A step at which the list pauses until the reader has entered who she asked, or that all is well. */
const pauses = (box: HTMLInputElement, run: Run): boolean => Boolean(stepOf(box).dataset.asks) && !own(run.asked, box.dataset.tick!);

/** Loaded once the reader has given her day. */
let dated: Promise<typeof import('./dated.ts')> | undefined;
/** Loaded once there is a record to show, or more to say than how many steps are done. */
let lines: Promise<typeof import('./lines.ts')> | undefined;

export function show(): void {
  const state = store.read();
  const run = openRun(state, id);
  const { saysCount, saysDone, saysNext, saysThen, saysAll } = list.dataset as Says;
  let next: HTMLInputElement | null = null;
  let paused = false;
  for (const box of boxes) {
    const step = stepOf(box);
    const tick = tickOf(run, box.dataset.tick!, printFor(box));
    box.checked = tick !== null;
    box.disabled = Boolean(run.filed) || (paused && !tick);
    if (!tick) next ??= box;
    step.removeAttribute('data-next');
    if (box === next && !run.filed) step.dataset.next = saysNext;
    const asking = box === next && pauses(box, run);
    const answers = step.querySelector<HTMLElement>('p.actions');
    if (answers) answers.hidden = !asking;
    paused ||= asking;
  }
  const done = boxes.filter((box) => box.checked).length;
  const words = next ? saysThen.replace('{step}', () => wordsOf(next)) : saysAll;
  // A step may be a question.
  const ended = /[.?!]$/.test(words) ? words : `${words}.`;
  find('progress').textContent = `${counted(saysDone, done, boxes.length)}${run.filed || (next && !done) ? '' : ` ${ended}`}`;
  const way = find<HTMLAnchorElement>('way');
  way.hidden = !done || Boolean(run.filed);
  way.href = next ? `#${stepOf(next).id}` : '#all-done';
  way.style.setProperty('--steps', `${boxes.length}`);
  find('way-done').textContent = counted(saysCount, done, boxes.length);
  find('way-next').textContent = words;
  find<HTMLProgressElement>('bar').value = done;
  find('done').hidden = next !== null;
  showFolds(next);
  if (lines || paused || state.yard || store.trouble() || Object.hasOwn(state.lists, id))
    void (lines ??= import('./lines.ts')).then(({ showLines }) => showLines(paused));
  if (run.day || dated) void (dated ??= import('./dated.ts')).then(({ showDays }) => showDays(openRun(store.read(), id)));
}

list.addEventListener('change', (event) => {
  const box = event.target as HTMLInputElement;
  const step = box.dataset.tick;
  if (!step) return;
  const tick = box.checked ? { on: today, of: printFor(box) } : null;
  store.change((state) => inOpenRun(state, id, (run) => withTick(run, step, tick)));
  void navigator.storage?.persist?.();
  show();
  if (box.checked) void import('./fold-done.ts').then(({ foldDone }) => foldDone(box));
});

// The other actions of the list load on the first press of one of their buttons, which is then handled.
const actions = () => import('./actions.ts');
for (const [kind, name] of [
  ['click', 'button[data-action]'],
  ['change', '[data-own]'],
  ['input', '[data-day-box]'],
] as const) {
  document.addEventListener(kind, ({ target }) => {
    const touched = (target as Element).closest<HTMLButtonElement>(name);
    if (touched) void actions().then((all) => all.answer(touched, kind));
  });
}

for (const part of document.querySelectorAll<HTMLElement>('[data-js]')) part.hidden = false;
window.addEventListener('storage', (event) => event.key === key && show());
window.addEventListener('pageshow', show);
window.addEventListener('hashchange', opened);
// A link on this page opens the fold of its target before the browser goes there.
document.addEventListener('click', ({ target }) => reveal((target as Element).closest<HTMLAnchorElement>('a[href*="#"]')?.hash));
show();

/** An address with a shared hive offers it above the title. An address of a step or a case opens its fold. */
function opened(): void {
  if (location.hash.startsWith('#run=')) void actions().then((all) => all.offer(location.hash));
  else reveal(location.hash)?.scrollIntoView();
}
opened();
