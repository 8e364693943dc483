/* Form field of one box, and form field of one choice among several. */
import { boxOf, type FormControl, type FormError, type Field } from './field.ts';
import type { Kind } from './kind.ts';
import * as remembered from './remembered.ts';
import * as text from './text.en.ts';
import { systemOf } from './units.ts';

export function single<Value>(kind: Kind<Value>): Field<Value> {
  return {
    read: (form, name) => {
      const box = boxOf(form, name);
      const typed = box.value.trim();
      const read = kind.read(remembered.read(box), systemOf(form));
      if (read.ok) return { value: read.value, address: kind.write(read.value) };
      return {
        faults: [{ box, words: kind.says(read, typed, systemOf(form)), fixes: kind.fixes?.(read, typed) ?? [] }],
        address: kind.readAddress(typed).ok ? undefined : typed,
      };
    },
    fill: (form, name, address) => fillBox(boxOf(form, name), kind, address),
    ...(kind.exact ? { turn: (form, name) => turnBox(boxOf(form, name), kind) } : {}),
  };
}

/** A valid address text goes in as a value. An invalid one goes in as it is, so that its error is beside it. */
export function fillBox<Value>(box: FormControl, kind: Kind<Value>, address: string): FormError | undefined {
  const read = kind.readAddress(address);
  if (read.ok) {
    writeBox(box, kind, read.value);
    return undefined;
  }
  box.value = address;
  const typed = kind.read(address, systemOf(box.form));
  return typed.ok ? { box, words: text.inAnAddress(kind.write(typed.value) ?? '') } : undefined;
}

function writeBox<Value>(box: FormControl, kind: Kind<Value>, value: Value): void {
  const shown = kind.show(value, systemOf(box.form));
  if (kind.exact) remembered.write(box, shown, kind.exact(value));
  else box.value = shown;
}

/** Reads a box in the current units of its form and returns a function that shows the same value in the new ones. */
export function turnBox<Value>(box: FormControl, kind: Kind<Value>): () => void {
  const units = systemOf(box.form);
  const read = kind.read(remembered.read(box), units);
  const first = box instanceof HTMLInputElement && box.dataset.exact ? kind.read(box.dataset.exact, units) : undefined;
  return () => {
    if (first?.ok) (box as HTMLInputElement).defaultValue = kind.show(first.value, systemOf(box.form));
    if (read.ok) writeBox(box, kind, read.value);
  };
}

/** Radio buttons or a select, whose values are the words of the address. */
export function choice<const Word extends string>(words: readonly Word[], what: string): Field<Word> {
  const field = optionalChoice(words);
  return {
    ...field,
    read: (form, name) => {
      const { value, address } = field.read(form, name) as { value: Word | undefined; address: string | undefined };
      return value === undefined ? { faults: [{ box: boxOf(form, name), words: text.choose(what) }], address } : { value, address };
    },
  };
}

export function optionalChoice<const Word extends string>(words: readonly Word[]): Field<Word | undefined> {
  const chosen = (form: HTMLFormElement, name: string) => form.elements.namedItem(name) as RadioNodeList | HTMLSelectElement;
  return {
    read: (form, name) => {
      const value = words.find((word) => word === chosen(form, name).value);
      return { value, address: value };
    },
    fill: (form, name, address) => {
      if (!words.some((word) => word === address)) return { box: boxOf(form, name), words: text.noChoice(address) };
      chosen(form, name).value = address;
      return undefined;
    },
  };
}
