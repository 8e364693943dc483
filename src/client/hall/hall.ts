/*
 * The hall screen: what a page is on a wall, for as long as this tab is in the hall. A bar with its few buttons, the keys of a presenter's
 * clicker, one part after the other, and a code that takes the page to every phone. Loaded only in the hall.
 */
import { stayAwake, letSleep } from '../awake/stay-awake.ts';
import { showAll, showSlide, slideOf, slidesOf, type Slide } from './slides.ts';
import * as words from './hall.en.ts';

const root = document.documentElement;
const text = document.querySelector<HTMLElement>('main > .text')!;
const base = root.dataset.shelf!.replace(/^[^/]*/, '');
const key = `almanac ${root.dataset.shelf} room`;
/** A checklist, or a page with a text of its own. Lists and forms are one whole. */
const hasParts = document.querySelector('[data-list], main[itemtype]') !== null;

let slides: Slide[] = [];
let at = 0;
let place: HTMLElement;
let bar: HTMLElement;

/** Call once, on a page that is in the hall. */
export function openHall(): void {
  try {
    sessionStorage.setItem(key, 'hall');
  } catch {
    // A browser that stores nothing is in the hall until the next page.
  }
  slides = hasParts ? slidesOf(text) : [];
  drawBar();
  document.addEventListener('keydown', pressed);
  addEventListener('hashchange', goToTarget);
  if (slides.length > 0) goToTarget();
  void stayAwake();
  const phones = document.querySelector<HTMLElement>('[data-hall-code]');
  if (phones) void showAddress(phones);
}

function leave(): void {
  try {
    sessionStorage.removeItem(key);
  } catch {
    // Nothing was stored.
  }
  const { stage } = bar.dataset;
  if (stage) return void location.assign(stage);
  showAll(text);
  delete root.dataset.room;
  bar.remove();
  document.removeEventListener('keydown', pressed);
  removeEventListener('hashchange', goToTarget);
  void letSleep();
}

function show(index: number): void {
  at = Math.max(0, Math.min(slides.length - 1, index));
  showSlide(text, slides[at]!);
  place.textContent = words.place(at + 1, slides.length);
  scrollTo({ top: 0, behavior: 'instant' });
}

/** A link to a part of the page goes to its slide. */
function goToTarget(): void {
  const target = location.hash ? document.getElementById(location.hash.slice(1)) : null;
  show(Math.max(0, slideOf(slides, target)));
}

const END_PX = 4;

/** A slide that is longer than the screen is read to its end first. */
function forward(): void {
  if (innerHeight + scrollY < root.scrollHeight - END_PX) scrollBy({ top: innerHeight * 0.8, behavior: 'instant' });
  else if (at < slides.length - 1) show(at + 1);
}

function back(): void {
  if (scrollY > END_PX) scrollBy({ top: -innerHeight * 0.8, behavior: 'instant' });
  else if (at > 0) show(at - 1);
}

/** The keys of a clicker. No letter is a shortcut (WCAG 2.2, 2.1.4). */
const KEYS: Readonly<Record<string, () => void>> = {
  ArrowRight: forward,
  PageDown: forward,
  ArrowLeft: back,
  PageUp: back,
  Home: () => show(0),
  End: () => show(slides.length - 1),
};

function pressed(event: KeyboardEvent): void {
  const inField = (event.target as Element).closest?.('input, select, textarea, dialog');
  if (event.ctrlKey || event.metaKey || event.altKey || inField) return;
  const answer = KEYS[event.key];
  if (!answer || slides.length === 0) return;
  event.preventDefault();
  answer();
}

function turnLight(): void {
  root.dataset.light = root.dataset.light === 'night' ? 'day' : 'night';
}

function button(shown: string, press: () => void, label?: string): HTMLButtonElement {
  const made = Object.assign(document.createElement('button'), { type: 'button', textContent: shown });
  if (label) made.ariaLabel = label;
  made.addEventListener('click', press);
  return made;
}

function drawBar(): void {
  bar = Object.assign(document.createElement('nav'), { className: 'hall-bar no-print', ariaLabel: words.hallScreen });
  place = Object.assign(document.createElement('span'), { role: 'status' });
  const stage = Object.assign(document.createElement('a'), { href: `${base}hall/`, textContent: words.hall });
  if (location.pathname === `${base}hall/`) {
    stage.ariaCurrent = 'page';
    bar.dataset.stage = base;
  }
  const steps = slides.length > 1 ? [button('←', back, words.back), place, button('→', forward, words.forward)] : [];
  const title = Object.assign(document.createElement('b'), { textContent: document.querySelector('h1')!.textContent });
  bar.append(
    stage,
    ...steps,
    ...(slides.length > 1 ? [title] : []),
    button(words.light, turnLight),
    button(words.code, () => void showCode()),
    button(words.leave, leave),
  );
  document.body.append(bar);
}

/** The code of an address. Null where it is too long for one. */
async function drawn(address: string): Promise<SVGSVGElement | null> {
  const { codeOf, drawCode } = await import('../qr/qr.ts');
  const code = codeOf(address);
  return code && drawCode(code, address);
}

/** The address of the almanac itself. A site that was built without its address is where this page is. */
async function showAddress(place: HTMLElement): Promise<void> {
  const address = place.dataset.hallCode || location.origin + base;
  const code = await drawn(address);
  if (code) place.prepend(code);
  place.querySelector('[data-hall-address]')!.textContent = address.replace(/^https?:\/\/|\/$/g, '');
}

/** The page's own address. What was typed or ticked here does not travel, but numbers of a calculator do: they are in the address. */
async function showCode(): Promise<void> {
  const dialog = Object.assign(document.createElement('dialog'), { className: 'hall-code', ariaLabel: words.code });
  const code = await drawn(location.href);
  const shown = code ? location.href : words.tooLong;
  dialog.append(
    ...(code ? [code] : []),
    Object.assign(document.createElement('p'), { textContent: shown }),
    button(words.close, () => dialog.close()),
  );
  dialog.addEventListener('close', () => dialog.remove());
  document.body.append(dialog);
  dialog.showModal();
}
