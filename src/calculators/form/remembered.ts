/*
 * What a form wrote into a box itself, with the number it stands for: the box of 27.2155422 kg shows "60" under "lb", and is
 * read as 27.2155422 kg until somebody types there. So nothing drifts, however often the units are changed.
 */
import type { FormControl } from './field.ts';

/**
 * By box: what its lines show, and the texts those are read as, in their order, since two that differ may show alike. Empty for
 * a box that was typed in.
 */
const remembered = new WeakMap<FormControl, ReadonlyMap<string, readonly string[]>>();

/** Line by line, since a box of many numbers keeps those that nobody changed. */
export function write(box: FormControl, shown: string, exact: string): void {
  box.value = shown;
  const lines = exact.split('\n');
  const known = new Map<string, string[]>();
  for (const [at, line] of shown.split('\n').entries()) known.set(line, [...(known.get(line) ?? []), lines[at]!]);
  remembered.set(box, known);
}

/** The text of a box as it is to be read. What stands in the page is `data-exact`. */
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

/** Somebody typed there. A box of many lines keeps what it knows of the others. */
export function forget(box: FormControl): void {
  if (!(box instanceof HTMLTextAreaElement)) remembered.set(box, new Map());
}

/** The form was reset: what stands in the page stands there again. */
export function forgetAll(form: HTMLFormElement): void {
  for (const box of form.elements) remembered.delete(box as FormControl);
}
