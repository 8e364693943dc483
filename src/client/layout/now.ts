/*
 * First page: shows what is due, what comes soon, what has just passed, what blooms, and the next meeting. It decides when the page is
 * read, in the club's own time zone. The rows are those of the whole year, and none is made here.
 */
import type { MonthDay } from '../../../shared/days/month-day.ts';
import { halfMonthName, isWithinSpan, monthDayIn } from '../../../shared/days/year-span.ts';
import type { Day } from '../../../shared/days/day.ts';
import { windowHere } from '../../calculators/form/window-here.ts';

const SOON_DAYS = 21;
const PASSED_DAYS = 14;

let today: Day;
let now: MonthDay;
let rows: HTMLElement[];

const windowOf = (row: HTMLElement, key: 'dated' | 'phase' | 'bloom') => windowHere(row.dataset[key]!);

const OPEN = { list: 'due', pest: 'out', 'know-how': 'read' } as const;

function sectionOf(row: HTMLElement): string | null {
  const [from, to] = windowOf(row, 'dated');
  if (isWithinSpan(now, from, to)) return OPEN[row.dataset.kind as keyof typeof OPEN];
  if (row.dataset.kind === 'know-how') return null;
  if (daysFrom(now, from) <= SOON_DAYS) return 'soon';
  return row.dataset.kind === 'list' && daysFrom(to, now) <= PASSED_DAYS ? 'passed' : null;
}

/** Days from one to the other, forward round a year of 365 days. */
const daysFrom = (from: MonthDay, to: MonthDay): number => ((Date.parse(`2001-${to}`) - Date.parse(`2001-${from}`)) / 864e5 + 365) % 365;

/** Short windows come first: this week's tasks are above those that last all summer. */
const width = (row: HTMLElement): number => daysFrom(...windowOf(row, 'dated'));

function arrange(): void {
  for (const section of document.querySelectorAll<HTMLElement>('[data-now]')) {
    const held = rows.filter((row) => sectionOf(row) === section.dataset.now).sort((a, b) => width(a) - width(b));
    section.querySelector('tbody')!.replaceChildren(...held.map((row) => row.cloneNode(true)));
    section.hidden = held.length === 0;
  }
  for (const wedge of document.querySelectorAll<SVGElement>('[data-half]')) {
    const [from, to] = wedge.dataset.half!.split(' ').map(monthDayIn);
    const open = isWithinSpan(now, from!, to!);
    wedge.classList.toggle('open', open);
    // Moves the wedge to the end, so that no neighbour covers its edge, but below the lettering.
    if (open) wedge.parentNode!.insertBefore(wedge, wedge.parentNode!.querySelector('text'));
  }
  const plants = [...document.querySelectorAll<HTMLElement>('[data-bloom]')];
  for (const row of plants) row.hidden = !isWithinSpan(now, ...windowOf(row, 'bloom'));
  document.querySelector('[data-no-bloom]')?.toggleAttribute(
    'hidden',
    plants.some((row) => !row.hidden),
  );
  sayToday();
}

function sayToday(): void {
  const half = halfMonthName(now);
  document.querySelector('h1')!.textContent = half;
  document.querySelector('[data-ring-half]')!.textContent = half.replace('First half', '1st half').replace('Second half', '2nd half');
  const name = document.querySelector('[data-district-name]')!.textContent;
  document.querySelector('.lead')!.textContent = `What to do now in ${name}.`;
  const phase = [...document.querySelectorAll<HTMLElement>('[data-phase]')].find((row) => isWithinSpan(now, ...windowOf(row, 'phase')));
  for (const row of document.querySelectorAll('[data-phase]')) row.toggleAttribute('data-here', row === phase);
  document.querySelector('[data-ring-phase]')!.textContent = phase ? phase.querySelector('.phase-name')!.textContent : '';
  const care = phase?.querySelector('[data-care]')?.textContent;
  const line = document.querySelector<HTMLElement>('[data-care-now]')!;
  line.hidden = !care;
  line.textContent = care ?? '';
}

function showMeeting(): void {
  const meetings = [...document.querySelectorAll<HTMLElement>('[data-meeting-day]')];
  const next = meetings.find((row) => row.dataset.meetingDay! >= today);
  for (const row of meetings) row.hidden = row !== next;
  const line = document.querySelector<HTMLElement>('[data-next-meeting]');
  if (!line) return;
  line.hidden = next !== undefined;
  line.textContent = next ? '' : 'No further meeting is set in this edition. Ask the club.';
}

/** Call once, on the first page. Its rows are arranged again whenever the reader chooses another district. */
export function showNow(day: Day): void {
  today = day;
  // Normals have no 29 February, so it counts as the day before.
  now = monthDayIn(day.slice(5).replace('02-29', '02-28'));
  rows = [...document.querySelectorAll<HTMLElement>('[data-dated]')];
  arrange();
  showMeeting();
  document.addEventListener('almanac-district', arrange);
}
