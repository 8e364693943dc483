/*
 * First page: the day, the reader's open checklists, what is due, what to watch for, what members ask now, the next meeting, and what
 * blooms. All of it is decided when the page is read, in the club's own time zone. The rows are in the page, and none is made here.
 */
import type { MonthDay } from '../../../shared/days/month-day.ts';
import { formatMonthDay, isWithinSpan, monthDayIn } from '../../../shared/days/year-span.ts';
import { isMonthFirst } from '../../../shared/country/language.ts';
import type { Day } from '../../../shared/days/day.ts';
import { languageHere } from '../../../shared/country/language-here.ts';
import { windowHere } from '../../calculators/form/window-here.ts';
import { daysBetween, pointRings } from './ring.ts';
import * as text from './now.en.ts';

const SOON_DAYS = 21;
const SHOWN = { begun: 3, due: 3, out: 3, read: 5 } as const;
const GRAVEST_FIRST = ['law', 'act', 'watch', 'settled'];

let today: Day;
let now: MonthDay;
let rows: HTMLElement[];

type Section = keyof typeof SHOWN;

const windowOf = (row: HTMLElement, key: 'dated' | 'phase' | 'bloom') => windowHere(row.dataset[key]!);
const isOpen = (row: HTMLElement): boolean => row.dataset.dated !== undefined && isWithinSpan(now, ...windowOf(row, 'dated'));
const daysUntil = (row: HTMLElement): number => daysBetween(now, windowOf(row, 'dated')[0]);
/** Short windows come first: this week's tasks are above those that last all summer. */
const width = (row: HTMLElement): number => daysBetween(...windowOf(row, 'dated'));
const byWidth = (a: HTMLElement, b: HTMLElement): number => width(a) - width(b);

type Stored = { lists?: Record<string, { open: string; runs: Record<string, { ticks?: object; filed?: string }> }> };

/** How many steps of a list are ticked in the run that is open. A record that cannot be read counts as none: the list itself says so. */
function ticksOf(list: string): number {
  try {
    const stored = JSON.parse(localStorage.getItem(`almanac ${document.documentElement.dataset.shelf} lists`) ?? '{}') as Stored;
    const held = stored.lists?.[list];
    const run = held?.runs[held.open];
    return run && !run.filed ? Object.keys(run.ticks ?? {}).length : 0;
  } catch {
    return 0;
  }
}

const stepsOf = (row: HTMLElement): number => Number(row.dataset.steps);
const isBegun = (row: HTMLElement): boolean => {
  const ticks = ticksOf(row.dataset.id!);
  return ticks > 0 && ticks < stepsOf(row);
};

const CHOOSE: Record<Section, () => HTMLElement[]> = {
  begun: () => rows.filter((row) => row.dataset.kind === 'list' && isBegun(row)),
  due() {
    const lists = rows.filter((row) => row.dataset.kind === 'list' && row.dataset.dated !== undefined && !isBegun(row));
    const coming = lists.filter((row) => !isOpen(row) && daysUntil(row) <= SOON_DAYS).sort((a, b) => daysUntil(a) - daysUntil(b));
    return [...lists.filter(isOpen).sort(byWidth), ...coming];
  },
  out() {
    const open = rows.filter((row) => row.dataset.kind === 'pest' && isOpen(row)).sort(byWidth);
    // One of each status, then more of the gravest.
    const first = GRAVEST_FIRST.flatMap((status) => open.find((row) => row.dataset.grave === status) ?? []);
    const rank = (row: HTMLElement): number => GRAVEST_FIRST.indexOf(row.dataset.grave!);
    return [...first.slice(0, SHOWN.out), ...open.filter((row) => !first.includes(row))]
      .slice(0, SHOWN.out)
      .sort((a, b) => rank(a) - rank(b));
  },
  read: () => rows.filter((row) => row.dataset.kind === 'know-how' && isOpen(row)).sort(byWidth),
};

