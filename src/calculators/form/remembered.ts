/*
 * Exact values of boxes that the form itself filled. A box of 27.2155422 kg shows "60" under "lb" and still counts as 27.2155422 kg until
 * somebody types there. So nothing drifts, however often the units change.
 */
import type { FormControl } from './field.ts';

/**
 * By box: the displayed lines and the exact text of each, in order, because two different values may look alike. Empty for a box in which
 * somebody typed.
 */
const remembered = new WeakMap<FormControl, ReadonlyMap<string, readonly string[]>>();

/** Matches line by line, because a box of many numbers keeps those that nobody changed. */
export function write(box: FormControl, shown: string, exact: string): void {
  box.value = shown;
  const lines = exact.split('\n');
  const known = new Map<string, string[]>();
  for (const [at, line] of shown.split('\n').entries()) known.set(line, [...(known.get(line) ?? []), lines[at]!]);
  remembered.set(box, known);
}

/** The text of a box to parse. `data-exact` is the text from the page. */
export function read(box: FormControl): string {
  const typed = box.value.trim();
  const known = remembered.get(box);
  if (!known) return box instanceof HTMLInputElement && box.dataset.exact && box.value === box.defaultValue ? box.dataset.exact : typed;
  const met = new Map<string, number>();
  const lineOf = (line: string): string => {
    const texts = known.get(line.trim());
    if (!texts) return line;
    const at = met.get(line) ?? 0;
    met.set(line, at + 1);
    return texts[Math.min(at, texts.length - 1)]!;
  };
  return typed.split('\n').map(lineOf).join('\n');
}

/** Call when somebody has typed. A box of many lines keeps the exact values of the others. */
export function forget(box: FormControl): void {
  if (!(box instanceof HTMLTextAreaElement)) remembered.set(box, new Map());
}

/** Call when the form was reset and shows the page's own values again. */
export function forgetAll(form: HTMLFormElement): void {
  for (const box of form.elements) remembered.delete(box as FormControl);
}
