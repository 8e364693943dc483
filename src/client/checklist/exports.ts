/* Calendar file and table of a checklist, in the words of its steps. Loaded on the press of their buttons. */
import { windowHere } from '../../calculators/form/window-here.ts';
import { nextOccurrence } from '../../../shared/days/occurrence.ts';
import { boxes, find, id, list, stepOf, store, today } from './checklist.ts';
import { download, fileWords } from './download.ts';
import { asTable } from './files.ts';
import { hiveName } from './hive-name.ts';
import { spanOf, type Span } from './own-days.ts';
import { FIRST_RUN, listOf, openRun, type Run } from './record.ts';
import { plainWords, whyOf } from './step-words.ts';
import type { DatedStep } from './steps-calendar.ts';
import * as text from './exports.en.ts';

const title = document.querySelector('h1')!.textContent!.trim();
const page = location.href.split('#')[0]!;

function windowSpan(dates: string | undefined): Span | null {
  if (!dates) return null;
  const { first, last } = nextOccurrence(...windowHere(dates), today);
  return { from: first, to: last };
}

/** The days of a step in a hive: counted from the reader's own day, or those of the season here. */
function daysOf(step: HTMLElement, run: Run): Span | null {
  const { days } = step.dataset;
  return days ? spanOf(days, run) : windowSpan(step.querySelector<HTMLElement>('.step-day [data-windows]')?.dataset.windows);
}

/** Returns what to tell the reader. */
export async function saveCalendar(): Promise<string> {
  const state = store.read();
  const run = openRun(state, id);
  const { open } = listOf(state, id);
  if (!run.day && list.querySelector('[data-days]')) {
    document.querySelector<HTMLElement>('#own-day')?.focus();
    return text.giveDay;
  }
  const left = boxes.filter((box) => !box.checked);
  const dated = left.flatMap((box): DatedStep[] => {
    const step = stepOf(box);
    const span = daysOf(step, run);
    return span ? [{ id: box.dataset.tick!, words: plainWords(step), why: whyOf(step), url: `${page}#${step.id}`, ...span }] : [];
  });
  const hasDays = boxes.some((box) => daysOf(stepOf(box), run));
  const whole = windowSpan(find('calendar').dataset.calendar);
  const steps = hasDays || !whole ? dated.filter(({ to }) => to >= today) : [wholeList(whole)];
  if (steps.length === 0) return text.noDates;
  const { stepsCalendar } = await import('./steps-calendar.ts');
  const hive = hiveName(state, id, open);
  const name = `${fileWords(`${title} ${hive}`)}.ics`;
  // The first hive has no name in its UIDs, as in the files of older editions.
  const inUid = run.name || (open === FIRST_RUN ? '' : open);
  const club = document.documentElement.dataset.shelf!.split('/')[0]!;
  download(name, 'text/calendar', stepsCalendar({ club, list: id, title, run: inUid, hive, steps, stamp: today }));
  return text.savedCalendar(name, steps.length, hasDays ? dated.length - steps.length : 0);
}

const wholeList = (span: Span): DatedStep => ({
  id: 'whole',
  words: title,
  why: document.querySelector('.lead')?.textContent?.trim() ?? '',
  url: page,
  ...span,
});

/** Every hive of this list. Spreadsheets recognise the encoding by the mark at the beginning. */
export function saveTable(): string {
  const state = store.read();
  const { open, runs } = listOf(state, id);
  const hives = Object.entries({ [open]: openRun(state, id), ...runs }).map(([run, held]) => ({
    name: hiveName(state, id, run),
    run: held,
  }));
  const steps = boxes.map((box) => ({
    id: box.dataset.tick!,
    words: plainWords(stepOf(box)),
    days: (run: Run) => daysOf(stepOf(box), run),
  }));
  const name = `${fileWords(title)}.csv`;
  download(name, 'text/csv', `\uFEFF${asTable(title, hives, steps)}`);
  return text.savedAs(name);
}
