/*
 * Date box in the browser: a text box that takes what people type, a line below that shows the whole day back, the button Today, and the
 * browser's own calendar, which writes into the box. Markup: components/form/DayField.astro.
 */
import type { Day } from '../../../shared/days/day.ts';
import { boxDay, dayInFull, readDay } from './typed-day.ts';
import { todayHere } from './today.ts';

const partOf = <T extends HTMLElement>(box: HTMLElement, part: string): T | null =>
  box.closest('.day-field')?.querySelector<T>(`[data-day-${part}]`) ?? null;

/** Shows the whole day below the box. An empty box, or one that cannot be read yet, shows none. */
export function showDayBack(box: HTMLInputElement): void {
  const read = readDay(box.value);
  const line = partOf(box, 'back');
  if (line) line.textContent = read.ok ? dayInFull(read.value) : '';
}

/** Fills the box with a day, as if a member had typed it. */
export function fillDay(box: HTMLInputElement, day: Day): void {
  box.value = boxDay(day);
  for (const type of ['input', 'change']) box.dispatchEvent(new Event(type, { bubbles: true }));
}

/** A press of Today or of the calendar's button beside a date box. False for any other button. */
export function answerDayButton(button: HTMLElement): boolean {
  const box = button.closest('.day-field')?.querySelector<HTMLInputElement>('[data-day-box]');
  if (!box) return false;
  if ('dayToday' in button.dataset) fillDay(box, todayHere());
  else if ('dayOpen' in button.dataset) openPicker(box);
  else return false;
  return true;
}

function openPicker(box: HTMLInputElement): void {
  const picker = partOf<HTMLInputElement>(box, 'picker')!;
  const read = readDay(box.value);
  picker.value = read.ok ? read.value : todayHere();
  picker.onchange = () => picker.value && fillDay(box, picker.value as Day);
  try {
    picker.showPicker();
  } catch {
    // An older browser opens its calendar when the date is pressed.
    picker.focus();
    picker.click();
  }
}
