/*
 * Actions of a checklist: own day, runs, notes, files. Loaded on the first press. Every action changes the record, and checklist.ts then
 * redraws the page. Sharing and the calendar have files of their own.
 */
import { isDay, type Day } from '../../../shared/days/day.ts';
import { answerDayButton, showDayBack } from '../../calculators/form/day-box.ts';
import { boxDay, dayFaultWords, dayInFull, readDay, readDayIn } from '../../calculators/form/typed-day.ts';
import { download } from './download.ts';
import { asFile, fromFile } from './files.ts';
import { hiveName } from './hive-name.ts';
import { carriedDay } from './lines.ts';
import { inOpenRun, listOf, openRun, own as ownOf, without, type ChecklistState, type Run } from './record.ts';
import { addHive, carryOn, changeOpen, file, freshId, merge, open, startAgain } from './runs.ts';
import { setAside } from './set-aside.ts';
import { boxes, find, id, key, list, show, stepOf, store, today, wordsOf } from './checklist.ts';
import { languageOfList } from './language-of-list.ts';
import * as text from './actions.en.ts';

const club = document.documentElement.dataset.shelf!.split('/')[0]!;
const status = find('status');
const tell = (words: string): void => void (status.textContent = words);

function change(make: (state: ChecklistState) => ChecklistState): void {
  store.change(make);
  show();
}
const openHive = (): string => hiveName(store.read(), id, listOf(store.read(), id).open);

/** Another hive or a new start: the parts fold as if the page had just been opened. */
function changeHive(make: (state: ChecklistState) => ChecklistState): void {
  list.removeAttribute('data-ready');
  change(make);
}
const inRun = (make: (run: Run) => Run): void => change((state) => inOpenRun(state, id, make));

const sharePanel = () => import('./share-panel.ts');

