/*
 * Search page: loads the results when somebody begins to search, and lists the common questions of these weeks. Without script the form
 * leads here, and questions and lists are below it.
 */
import { todayIn } from '../../../shared/days/today.ts';
import { fallsInto, lengthOf, spanOf } from './season.ts';
import * as text from './search-page.en.ts';

/** Long enough to wait for a whole word instead of each letter. */
const PAUSE_MS = 150;
const COMMON = 8;

const form = document.querySelector<HTMLFormElement>('[data-search-page]')!;
const field = form.querySelector('input')!;

/** A network that fails now may work at the next word. */
function sayUnloaded(): void {
  document.querySelector('[data-search-status]')!.textContent = text.notLoaded;
  document.querySelector('[data-search-pages]')!.closest('details')!.open = true;
}

let pause: ReturnType<typeof setTimeout> | undefined;
const askAfter = (pauseMs: number): void => {
  clearTimeout(pause);
  pause = setTimeout(() => void import('./results.ts').then(({ ask }) => ask()).catch(sayUnloaded), pauseMs);
};
field.addEventListener('input', () => askAfter(PAUSE_MS));
form.addEventListener('submit', (event) => {
  event.preventDefault();
  askAfter(0);
});
// The engine loads when a reader begins to search, not with the page.
form.addEventListener('focusin', () => void import('./results.ts').then(({ prepare }) => prepare()).catch(() => undefined));

/** Common questions of every week, and those that are most of these weeks. */
function markCommon(): void {
  const today = todayIn(document.documentElement.dataset.zone!, new Date());
  const answers = [...document.querySelectorAll<HTMLElement>('[data-asks]')];
  const due = answers.filter(({ dataset }) => dataset.season && fallsInto(dataset.season, spanOf('now', today)));
  const always = due.filter(({ dataset }) => dataset.season!.startsWith('all '));
  const seasonal = due
    .filter((item) => !always.includes(item))
    .sort((a, b) => lengthOf(a.dataset.season!) - lengthOf(b.dataset.season!))
    .slice(0, COMMON - always.length);
  for (const item of answers) item.classList.toggle('common', always.includes(item) || seasonal.includes(item));
}

markCommon();
field.value ||= new URLSearchParams(location.search).get('q') ?? '';
if (field.value.trim()) askAfter(0);
