/* What only a stored record shows: the hives, notes and answers in their steps, and the apiary's address. Loaded once there is a record. */
import { isDay, type Day } from '../../../shared/days/day.ts';
import { formatDay } from '../../../shared/days/show-day.ts';
import { parts } from './folds.ts';
import { hiveName } from './hive-name.ts';
import { openRun, own, tickOf, type Run } from './record.ts';
import { runsOf } from './runs.ts';
import { isSpanishList, languageOfList } from './language-of-list.ts';
import * as text from './lines.en.ts';
import * as es from './lines.es.ts';
import { boxes, counted, find, id, list, printFor, stepOf, store } from './checklist.ts';

const newWords = isSpanishList ? es.newWords : text.newWords;
const startWords = isSpanishList ? es.start : text.start;

export function showLines(paused: boolean): void {
  sayMore(paused);
  countParts();
  const state = store.read();
  const run = openRun(state, id);
  for (const box of boxes) {
    const name = box.dataset.tick!;
    const isNew = tickOf(run, name, printFor(box)) === 'changed';
    line(stepOf(box), 'step-changed', isNew ? newWords : '');
    line(stepOf(box), 'step-note', [own(run.notes, name), own(run.asked, name)].filter(Boolean).join(' '));
  }
  const hives = runsOf(state, id);
  const options = hives.map(
    ({ id: value, name, run: { filed }, open }) => new Option(filed ? text.filed(name, filed) : name, value, open, open),
  );
  // A list without a record is for the hive that the page names.
  find('runs').replaceChildren(...(options.length > 0 ? options : [new Option(hiveName(state, id, ''))]));
  const open = hives.find((hive) => hive.open);
  find('run-name').textContent = open ? text.isFor(open.name) : '';
  const start = document.querySelector<HTMLElement>('[data-action=start]');
  const day = start && carriedDay(start, run);
  if (start) start.textContent = startWords(day ? start.dataset.started!.replace('{day}', formatDay(day, languageOfList)) : undefined);
  find('set-aside').hidden = store.trouble() !== 'damaged';
  const { yard = '' } = state;
  find('yard').textContent = yard;
  const field = find<HTMLInputElement>('own=yard');
  if (field !== document.activeElement) field.value = yard;
}

/** Most lists have no more to say than the bar says, so the sentences load when there is one. */
function sayMore(paused: boolean): void {
  const { ticks, filed } = openRun(store.read(), id);
  const gone = Object.keys(ticks).filter((step) => !boxes.some((box) => box.dataset.tick === step)).length;
  const trouble = store.trouble();
  const hasMore = Boolean(filed || paused || gone || trouble);
  find('progress').classList.toggle('visually-hidden', !hasMore);
  if (hasMore) void import('./say-more.ts').then((more) => more.say({ filed: Boolean(filed), paused, gone, trouble }));
}

/** How many steps of each part are done. The part of what may go wrong has none. */
function countParts(): void {
  for (const part of parts()) {
    const all = part.querySelectorAll('[data-tick]').length;
    const done = part.querySelectorAll(':checked').length;
    if (all > 0) part.querySelector('[data-count]')!.textContent = counted(list.dataset.saysCount!, done, all);
    part.classList.toggle('done', all > 0 && done === all);
  }
}

/** The day that the next checklist counts from: this one's own, or the day of the last tick here. */
export function carriedDay(button: HTMLElement, { day, ticks }: Run): Day | undefined {
  if (!button.dataset.started) return undefined;
  const last =
    button.dataset.counts === 'true'
      ? day
      : Object.values(ticks)
          .map(({ on }) => on)
          .sort()
          .at(-1);
  return last && isDay(last) ? last : undefined;
}

// The sticky bar above the list grows with the apiary's address, so the scroll margin for keyboard users grows too.
const staying = find('yard').parentElement!;
new ResizeObserver(() => document.documentElement.style.setProperty('--reach', `${staying.offsetHeight}px`)).observe(staying);

/** Puts a line of text into a step. An empty text removes the line. */
export function line(step: HTMLElement, name: string, words: string | undefined): void {
  const place = step.querySelector<HTMLElement>(`.${name}`) ?? Object.assign(document.createElement('p'), { className: name });
  if (!words) return place.remove();
  place.textContent = words;
  if (!place.isConnected) step.querySelector('label')!.after(place);
}
