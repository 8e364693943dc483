/*
 * Form field of several rows, such as the colonies of an apiary. Rows are added, removed, and made from a list pasted from a spreadsheet.
 * In the form a row is `[data-row-of]`, and the first one is the template. The list is pasted into the box named `<name>-list`, which
 * becomes empty once its rows are made.
 */
import { readAddressRecords, writeAddressRecords } from '../../../shared/address/address-values.ts';
import { readTypedRows, type RowShape } from '../../../shared/numbers/typed-rows.ts';
import { unmark } from './faults.ts';
import { boxOf, type FormError, type Field } from './field.ts';
import type { Kind } from './kind.ts';
import * as remembered from './remembered.ts';
import * as text from './rows.en.ts';
import { fillBox, turnBox } from './single.ts';
import { systemOf } from './units.ts';

// Each kind has its own value type, and no narrower type can contain several kinds.
// eslint-disable-next-line @typescript-eslint/no-explicit-any
type Columns = Readonly<Record<string, Kind<any>>>;
export type RowOf<Of extends Columns> = { readonly [Name in keyof Of]: Of[Name] extends Kind<infer Value> ? Value : never };

export type Rows<Of extends Columns> = {
  /** The boxes of a row by name, in the order of the address. */
  readonly columns: Of;
  /** The separators in the address, one fewer than boxes. */
  readonly marks: readonly string[];
  /** As in "Row 2". */
  readonly word: string;
  readonly most: number;
  /** The numbers of a pasted line. A first column that is a name goes to the box named `label`, where the row has one. */
  readonly shape: RowShape;
  /** A line as people write it, such as "A 12 300". */
  readonly such: string;
  /** A record as written in the address, where the names of the columns would not describe it. */
  readonly like?: string;
};

