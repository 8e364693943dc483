/*
 * Actions of a checklist: own day, runs, notes, files. Loaded on the first press. Every action changes the record, and checklist.ts then
 * redraws the page. Sharing and the calendar have files of their own.
 */
import { readTypedDay } from '../../../shared/days/typed-day.ts';
import { isDay, type Day } from '../../../shared/days/day.ts';
import { formatDay, formatDayWithWeekday } from '../../../shared/days/show-day.ts';
import { download } from './download.ts';
import { asFile, fromFile } from './files.ts';
import { inOpenRun, openRun, own as ownOf, without, type ChecklistState, type Run } from './record.ts';
import { begin, changeOpen, file, freshId, merge, open, runsOf, startAgain } from './runs.ts';
import { setAside } from './set-aside.ts';
import { boxes, find, id, key, show, stepOf, store, today, wordsOf } from './checklist.ts';

const club = document.documentElement.dataset.shelf!.split('/')[0]!;
const status = find('status');
const tell = (words: string): void => void (status.textContent = words);

function change(make: (state: ChecklistState) => ChecklistState): void {
  store.change(make);
  show();
  drawRuns();
}
const inRun = (make: (run: Run) => Run): void => change((state) => inOpenRun(state, id, make));

const sharePanel = () => import('./share-panel.ts');

const ACTIONS: Record<string, (button: HTMLButtonElement) => void | Promise<void>> = {
  today: () => setDay(today),
  well: (button) => answerStep(button.value, 'All is well here.'),
  asked: (button) => answerStep(button.value, `${button.textContent!.trim()}.`),
  'new-run': () => change((state) => begin(state, id, freshId(state, id), { name: '', ticks: {} })),
  'name-run': () => {
    const name = prompt('A name for this hive, such as "green hive":', openRun(store.read(), id).name);
    if (name !== null) change((state) => changeOpen(state, id, (run) => ({ ...run, name: name.trim().slice(0, 60) })));
  },
  'file-run': () => {
    if (confirm('Save this checklist to history? You can still read it, and a new one opens.'))
      change((state) => file(state, id, today, freshId(state, id)));
  },
  'start-again': () => {
    if (confirm('Clear all ticks and notes for this hive? Other hives and lists keep theirs.')) change((state) => startAgain(state, id));
  },
  'set-aside': () => {
    try {
      setAside(localStorage, key);
      store.mended();
      change((state) => state);
      tell('What could not be read was put aside, not deleted. Ticks are kept again.');
    } catch {
      tell('This browser has no room to put it aside. Nothing was changed.');
    }
  },
  notes: (button) => toggleNotes(button),
  print: () => window.print(),
  screen: (button) => import('./wake-lock.ts').then(({ keepScreenOn }) => keepScreenOn(button, tell)),
  'save-file': () => {
    const name = `${club}-lists-${today}.json`;
    download(name, 'application/json', asFile(store.read(), club, today));
    tell(`Saved as ${name}.`);
  },
  'save-table': async () => tell((await import('./exports.ts')).saveTable()),
  calendar: async () => void (find('share-status').textContent = await (await import('./exports.ts')).saveCalendar()),
  share: async (button) => (await sharePanel()).toggle(button),
  send: async () => (await sharePanel()).send(),
  copy: async () => (await sharePanel()).copy(),
  code: async (button) => (await sharePanel()).toggleCode(button),
};

/** The shared hive in an address. */
export const offer = async (fragment: string): Promise<void> => (await import('./offer.ts')).offer(fragment);

/** The pressed button, or the reader's own field that changed. */
export async function answer(touched: HTMLButtonElement): Promise<void> {
  if (touched.dataset.own) own(touched as unknown as HTMLInputElement);
  else await ACTIONS[touched.dataset.action!]?.(touched);
}

/** A field of the reader's own: her day, how she started, the run, a note, a file. */
function own(field: HTMLInputElement | HTMLSelectElement): void {
  const name = field.dataset.own!;
  if (name === 'day') return setTypedDay(field as HTMLInputElement);
  if (name === 'run') return change((state) => open(state, id, field.value));
  if (name === 'note')
    return inRun((run) => ({
      ...run,
      notes: field.value.trim() ? { ...run.notes, [field.name]: field.value.trim().slice(0, 200) } : without(run.notes ?? {}, field.name),
    }));
  if (name === 'yard') return setYard(field.value.replace(/\s+/g, ' ').trim());
  if (name === 'file') return void openFile((field as HTMLInputElement).files?.[0]);
  inRun((run) => ({ ...run, choices: { ...run.choices, [name]: field.value } }));
}

