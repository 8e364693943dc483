/*
 * A part of a checklist folds with its last tick, and the next one opens. What the reader looks at stays where it is. Loaded with the first
 * tick.
 */
import { find } from './checklist.ts';
import { partOf, parts } from './folds.ts';

const openBox = (part: Element): HTMLElement | null => part.querySelector('[data-tick]:not(:checked)');

export function foldDone(box: HTMLElement): void {
  const part = partOf(box);
  if (!part?.open || openBox(part)) return;
  const all = parts();
  const next = [...all.slice(all.indexOf(part)), ...all].find(openBox);
  const place = next ?? find('done');
  const { top } = place.getBoundingClientRect();
  part.open = false;
  if (next) next.open = true;
  scrollBy({ top: place.getBoundingClientRect().top - top, behavior: 'instant' });
  (next ? openBox(next)! : place).focus({ preventScroll: true });
}