const ACTIONS: Record<string, (button: HTMLButtonElement) => void | Promise<void>> = {
  'day-box': (button) => void answerDayButton(button),
  well: (button) => answerStep(button.value, text.allIsWell),
  asked: (button) => answerStep(button.value, `${button.textContent!.trim()}.`),
  'new-run': () => {
    changeHive((state) => addHive(state, id));
    tell(text.nowFor(openHive()));
  },
  'name-run': () => {
    const name = prompt(text.askName, openHive());
    if (name !== null) change((state) => changeOpen(state, id, (run) => ({ ...run, name: name.trim().slice(0, 60) })));
  },
  'file-run': () => {
    if (confirm(text.askFile)) changeHive((state) => file(state, id, today, freshId(state, id)));
  },
  'start-again': () => {
    if (confirm(text.askStartOver)) changeHive((state) => startAgain(state, id));
  },
  start: (button) => {
    const day = carriedDay(button, openRun(store.read(), id));
    store.change((state) => carryOn(state, id, button.value, day));
    // Where nothing is stored, the day travels in the address and is offered there.
    location.href = button.dataset.to! + (store.trouble() && day ? `#run=${day};;` : '');
  },
  'set-aside': () => {
    try {
      setAside(localStorage, key);
      store.mended();
      change((state) => state);
      tell(text.putAside);
    } catch {
      tell(text.noRoom);
    }
  },
  notes: (button) => toggleNotes(button),
  print: () => window.print(),
  screen: (button) => import('./wake-lock.ts').then(({ keepScreenOn }) => keepScreenOn(button, tell)),
  'save-file': () => {
    const name = `${club}-lists-${today}.json`;
    download(name, 'application/json', asFile(store.read(), club, today));
    tell(text.savedAs(name));
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

/** The pressed button, the reader's own field that changed, or the date box while she types. */
export async function answer(touched: HTMLButtonElement, kind?: string): Promise<void> {
  if (kind === 'input') showDayBack(touched as unknown as HTMLInputElement);
  else if (touched.dataset.own) own(touched as unknown as HTMLInputElement);
  else await ACTIONS[touched.dataset.action!]?.(touched);
}

/** A field of the reader's own: her day, how she started, the run, a note, a file. */
function own(field: HTMLInputElement | HTMLSelectElement): void {
  const name = field.dataset.own!;
  if (name === 'day') return setTypedDay(field as HTMLInputElement);
  if (name === 'run') return changeHive((state) => open(state, id, field.value));
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
  // On a Spanish page of an English club both ways of writing a day are right.
  const ofClub = readDay(field.value);
  const read = ofClub.ok || ofClub.reason !== 'not-a-date' ? ofClub : readDayIn(languageOfList, field.value);
  const fault = find('day-fault');
  fault.hidden = read.ok;
  field.setAttribute('aria-invalid', String(!read.ok));
  fault.textContent = read.ok ? '' : dayFaultWords(read.reason, field.value, text.theDay);
  if (read.ok) setDay(read.value);
  else if (read.reason === 'empty') inRun(({ day: _, ...run }) => run);
}

function setDay(day: Day): void {
  inRun((run) => ({ ...run, day }));
  const field = document.querySelector<HTMLInputElement>('#own-day')!;
  field.value = boxDay(day);
  showDayBack(field);
  field.setAttribute('aria-invalid', 'false');
  find('day-fault').hidden = true;
  tell(text.datesCount(dayInFull(day)));
}

function setYard(words: string): void {
  change(({ yard: _, ...state }) => (words ? { ...state, yard: words } : state));
  tell(words ? text.addressStands : text.noAddress);
}

function answerStep(step: string, words: string): void {
  inRun((run) => ({ ...run, asked: { ...run.asked, [step]: words } }));
}

/** Each step gets a button that opens its own field. A field that is open stays with what was typed. */
function toggleNotes(button: HTMLButtonElement): void {
  const on = button.getAttribute('aria-pressed') !== 'true';
  button.setAttribute('aria-pressed', String(on));
  for (const box of boxes) {
    const step = stepOf(box);
    step.querySelector('.note-field')?.remove();
    if (on && !openRun(store.read(), id).filed) step.append(noteButton(box));
  }
  tell(on ? text.notesOn : '');
}

function noteButton(box: HTMLInputElement): HTMLElement {
  const isThere = ownOf(openRun(store.read(), id).notes, box.dataset.tick!) !== undefined;
  const button = Object.assign(document.createElement('button'), {
    type: 'button',
    className: 'note-field',
    textContent: isThere ? text.changeNote : text.addNote,
    ariaLabel: (isThere ? text.changeNoteOn : text.addNoteOn)(wordsOf(box)),
  });
  button.addEventListener('click', () => {
    const field = noteField(box);
    button.replaceWith(field);
    field.querySelector('input')!.focus();
  });
  return button;
}

function noteField(box: HTMLInputElement): HTMLElement {
  const label = Object.assign(document.createElement('label'), { className: 'note-field' });
  const words = Object.assign(document.createElement('span'), { className: 'visually-hidden', textContent: text.noteOn(wordsOf(box)) });
  const input = Object.assign(document.createElement('input'), {
    type: 'text',
    name: box.dataset.tick!,
    value: ownOf(openRun(store.read(), id).notes, box.dataset.tick!) ?? '',
    maxLength: 200,
    placeholder: text.note,
  });
  input.dataset.own = 'note';
  label.append(words, input);
  return label;
}

async function openFile(chosen: File | undefined): Promise<void> {
  if (!chosen) return;
  const read = fromFile(await chosen.text(), club);
  if (!read.ok) return tell(text.wrongFile[read.reason]);
  const { saved, state } = read.value;
  propose(state, isDay(saved) ? boxDay(saved) : undefined);
}

function propose(theirs: ChecklistState, saved: string | undefined): void {
  const { state, difference } = merge(store.read(), theirs);
  const { ticks, notes, runs, clashes } = difference;
  tell(text.fileAdds(saved, ticks, notes, runs, clashes));
  const take = Object.assign(document.createElement('button'), { type: 'button', textContent: text.use });
  const leave = Object.assign(document.createElement('button'), { type: 'button', textContent: text.notNow });
  take.addEventListener('click', () => {
    change((now) => merge(now, theirs).state);
    const opened = theirs.lists[id]?.open;
    if (opened && state.lists[id]?.runs[opened]) change((now) => open(now, id, opened));
    tell(text.isHere);
  });
  leave.addEventListener('click', () => tell(text.unchanged));
  status.append(take, ' ', leave);
}
