/* Folds of a checklist. The part with the next step is open when the page opens, and a link opens the fold of its target. */
import { list } from './checklist.ts';

export const partOf = (box: HTMLElement | null): HTMLDetailsElement | null => box?.closest<HTMLDetailsElement>('.part') ?? null;
export const parts = (): HTMLDetailsElement[] => [...list.querySelectorAll<HTMLDetailsElement>('.part')];

/** Folds the parts where the page was just opened, or shows another hive: `data-ready` is then absent. */
export function showFolds(next: HTMLElement | null): void {
  if (!list.hasAttribute('data-ready')) for (const part of parts()) part.open = part === partOf(next);
  list.setAttribute('data-ready', '');
}

/** Opens every fold around the target of a link on this page. */
export function reveal(hash: string | undefined): HTMLElement | null {
  const target = hash ? document.getElementById(hash.slice(1)) : null;
  for (let fold = target?.closest('details'); fold; fold = fold.parentElement!.closest('details')) fold.open = true;
  return target;
}