function arrange(): void {
  for (const section of document.querySelectorAll<HTMLElement>('[data-now]')) {
    const name = section.dataset.now as Section;
    const held = CHOOSE[name]().slice(0, SHOWN[name]).map(filled);
    const list = section.querySelector('ul')!;
    const reached = list.contains(document.activeElement) && document.activeElement!.getAttribute('href');
    list.replaceChildren(...held);
    // A reader who goes through the page with the keyboard stays on the row.
    if (reached) list.querySelector<HTMLElement>(`[href="${reached}"]`)?.focus({ preventScroll: true });
    section.hidden = held.length === 0;
  }
  showBloom();
  sayToday();
}

/** A row with the state of its list: how many steps are left, and until when. */
function filled(row: HTMLElement): HTMLElement {
  const copy = row.cloneNode(true) as HTMLElement;
  const line = copy.querySelector('small');
  if (!line) return copy;
  const [ticks, steps] = [ticksOf(row.dataset.id!), stepsOf(row)];
  const left = Math.max(0, steps - ticks);
  const when =
    row.dataset.dated === undefined
      ? ''
      : ` · ${isOpen(row) ? text.until(formatMonthDay(windowOf(row, 'dated')[1], languageHere())) : text.from(formatMonthDay(windowOf(row, 'dated')[0], languageHere()))}`;
  line.textContent = `${ticks === 0 ? text.steps(steps) : left === 0 ? text.allDone : text.left(left, steps)}${when}`;
  copy.querySelector('.dial text')!.textContent = `${left}`;
  copy.querySelector('.done')!.setAttribute('stroke-dasharray', `${(100 * Math.min(ticks, steps)) / steps} 100`);
  return copy;
}

/** The rows that the page keeps in a template. */
const inside = (name: string): HTMLElement[] => [
  ...(document.querySelector<HTMLTemplateElement>(`template[data-${name}]`)?.content.querySelectorAll<HTMLElement>('li, i') ?? []),
];

function showBloom(): void {
  const place = document.querySelector('[data-blooming]');
  if (!place) return;
  const plants = inside('plants');
  const open = plants.filter((plant) => isWithinSpan(now, ...windowOf(plant, 'bloom'))).map(({ textContent }) => textContent!);
  const begins = (plant: HTMLElement): number => daysBetween(now, windowOf(plant, 'bloom')[0]);
  const next = plants.filter((plant) => begins(plant) > 0).sort((a, b) => begins(a) - begins(b))[0];
  place.textContent = [
    text.inBloom(open),
    next ? text.blooms(next.textContent!, formatMonthDay(windowOf(next, 'bloom')[0], languageHere())) : '',
  ].join(' ');
}

function sayToday(): void {
  const parts = inside('parts');
  const index = parts.findIndex((part) => isWithinSpan(now, ...windowOf(part, 'phase')));
  const part = parts[index];
  const next = parts[(index + 1) % parts.length];
  const name = document.querySelector('.where [data-by-district], .where span')?.textContent;
  const weekday = new Date(`${today}T12:00Z`).toLocaleDateString(document.documentElement.lang, { weekday: 'long', timeZone: 'UTC' });
  const kick = document.querySelector<HTMLElement>('[data-today]')!;
  kick.hidden = false;
  kick.textContent = text.today(weekday, formatMonthDay(monthDayIn(today.slice(5)), languageHere()), isMonthFirst(languageHere()), name);
  pointRings(now);
  document.querySelector('[data-ring-day]')!.textContent = formatMonthDay(monthDayIn(today.slice(5)), languageHere());
  const phase = document.querySelector('[data-ring-phase]')!;
  if (!part || !next) return void (phase.textContent = '');
  phase.textContent = part.textContent;
  const days = daysBetween(now, windowOf(next, 'phase')[0]);
  const begins = days <= SOON_DAYS ? text.inDays(days) : text.onDay(formatMonthDay(windowOf(next, 'phase')[0], languageHere()));
  document.querySelector('h1')!.textContent = text.season(part.textContent!, next.textContent!, begins);
}

/** Call once, on the first page. Its rows are arranged again whenever the reader chooses another district. */
export function showNow(day: Day): void {
  today = day;
  // Normals have no 29 February, so it counts as the day before.
  now = monthDayIn(day.slice(5).replace('02-29', '02-28'));
  rows = inside('year');
  arrange();
  document.addEventListener('almanac-district', arrange);
  // Ticks made in another tab, or before the reader came back to this page.
  addEventListener('pageshow', arrange);
}
