/*
 * Type of a calculator's form field: one name in the address, one or more boxes in the form. It reads its boxes each time and keeps no
 * state. An error names the box to correct and says how.
 */
export type FormError = {
  readonly box: HTMLElement;
  readonly words: string;
  /** What was likely meant, each a text for the box. */
  readonly fixes?: readonly string[];
};

export type Reading<Value> =
  | { readonly value: Value; readonly address: string | undefined }
  /** `address` is what was typed, or undefined where an address would change its meaning. */
  | { readonly faults: readonly FormError[]; readonly address: string | undefined };

export type Field<Value> = {
  read: (form: HTMLFormElement, name: string) => Reading<Value>;
  /** Fills the boxes from an address and returns the errors in it. The form was reset just before. */
  fill: (form: HTMLFormElement, name: string, text: string) => FormError | undefined;
  /** For fields with a unit: reads the boxes before the form's units change and returns a function that fills them afterwards. */
  turn?: (form: HTMLFormElement, name: string) => () => void;
  /** Adds listeners to the field's own buttons. They call `changed` after they change a box. */
  wake?: (form: HTMLFormElement, name: string, changed: () => void) => void;
};

export type FormControl = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;

/** The box of a name, in a row counted from 0 where the name belongs to rows. */
export function boxOf(form: HTMLFormElement, name: string, row = 0): FormControl {
  const box = form.querySelectorAll<FormControl>(`[name="${name}"]`)[row];
  if (!box) throw new Error(`boxOf: needs a box named ${name} in row ${row}`);
  return box;
}
