/*
 * Offer of a shared hive, above the title. A link is applied at once where this browser has nothing of the list, with an undo, and is
 * offered where it has a hive. A link that cannot be read changes nothing. Loaded when an address has a shared hive.
 */
import { formatDay } from '../../../shared/days/show-day.ts';
import { isDay } from '../../../shared/days/day.ts';
import { accept, type Acceptance } from './accept.ts';
import { boxes, id, show, stepOf, store, today } from './checklist.ts';
import { hiveName } from './hive-name.ts';
import { listOf, without, type ChecklistState, type Run } from './record.ts';
import { runFromTail } from './share.ts';
import { plainWords } from './step-words.ts';

const SHOWN_STEPS = 3;

let notice: HTMLElement | undefined;

export function offer(fragment: string): void {
  const read = runFromTail(
    fragment,
    boxes.map((box) => box.dataset.tick!),
    today,
  );
  if (!read) return say('The link to a shared checklist can’t be read. It may have been cut short. Nothing was changed.');
  const acceptance = accept(store.read(), id, read.run);
  const what = `${described(read.run)}${read.unknown > 0 ? ` ${count(read.unknown, 'step')} of it ${read.unknown === 1 ? 'is' : 'are'} not in this checklist.` : ''}`;
  if (acceptance.as === 'first') return use(read.run, `${what} It is now on this device.`);
  if (acceptance.as === 'same' && !acceptance.adds) {
    forget();
    return say(`${what} ${hiveName(acceptance.state, id, acceptance.hive)} on this device already has all of it.`);
  }
  say(`${what} ${changeWords(acceptance)}`, [
    ['Use it here', () => use(read.run, `${hiveName(acceptance.state, id, acceptance.hive)} is now on this device.`)],
    ['Not now', leave],
  ]);
}

/** "Someone shared this checklist with you: installed 18 April 2026, 1 of 20 steps done." */
function described(run: Run): string {
  const since = document.querySelector<HTMLElement>('[data-since]')?.dataset.since ?? 'from';
  const notes = Object.keys(run.notes ?? {}).length;
  const parts = [
    run.day && isDay(run.day) ? `${since} ${formatDay(run.day)}` : '',
    `${Object.keys(run.ticks).length} of ${boxes.length} steps done`,
    notes > 0 ? count(notes, 'note') : '',
  ];
  return `Someone shared this checklist with you${run.name ? ` (${run.name})` : ''}: ${parts.filter(Boolean).join(', ')}.`;
}

function changeWords({ state, hive, as, ticks, notes, differs }: Acceptance): string {
  const name = hiveName(state, id, hive);
  if (as === 'more') {
    const others = Object.keys(listOf(store.read(), id).runs).map((each) => hiveName(state, id, each));
    const stay = others.length === 1 ? `${others[0]} stays as it is.` : `Your ${others.length} other hives stay as they are.`;
    return `This device has the checklist already. The shared one becomes ${name}, and ${stay}`;
  }
  const words = ticks.slice(0, SHOWN_STEPS).map((step) => `“${plainWords(stepOf(boxes.find((box) => box.dataset.tick === step)!))}”`);
  const more = ticks.length - words.length;
  const steps = ticks.length > 0 ? `${count(ticks.length, 'step')} done (${words.join(', ')}${more > 0 ? ` and ${more} more` : ''})` : '';
  const added = [steps, notes.length > 0 ? count(notes.length, 'note') : ''].filter(Boolean).join(' and ') || 'a date or a name';
  return `It adds ${added} to ${name}. ${differs ? 'Where the two differ, yours stays.' : 'Nothing of yours changes.'}`;
}

/** Applies the hive to the record as it is now, and offers to undo that. */
function use(run: Run, words: string): void {
  const before = store.read();
  store.change((now) => accept(now, id, run).state);
  const after = JSON.stringify(store.read().lists[id]);
  show();
  void import('./actions.ts').then(({ drawRuns }) => drawRuns());
  const trouble = store.trouble();
  // Where nothing is kept, the address still has the hive after a reload.
  if (!trouble) forget();
  say(trouble ? `${words} This browser can’t keep it. The link opens it again.` : words, [['Undo', () => undo(before, after)]]);
  // An undo would take later steps too.
  const button = notice?.querySelector('button');
  document.addEventListener('change', () => button?.remove(), { once: true });
}

function undo(before: ChecklistState, after: string): void {
  if (JSON.stringify(store.read().lists[id]) !== after)
    return say('You have changed the checklist since then, so it stays. Remove the steps yourself.');
  const held = Object.hasOwn(before.lists, id) ? before.lists[id] : undefined;
  store.change((now) => ({ ...now, lists: held ? { ...now.lists, [id]: held } : without(now.lists, id) }));
  show();
  void import('./actions.ts').then(({ drawRuns }) => drawRuns());
  leave();
}

/** Takes the hive out of the address, so that a reload does not offer it again. */
const forget = (): void => history.replaceState(history.state, '', location.pathname + location.search);

function leave(): void {
  forget();
  notice?.remove();
  notice = undefined;
  const heading = document.querySelector('h1')!;
  heading.tabIndex = -1;
  heading.focus({ preventScroll: true });
}

function say(words: string, buttons: readonly (readonly [words: string, press: () => void])[] = []): void {
  const isNew = !notice?.isConnected;
  notice ??= Object.assign(document.createElement('section'), {
    className: 'notice shared no-print',
    ariaLabel: 'Shared checklist',
    tabIndex: -1,
  });
  const text = Object.assign(document.createElement('p'), { textContent: words });
  text.setAttribute('role', 'status');
  const actions = Object.assign(document.createElement('p'), { className: 'actions' });
  for (const [index, [label, press]] of buttons.entries()) {
    const button = Object.assign(document.createElement('button'), { type: 'button', textContent: label });
    if (index === 0 && buttons.length > 1) button.className = 'main';
    button.addEventListener('click', press);
    actions.append(button);
  }
  notice.replaceChildren(text, ...(buttons.length > 0 ? [actions] : []));
  if (isNew) document.querySelector('h1')!.before(notice);
  else notice.focus({ preventScroll: true });
  if (isNew) notice.scrollIntoView({ block: 'nearest' });
}

const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? '' : 's'}`;