export function rows<const Of extends Columns>(spec: Rows<Of>): Field<readonly RowOf<Of>[]> {
  const names = Object.keys(spec.columns);
  const rowsOf = (form: HTMLFormElement, name: string) => [...form.querySelectorAll<HTMLElement>(`[data-row-of="${name}"]`)];

  /** Sets the number of rows, at least one. New rows are copies of the first with its initial values. */
  function makeRows(form: HTMLFormElement, name: string, asked: number): void {
    const count = Math.max(1, asked);
    const present = rowsOf(form, name);
    for (const row of present.slice(count)) row.remove();
    for (let at = present.length; at < count; at += 1) {
      const row = present[0]!.cloneNode(true) as HTMLElement;
      unmark(row);
      for (const box of row.querySelectorAll('input')) {
        box.removeAttribute('id');
        box.value = box.defaultValue;
      }
      rowsOf(form, name).at(-1)!.after(row);
    }
    number(form, name);
  }

  function number(form: HTMLFormElement, name: string): void {
    const all = rowsOf(form, name);
    for (const [at, row] of all.entries()) {
      row.setAttribute('aria-label', text.numbered(spec.word, at + 1));
      const out = row.querySelector('button')!;
      out.hidden = all.length === 1;
      out.setAttribute('aria-label', text.remove(spec.word, at + 1));
    }
    form.querySelector<HTMLButtonElement>(`[data-add-to="${name}"]`)!.disabled = all.length >= spec.most;
  }

  function fillRows(form: HTMLFormElement, name: string, records: readonly (readonly string[])[]): FormError | undefined {
    makeRows(form, name, records.length);
    const wrong = records.flatMap((record, row) =>
      record.flatMap((cell, at) => fillBox(boxOf(form, names[at]!, row), spec.columns[names[at]!]!, cell) ?? []),
    );
    return wrong[0];
  }

  /** Adds rows from the pasted list in place of empty and wrong ones, after those that are right, or returns the error. */
  function takeList(form: HTMLFormElement, name: string): FormError | undefined {
    const list = boxOf(form, `${name}-list`);
    if (list.value.trim() === '') return undefined;
    const read = readTypedRows(list.value, spec.shape);
    if (!read.ok) return { box: list, words: listWords(read.row, read.text) };
    const right = rowsOf(form, name).filter((row) => isRight(form, row));
    const count = right.length + read.value.length;
    if (count > spec.most) return { box: list, words: text.tooManyRows(spec.most, count) };
    for (const row of rowsOf(form, name)) if (!right.includes(row) && rowsOf(form, name).length > 1) row.remove();
    makeRows(form, name, count);
    const numbers = names.filter((column) => column !== 'label');
    for (const [row, { label, numbers: typed }] of read.value.entries()) {
      const write = (column: string, cell: string): void => {
        const box = boxOf(form, column, right.length + row);
        box.value = cell;
        remembered.forget(box);
      };
      if (names.includes('label')) write('label', label);
      for (const [at, cell] of typed.entries()) write(numbers[at]!, cell);
    }
    list.value = '';
    return undefined;
  }

  function isRight(form: HTMLFormElement, row: HTMLElement): boolean {
    const boxes = [...row.querySelectorAll('input')];
    return (
      boxes.some((box) => box.value !== box.defaultValue) &&
      boxes.every((box) => spec.columns[box.name]!.read(remembered.read(box), systemOf(form)).ok)
    );
  }

  function listWords(line = 1, found = ''): string {
    const shown = found.length > 40 ? `${found.slice(0, 40)}…` : found;
    return text.wrongLine(line, shown, spec.such);
  }

  return {
    read: (form, name) => {
      const unread = takeList(form, name);
      const all = rowsOf(form, name);
      const faults: FormError[] = unread ? [unread] : [];
      const values: Record<string, unknown>[] = [];
      const written = all.map((_, row) => {
        const value: Record<string, unknown> = {};
        values.push(value);
        return names.map((column) => {
          const box = boxOf(form, column, row);
          const typed = box.value.trim();
          const read = spec.columns[column]!.read(remembered.read(box), systemOf(form));
          if (read.ok) {
            value[column] = read.value;
            return spec.columns[column]!.write(read.value) ?? '';
          }
          const says = spec.columns[column]!.says(read, typed, systemOf(form));
          faults.push({
            box,
            words: all.length > 1 ? text.inRow(spec.word, row + 1, says) : says,
            fixes: spec.columns[column]!.fixes?.(read, typed) ?? [],
          });
          return typed;
        });
      });
      const address = writeAddressRecords(written, spec.marks);
      return faults.length > 0 ? { faults, address } : { value: values as RowOf<Of>[], address };
    },
    fill: (form, name, address) => {
      const read = readAddressRecords(address, spec.marks);
      if (read.ok && read.value.length <= spec.most) return fillRows(form, name, read.value);
      const list = boxOf(form, `${name}-list`);
      list.value = address;
      const spelling = spec.like ? text.likeInAddress(spec.like) : names.map((column, at) => column + (spec.marks[at] ?? '')).join('');
      return {
        box: list,
        words: read.ok ? text.tooManyRows(spec.most, read.value.length) : text.wrongAddress(read.text ?? address, spelling),
      };
    },
    turn: (form, name) => {
      const shows = rowsOf(form, name).flatMap((_, row) =>
        names.flatMap((column) => (spec.columns[column]!.exact ? [turnBox(boxOf(form, column, row), spec.columns[column]!)] : [])),
      );
      return () => shows.forEach((show) => show());
    },
    wake: (form, name, changed) => {
      number(form, name);
      form.addEventListener('click', (event) => {
        const button = (event.target as Element).closest('button');
        const row = button?.closest<HTMLElement>(`[data-row-of="${name}"]`);
        if (row) {
          if (rowsOf(form, name).length === 1) return;
          const next = (row.nextElementSibling ?? row.previousElementSibling) as HTMLElement | null;
          row.remove();
          number(form, name);
          next?.querySelector('input')?.focus();
          changed();
        } else if (button?.dataset.addTo === name) {
          makeRows(form, name, rowsOf(form, name).length + 1);
          rowsOf(form, name).at(-1)!.querySelector('input')!.focus();
        }
      });
      form.addEventListener('reset', () => makeRows(form, name, 1));
      const list = boxOf(form, `${name}-list`);
      const take = (): void => {
        takeList(form, name);
        changed();
      };
      // A partly typed list is incomplete, so the list is parsed when the box loses focus, or at once after a paste.
      list.addEventListener('input', (event) => event.stopPropagation());
      list.addEventListener('change', take);
      form.addEventListener('paste', (event) => {
        const box = event.target as HTMLElement;
        const pasted = event.clipboardData?.getData('text') ?? '';
        // A name may hold blanks and commas, so into a row only a whole list is taken apart.
        if (box !== list && !(box.closest(`[data-row-of="${name}"]`) && /[\t\n]\S/.test(pasted))) return;
        event.preventDefault();
        list.value += pasted;
        take();
      });
    },
  };
}
