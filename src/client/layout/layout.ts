/*
 * Script of every page. It applies the chosen display options, shows dates of the chosen district, marks overdue reviews, current tasks
 * and the next meeting, and prefetches the search. Without it the page shows the dates of the main district.
 */
import type { Language } from '../../../shared/country/language.ts';
import { formatMonthDays, monthDayIn } from '../../../shared/days/year-span.ts';
import { fetchAhead } from './fetch-ahead.ts';
import { keepOffline } from './offline.ts';
import { showMeetings } from './meetings.ts';
import { pointRings } from './ring.ts';
import { showNotices } from './notices.ts';
import * as text from './layout.en.ts';
import { languageHere } from '../../../shared/country/language-here.ts';
import { windowHere } from '../../calculators/form/window-here.ts';

const root = document.documentElement;
const shelf = `almanac ${root.dataset.shelf} forms`;

type Forms = Record<string, string>;

function storedForms(): Forms {
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
    // A browser that stores nothing still applies the option until the reader leaves the page.
  }
}

const buttons = [...document.querySelectorAll<HTMLButtonElement>('button[data-form]')];

/** One district and one system of units are always chosen. Other options can be switched off. */
const isOneOf = (name: string): boolean => /^[du]/.test(name);

function pressed(): void {
  for (const button of buttons) {
    const name = button.dataset.form!;
    // The default district and units are the club's own, which come first.
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
    keep({ ...storedForms(), [name]: off ? (name === 'light' ? 'day' : '') : button.value });
    pressed();
    if (name === 'district') showDistrict();
  });
}

/** Rewrites every window of days, and the text about it, for the reader's district. */
function showDistrict(): void {
  const { district } = root.dataset;
  const each = (name: string, change: (place: HTMLElement, value: string) => void) => {
    for (const place of document.querySelectorAll<HTMLElement>(`[data-${name}]`)) change(place, place.getAttribute(`data-${name}`)!);
  };
  each(
    'windows',
    (place, windows) =>
      (place.textContent = formatMonthDays(
        ...windowHere(windows),
        (place.lang || languageHere()) as Language,
        place.textContent.includes('–') ? '–' : ' to ',
      )),
  );
  each(
    'by-district',
    (place, encoded) => (place.textContent = (`|${encoded}|`.split(`|${district}=`)[1] ?? encoded.split('=')[1]!).split('|')[0]!),
  );
  each('begins', (row, windows) => document.querySelector(`#half-${halfOf(windowHere(windows)[0])} ul`)!.append(row));
  const rings = document.querySelectorAll('[data-ring]');
  if ([...rings].some((ring) => ring.getAttribute('data-ring') === district))
    each('ring', (ring, id) => ring.classList.toggle('other', id !== district));
  document.dispatchEvent(new Event('almanac-district'));
}

/** `5-2` is the second half of May. */
const halfOf = (day: string): string => `${Number(day.slice(0, 2))}-${day.slice(3) > '15' ? 2 : 1}`;

const today = showNotices();
// A page that stays open shows no notice of yesterday.
document.addEventListener('visibilitychange', showNotices);
for (const check of document.querySelectorAll<HTMLElement>('[data-next-check]')) {
  if (check.dataset.nextCheck! < today) check.append(text.past);
}

if (root.dataset.district) showDistrict();
pressed();
const line = document.querySelector<HTMLElement>('[data-next-meeting]');
if (line) showMeetings(line, today);
// Without an address of a half month the current month is open.
for (const month of document.querySelectorAll<HTMLDetailsElement>('[data-month-fold]'))
  month.open = !location.hash && month.dataset.monthFold === `${Number(today.slice(5, 7))}`;
pointRings(monthDayIn(today.slice(5)));
for (const hand of document.querySelectorAll('[data-ruler]')) {
  hand.setAttribute('transform', `translate(${(Date.parse(today) - Date.parse(today.slice(0, 4))) / 864e5})`);
  hand.removeAttribute('visibility');
}
// A link to a folded part opens it.
const unfold = () => document.getElementById(location.hash.slice(1))?.closest('details')?.setAttribute('open', '');
unfold();
addEventListener('hashchange', unfold);
const arranged = (): void => root.classList.add('arranged');
// The first page is out of sight until its script has chosen its rows.
if (document.querySelector('[data-now]')) void import('./now.ts').then(({ showNow }) => showNow(today)).finally(arranged);
else arranged();

// A phone shows the pages as they are, also after a look at the hall screen.
if (root.dataset.room && matchMedia('(min-width: 900px)').matches) void import('../hall/hall.ts').then(({ openHall }) => openHall());

for (const form of document.querySelectorAll<HTMLFormElement>('form[role=search]:not([data-print])')) {
  form.addEventListener('focusin', fetchAhead, { once: true });
}

if (import.meta.env.PROD) keepOffline();

// A plain press on a source mark opens its note in place. Any other press follows the link to the list of sources.
document.addEventListener('click', (event) => {
  const mark = (event.target as Element).closest<HTMLAnchorElement>('.mark a');
  if (!mark || event.ctrlKey || event.metaKey || event.shiftKey) return;
  event.preventDefault();
  void import('./source-note.ts').then((note) => note.open(mark));
});

// Opens closed sections for print, also in browsers whose style sheets cannot open them, and closes them afterwards.
addEventListener('beforeprint', () => {
  const shut = [...document.querySelectorAll<HTMLDetailsElement>('details:not([open])')];
  for (const section of shut) section.open = true;
  addEventListener('afterprint', () => shut.forEach((section) => (section.open = false)), { once: true });
});
