/*
 * Offer of a shared hive, above the title. A link is applied at once where this browser has nothing of the list, with an undo, and is
 * offered where it has a hive. A link that cannot be read changes nothing. Loaded when an address has a shared hive.
 */
import { formatDay } from '../../../shared/days/show-day.ts';
import { isDay } from '../../../shared/days/day.ts';
import { languageHere } from '../../../shared/country/language-here.ts';
import { accept, type Acceptance } from './accept.ts';
import { boxes, id, list, show, stepOf, store, today } from './checklist.ts';
import { hiveName } from './hive-name.ts';
import { listOf, without, type ChecklistState, type Run } from './record.ts';
import { runFromTail } from './share.ts';
import { plainWords } from './step-words.ts';
import * as text from './offer.en.ts';

const SHOWN_STEPS = 3;

let notice: HTMLElement | undefined;

export function offer(fragment: string): void {
  const read = runFromTail(
    fragment,
    boxes.map((box) => box.dataset.tick!),
    today,
  );
  if (!read) return say(text.unreadable, text.cutShort);
  const { run, unknown } = read;
  const acceptance = accept(store.read(), id, run);
  const name = hiveName(acceptance.state, id, acceptance.hive);
  const what = described(run, unknown);
  if (acceptance.as === 'first') return use(run, what, text.isHere);
  if (acceptance.as === 'same' && !acceptance.adds) {
    forget();
    return say(what, text.hasAll(name));
  }
  say(what, changeWords(acceptance, name), [
    [text.use, () => use(run, text.hiveIsHere(name))],
    [text.notNow, leave],
  ]);
}

/** "Someone shared this checklist with you: installed 18 April 2026, 1 of 20 steps done." */
function described({ name, day, ticks, notes = {} }: Run, unknown: number): string {
  const since = document.querySelector<HTMLElement>('[data-since]')?.dataset.since ?? text.from('{day}');
  const known = day && isDay(day) ? since.replace('{day}', formatDay(day, languageHere())) : '';
  return text.described(name, known, Object.keys(ticks).length, boxes.length, Object.keys(notes).length, unknown);
}

function changeWords({ state, as, ticks, notes, differs }: Acceptance, name: string): string {
  if (as === 'more') {
    const here = Object.keys(listOf(store.read(), id).runs);
    return text.added(
      here.map((each) => hiveName(state, id, each)),
      name,
    );
  }
  const named = ticks.slice(0, SHOWN_STEPS).map((step) => plainWords(stepOf(boxes.find((box) => box.dataset.tick === step)!)));
  return text.adds(name, ticks.length, named, notes.length, differs);
}

/** Applies the hive to the record as it is now, and offers to undo that. */
function use(run: Run, what: string, then = ''): void {
  const before = store.read();
  store.change((now) => accept(now, id, run).state);
  const after = JSON.stringify(store.read().lists[id]);
  redraw();
  const trouble = store.trouble();
  // Where nothing is kept, the address still has the hive after a reload.
  if (!trouble) forget();
  say(what, trouble ? text.notKept : then, [[text.undo, () => undo(before, after)]]);
  // An undo would take later steps too.
  const button = notice?.querySelector('button');
  document.addEventListener('change', () => button?.remove(), { once: true });
}

/** The parts fold for this hive as if the page had just been opened. */
function redraw(): void {
  list.removeAttribute('data-ready');
  show();
}

function undo(before: ChecklistState, after: string): void {
  if (JSON.stringify(store.read().lists[id]) !== after) return say(text.changedSince, text.stays);
  const held = Object.hasOwn(before.lists, id) ? before.lists[id] : undefined;
  store.change((now) => ({ ...now, lists: held ? { ...now.lists, [id]: held } : without(now.lists, id) }));
  redraw();
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

type Button = readonly [words: string, press: () => void];

function say(what: string, more: string, buttons: readonly Button[] = []): void {
  const isNew = !notice?.isConnected;
  notice ??= Object.assign(document.createElement('section'), {
    className: 'notice shared no-print',
    ariaLabel: text.sharedChecklist,
    tabIndex: -1,
  });
  const words = document.createElement('p');
  words.setAttribute('role', 'status');
  words.append(Object.assign(document.createElement('b'), { textContent: what }), ` ${more}`);
  const actions = Object.assign(document.createElement('p'), { className: 'actions' });
  for (const [index, [label, press]] of buttons.entries()) {
    const button = Object.assign(document.createElement('button'), { type: 'button', textContent: label });
    if (index === 0 && buttons.length > 1) button.className = 'main';
    button.addEventListener('click', press);
    actions.append(button);
  }
  notice.replaceChildren(words, ...(buttons.length > 0 ? [actions] : []));
  if (!isNew) return notice.focus({ preventScroll: true });
  document.querySelector('h1')!.before(notice);
  scrollTo(0, 0);
}
