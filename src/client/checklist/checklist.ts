/*
 * Checklist that saves ticks, the reader's own day, and what is next. It draws the stored record and has no state of its own. Larger
 * parts (runs, notes, files, links) load on a press.
 */
import { todayIn } from '../../../shared/days/today.ts';
import { printOf } from '../../../shared/address/print.ts';
import { FIRST_RUN, inOpenRun, listOf, openRun, own, tickOf, withTick, type Run } from './record.ts';
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

/** Puts a line of text into a step. An empty text removes the line. */
export function line(step: HTMLElement, name: string, words: string | undefined): void {
  const place = step.querySelector<HTMLElement>(`.${name}`) ?? Object.assign(document.createElement('p'), { className: name });
  if (!words) return place.remove();
  place.textContent = words;
  if (!place.isConnected) step.querySelector('label')!.after(place);
}

/** A step at which the list pauses until the reader has entered who she asked, or that all is well. */
const pauses = (box: HTMLInputElement, run: Run): boolean => Boolean(stepOf(box).dataset.asks) && !own(run.asked, box.dataset.tick!);

/** Loaded once the reader has given her day. */
let dated: Promise<typeof import('./dated.ts')> | undefined;

export function show(): void {
  const state = store.read();
  const run = openRun(state, id);
  let next: HTMLInputElement | null = null;
  let paused = false;
  for (const box of boxes) {
    const step = stepOf(box);
    const tick = tickOf(run, box.dataset.tick!, printOf(wordsOf(box)));
    box.checked = tick !== null;
    box.disabled = Boolean(run.filed) || (paused && !tick);
    if (!tick) next ??= box;
    step.toggleAttribute('data-next', box === next && !run.filed);
    line(step, 'step-changed', tick === 'changed' ? 'These words are new since you ticked.' : '');
    line(step, 'step-note', [own(run.notes, box.dataset.tick!), own(run.asked, box.dataset.tick!)].filter(Boolean).join(' '));
    const asking = box === next && pauses(box, run);
    const answers = step.querySelector<HTMLElement>('p.actions');
    if (answers) answers.hidden = !asking;
    paused ||= asking;
  }
  say(run, next, paused);
  if (run.day || dated) void (dated ??= import('./dated.ts')).then(({ showDays }) => showDays(openRun(store.read(), id)));
}

function say(run: Run, next: HTMLInputElement | null, paused: boolean): void {
  const done = boxes.filter((box) => box.checked).length;
  const gone = Object.keys(run.ticks).filter((step) => !boxes.some((box) => box.dataset.tick === step)).length;
  const trouble = store.trouble();
  const place = find('progress');
  // The sentences are data attributes of the line that shows them.
  const words = [
    `${done} of ${boxes.length} done.`,
    run.filed ? place.dataset.filed : next ? (done > 0 ? `Next: ${wordsOf(next)}.` : '') : 'All done.',
    paused ? place.dataset.paused : '',
    gone > 0 ? `${place.dataset.gone} ${gone}.` : '',
    trouble ? place.dataset[trouble]! : '',
  ];
  place.textContent = words.filter(Boolean).join(' ');
  const way = find<HTMLAnchorElement>('way');
  way.hidden = done === 0 || Boolean(run.filed);
  way.href = next ? `#${stepOf(next).id}` : '#text';
  find('way-done').textContent = `${done} of ${boxes.length}`;
  find('way-next').textContent = next ? `Next: ${wordsOf(next)}` : 'All done';
  const bar = find<HTMLProgressElement>('bar');
  bar.max = boxes.length;
  bar.value = done;
  const { open } = listOf(store.read(), id);
  find('run-name').textContent = run.name || open !== FIRST_RUN ? `This hive: ${run.name || open}.` : '';
  find('set-aside').hidden = trouble !== 'damaged';
  const { yard = '' } = store.read();
  find('yard').textContent = yard;
  const field = find<HTMLInputElement>('own=yard');
  if (field !== document.activeElement) field.value = yard;
}

list.addEventListener('change', (event) => {
  const box = event.target as HTMLInputElement;
  const step = box.dataset.tick;
  if (!step) return;
  const tick = box.checked ? { on: today, of: printOf(wordsOf(box)) } : null;
  store.change((state) => inOpenRun(state, id, (run) => withTick(run, step, tick)));
  void navigator.storage?.persist?.();
  show();
});

// The other actions below the list load on the first press of one of their buttons, which is then handled.
const actions = () => import('./actions.ts');
for (const [kind, name] of [
  ['click', 'button[data-action]'],
  ['change', '[data-own]'],
] as const) {
  document.addEventListener(kind, ({ target }) => {
    const touched = (target as Element).closest<HTMLButtonElement>(name);
    if (touched) void actions().then((all) => all.answer(touched));
  });
}

for (const part of document.querySelectorAll<HTMLElement>('[data-js]')) part.hidden = false;
// The sticky bar above the list grows with the apiary's address, so the scroll margin for keyboard users grows too.
const staying = find('yard').parentElement!;
new ResizeObserver(() => root.style.setProperty('--reach', `${staying.offsetHeight}px`)).observe(staying);
window.addEventListener('storage', (event) => event.key === key && show());
window.addEventListener('pageshow', show);
window.addEventListener('hashchange', opened);
show();

/** An address with a shared hive offers it above the title. */
function opened(): void {
  if (location.hash.startsWith('#run=')) void actions().then((all) => all.offer(location.hash));
}
opened();
