/*
 * Shows the reader's own day on the page: each step's date and status, the steps by week, and the fields for how she started. Loaded once
 * there is a day.
 */
import { isDay } from '../../../shared/days/day.ts';
import { formatDay, formatDayWithWeekday, withPlainSpaces } from '../../../shared/days/show-day.ts';
import { languageHere } from '../../../shared/country/language-here.ts';
import { GROUPS, groupOf, spanOf, spanWords, type Span } from './own-days.ts';
import { reveal } from './folds.ts';
import { listOf, type Run } from './record.ts';
import { boxes, id, list, show, stepOf, store, today } from './checklist.ts';
import { line } from './lines.ts';
import { isSpanishList, languageOfList } from './language-of-list.ts';
import * as text from './dated.en.ts';
import * as es from './dated.es.ts';

const notWithThisStart = isSpanishList ? es.notWithThisStart : text.notWithThisStart;
const headings = isSpanishList ? es.groups : text.groups;
const USUAL = ['candy', 'drawn'];

/** The text of a step's days before the reader gives one. */
const plain = new Map(boxes.map((box) => [box, stepOf(box).querySelector('.step-day')?.textContent ?? '']));

export function showDays(run: Run): void {
  const day = run.day && isDay(run.day) ? run.day : undefined;
  for (const box of boxes) {
    const { days } = stepOf(box).dataset;
    if (!days) continue;
    const span = spanOf(days, run);
    const shown = span && spanWords(span, today, box.checked, languageOfList);
    line(
      stepOf(box),
      'step-day',
      shown ? [shown.days, shown.status].filter(Boolean).join(' · ') : run.day ? notWithThisStart : plain.get(box),
    );
    stepOf(box)
      .querySelector('.step-day')
      ?.classList.toggle('due', shown?.isDue ?? false);
  }
  for (const field of document.querySelectorAll<HTMLInputElement>('.own-day [data-own]')) {
    if (field.type === 'radio')
      field.checked = run.choices?.[field.name] === field.value || (!run.choices?.[field.name] && USUAL.includes(field.value));
    else if (field !== document.activeElement) field.value = day ? withPlainSpaces(formatDay(day, languageHere())) : '';
  }
  document.querySelector('[data-day-back]')!.textContent = day ? formatDayWithWeekday(day, languageHere()) : '';
  groupByDay(run);
}

/** The steps in the order of the list, each with its place in it. */
const home = boxes.map((box) => ({ box, step: stepOf(box), steps: stepOf(box).parentElement! }));
let grouped = '';

/**
 * Where every step has its day, the steps stand by week in place of parts. They move when the day, the start or the hive changes, and
 * never with a tick, so that nobody loses the place.
 */
function groupByDay(run: Run): void {
  const now =
    run.day && home.every(({ step }) => step.dataset.days) ? JSON.stringify([run.day, run.choices, listOf(store.read(), id).open]) : '';
  if (now === grouped) return;
  const isFirst = grouped === '';
  grouped = now;
  for (const group of list.querySelectorAll('[data-group]')) group.remove();
  for (const { step, steps } of home) steps.append(step);
  const dated = home.map(({ box, step }) => ({ box, step, span: spanOf(step.dataset.days ?? '', run) }));
  const after = list.querySelector('.part')!;
  const order = (span: Span | null): string => span?.from ?? '9';
  const groups = GROUPS.map((name) => ({
    name,
    steps: now
      ? dated
          .filter(({ box, span }) => groupOf(span, today, box.checked) === name)
          .sort((a, b) => (order(a.span) < order(b.span) ? -1 : order(a.span) > order(b.span) ? 1 : 0))
      : [],
  }));
  for (const { name, steps } of groups)
    if (steps.length > 0)
      after.before(
        fold(
          name,
          steps.map(({ step }) => step),
        ),
      );
  for (const { steps } of home) steps.closest<HTMLElement>('.part')!.hidden = now !== '';
  boxes.splice(0, boxes.length, ...(now ? groups.flatMap(({ steps }) => steps) : home).map(({ box }) => box));
  list.removeAttribute('data-ready');
  show();
  if (isFirst) reveal(location.hash)?.scrollIntoView();
}

function fold(name: (typeof GROUPS)[number], steps: readonly HTMLElement[]): HTMLElement {
  const make = <K extends keyof HTMLElementTagNameMap>(tag: K, className: string, ...children: (Node | string)[]) => {
    const element = Object.assign(document.createElement(tag), { className });
    element.append(...children);
    return element;
  };
  const count = make('span', 'part-count no-print');
  count.dataset.count = '';
  const all = make('details', 'opens part', make('summary', '', make('h2', '', headings[name]), count), make('ul', 'steps', ...steps));
  all.dataset.group = name;
  return all;
}