function setTypedDay(field: HTMLInputElement): void {
  const read = readTypedDay(field.value);
  const fault = find('day-fault');
  fault.hidden = read.ok;
  field.setAttribute('aria-invalid', String(!read.ok));
  fault.textContent = read.ok ? '' : `${WRONG_DAY[read.reason] ?? 'That is not a day.'} Write it as 18 April 2026.`;
  if (read.ok) setDay(read.value);
  else if (read.reason === 'empty') inRun(({ day: _, ...run }) => run);
}

const WRONG_DAY: Record<string, string> = {
  empty: 'No day is written.',
  'slash-date': 'With slashes nobody can tell the day from the month.',
  'impossible-date': 'That day is not in the calendar.',
  'no-year': 'The year is missing.',
  'short-year': 'Write the year with four figures.',
  'wrong-weekday': 'That day of the week does not fit the date.',
};

function setDay(day: Day): void {
  inRun((run) => ({ ...run, day }));
  const field = document.querySelector<HTMLInputElement>('#own-day')!;
  field.value = formatDay(day);
  field.setAttribute('aria-invalid', 'false');
  find('day-fault').hidden = true;
  tell(`Dates count from ${formatDayWithWeekday(day)}. Ticks stay.`);
}

function setYard(words: string): void {
  change(({ yard: _, ...state }) => (words ? { ...state, yard: words } : state));
  tell(words ? 'The address stands beside the emergency number on every list.' : 'No address is kept now.');
}

function answerStep(step: string, words: string): void {
  inRun((run) => ({ ...run, asked: { ...run.asked, [step]: words } }));
}

/** A select of the list's runs, once there is more than one. */
export function drawRuns(): void {
  const choice = find<HTMLSelectElement>('runs');
  const runs = runsOf(store.read(), id);
  choice.closest<HTMLElement>('.field')!.hidden = runs.length < 2;
  choice.replaceChildren(
    ...runs.map(
      ({ id: value, name, run, open: chosen }) => new Option(run.filed ? `${name}, filed ${run.filed}` : name, value, chosen, chosen),
    ),
  );
}

function toggleNotes(button: HTMLButtonElement): void {
  const on = button.getAttribute('aria-pressed') !== 'true';
  button.setAttribute('aria-pressed', String(on));
  const run = openRun(store.read(), id);
  for (const box of boxes) {
    const step = stepOf(box);
    step.querySelector('.note-field')?.remove();
    if (!on) continue;
    const label = document.createElement('label');
    label.className = 'note-field';
    label.append(Object.assign(document.createElement('span'), { className: 'visually-hidden', textContent: `Note on: ${wordsOf(box)}` }));
    const input = Object.assign(document.createElement('input'), {
      type: 'text',
      name: box.dataset.tick!,
      value: ownOf(run.notes, box.dataset.tick!) ?? '',
      maxLength: 200,
      placeholder: 'Note',
      disabled: Boolean(run.filed),
    });
    input.dataset.own = 'note';
    label.append(input);
    step.append(label);
  }
}

async function openFile(chosen: File | undefined): Promise<void> {
  if (!chosen) return;
  const read = fromFile(await chosen.text(), club);
  if (!read.ok)
    return tell(
      {
        'not-a-record': 'That file holds no ticks of this almanac.',
        newer: 'That file was saved by a newer edition. Reload this page first.',
        'other-club': 'That file is another club’s.',
      }[read.reason],
    );
  const { saved, state } = read.value;
  propose(state, isDay(saved) ? `The file that was saved on ${formatDay(saved)}` : 'The file');
}

function propose(theirs: ChecklistState, from: string): void {
  const { state, difference } = merge(store.read(), theirs);
  const { ticks, notes, runs, clashes } = difference;
  const added = [count(ticks, 'check mark'), count(notes, 'note'), count(runs, 'hive')].join(', ');
  tell(`${from} adds ${added}.${clashes.length > 0 ? ` Where both differ, yours stays: ${clashes.join('; ')}.` : ''} `);
  const take = Object.assign(document.createElement('button'), { type: 'button', textContent: 'Use it here' });
  const leave = Object.assign(document.createElement('button'), { type: 'button', textContent: 'Not now' });
  take.addEventListener('click', () => {
    change((now) => merge(now, theirs).state);
    const opened = theirs.lists[id]?.open;
    if (opened && state.lists[id]?.runs[opened]) change((now) => open(now, id, opened));
    tell('It is now on this device.');
  });
  leave.addEventListener('click', () => tell('Nothing was changed.'));
  status.append(take, ' ', leave);
}

const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? '' : 's'}`;

drawRuns();
