/*
 * What every page does for its reader: keeps the chosen form of the page, shows dates of the chosen district, says when
 * a review is past, what is due and which meeting is next, and fetches ahead what a search will ask for. Without it the page reads as the main district's.
 */
import type { MonthDay } from '../../../shared/days/month-day.ts';
import { formatMonthDays } from '../../../shared/days/year-span.ts';
import { fetchAhead } from './fetch-ahead.ts';
import { keepOffline } from './offline.ts';
import { showMeetings } from './meetings.ts';
import { showNotices } from './notices.ts';
import { showNow } from './now.ts';
import { windowHere } from '../../calculators/form/window-here.ts';

const root = document.documentElement;
const shelf = `almanac ${root.dataset.shelf} forms`;

type Forms = Record<string, string>;

function kept(): Forms {
  try {
    return JSON.parse(localStorage.getItem(shelf) ?? '{}') as Forms;
  } catch {
    return {};
  }
}

function keep(forms: Forms): void {
  try {
    localStorage.setItem(shelf, JSON.stringify(forms));
  } catch {
    // A browser that keeps nothing still shows the form until the page is left.
  }
}

const buttons = [...document.querySelectorAll<HTMLButtonElement>('button[data-form]')];

/** Of districts and of units one is always chosen; other forms can be switched off. */
const isOneOf = (name: string): boolean => /^[du]/.test(name);

function pressed(): void {
  for (const button of buttons) {
    const name = button.dataset.form!;
    // A district or units that nobody chose are the club's own: they stand first.
    const chosen = root.dataset[name] ?? (isOneOf(name) && button.parentElement!.querySelector('button')!.value);
    button.setAttribute('aria-pressed', String(chosen === button.value));
  }
}

for (const button of buttons) {
  button.addEventListener('click', () => {
    const name = button.dataset.form!;
    const off = root.dataset[name] === button.value && !isOneOf(name);
    if (off) delete root.dataset[name];
    else root.dataset[name] = button.value;
    keep({ ...kept(), [name]: off ? (name === 'light' ? 'day' : '') : button.value });
    pressed();
    if (name === 'district') showDistrict();
  });
}

/** Rewrites every window of days, and what is said of it, for the district that the reader chose. */
function showDistrict(): void {
  const { district } = root.dataset;
  const each = (name: string, change: (place: HTMLElement, value: string) => void) => {
    for (const place of document.querySelectorAll<HTMLElement>(`[data-${name}]`)) change(place, place.getAttribute(`data-${name}`)!);
  };
  each('windows', (place, windows) => (place.textContent = words(...windowHere(windows))));
  each('by-district', (place, said) => (place.textContent = (`|${said}|`.split(`|${district}=`)[1] ?? said.split('=')[1]!).split('|')[0]!));
  each('begins', (row, windows) => document.querySelector(`#half-${halfOf(windowHere(windows)[0])} ul`)!.append(row));
  const rings = document.querySelectorAll('[data-ring]');
  if ([...rings].some((ring) => ring.getAttribute('data-ring') === district))
    each('ring', (ring, id) => ring.classList.toggle('other', id !== district));
  const button = buttons.find((each) => each.dataset.form === 'district' && each.value === root.dataset.district);
  const name = document.querySelector('[data-district-name]');
  if (button && name) name.textContent = button.textContent!.replace('Dates for ', '');
  document.dispatchEvent(new Event('almanac-district'));
}

/** `5-2` is the second half of May. */
const halfOf = (day: string): string => `${Number(day.slice(0, 2))}-${day.slice(3) > '15' ? 2 : 1}`;

const words = (from: string, to: string): string => formatMonthDays(from as MonthDay, to as MonthDay);

const today = showNotices();
// A page that is left open shows no notice of yesterday.
document.addEventListener('visibilitychange', showNotices);
for (const check of document.querySelectorAll<HTMLElement>('[data-next-check]')) {
  if (check.dataset.nextCheck! < today) check.append(': past. Ask before you rely on this page.');
}

if (root.dataset.district) showDistrict();
pressed();
const line = document.querySelector<HTMLElement>('[data-next-meeting]');
if (document.querySelector('[data-whole-year]')) showNow(today);
else if (line) showMeetings(line, today);
root.classList.add('arranged');

for (const form of document.querySelectorAll<HTMLFormElement>('form[role=search]:not([data-print])')) {
  form.addEventListener('focusin', fetchAhead, { once: true });
}

if (import.meta.env.PROD) keepOffline();

// Closed sections are printed too, also by browsers whose style sheets cannot open them; afterwards they close again.
window.addEventListener('beforeprint', () => {
  const shut = [...document.querySelectorAll<HTMLDetailsElement>('details:not([open])')];
  for (const section of shut) section.open = true;
  window.addEventListener('afterprint', () => shut.forEach((section) => (section.open = false)), { once: true });
});
