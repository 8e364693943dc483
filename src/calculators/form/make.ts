/* Creates an element with attributes and children. Strings become text, never markup. */
export type Attributes = Readonly<Record<string, string | number>>;

export function make<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...inside: (Node | string)[]
): HTMLElementTagNameMap[Tag] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
  element.append(...inside);
  return element;
}

/** One result of a form. Without a value it contains the reason. Only the headline of a result is announced by itself. */
export function makeOutput(name: string, words: string, value?: string): HTMLOutputElement {
  return make('output', { name, 'aria-live': 'off', ...(value === undefined ? {} : { 'data-value': value }) }, words);
}
