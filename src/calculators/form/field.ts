/*
 * A field of a calculator: one name in the address, one box or several in the form. It reads its boxes as they stand and
 * keeps nothing. What is wrong comes back as the box to mend and the sentence that says how.
 */
export type FormError = { readonly box: HTMLElement; readonly words: string };

export type Reading<Value> =
  | { readonly value: Value; readonly address: string | undefined }
  /** `address` is then what was typed; undefined where an address would make something else of it. */
  | { readonly faults: readonly FormError[]; readonly address: string | undefined };

export type Field<Value> = {
  read: (form: HTMLFormElement, name: string) => Reading<Value>;
  /** Fills the boxes from an address, and says what an address may not say so. The form was reset just before. */
  fill: (form: HTMLFormElement, name: string, text: string) => FormError | undefined;
  /** Of what has a unit: reads the boxes before the form's units change; what is returned fills them after. */
  turn?: (form: HTMLFormElement, name: string) => () => void;
  /** Wires buttons of its own. `changed` is called after they changed a box. */
  wake?: (form: HTMLFormElement, name: string, changed: () => void) => void;
};

export type FormControl = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;

/** The box of a name; of a row, counted from 0, where the name stands in rows. */
export function boxOf(form: HTMLFormElement, name: string, row = 0): FormControl {
  const box = form.querySelectorAll<FormControl>(`[name="${name}"]`)[row];
  if (!box) throw new Error(`boxOf: needs a box named ${name} in row ${row}`);
  return box;
}
