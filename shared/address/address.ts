/**
 * The values of a form in a web address after `#`: `name=value&name=value`. Both sides are percent-encoded, and `+` is a plus. A value
 * stays as it was written, right or wrong, so that the form can show it with its error. The marks of lists and records (`, ; : /`) stay
 * readable. A broken percent sign stays as typed.
 */
export type Address = {
  readonly values: ReadonlyMap<string, string>;
  /** Names that the form does not have, in the order of the address. */
  readonly unknown: readonly string[];
  /** Names that occur more than once. The first value counts. */
  readonly repeated: readonly string[];
};

export function readAddress(hash: string, known: readonly string[]): Address {
  const values = new Map<string, string>();
  const unknown: string[] = [];
  const repeated: string[] = [];
  for (const pair of hash
    .replace(/^#/, '')
    .split('&')
    .filter((part) => part !== '')) {
    const cut = pair.indexOf('=');
    const name = decode(cut < 0 ? pair : pair.slice(0, cut));
    if (!known.includes(name)) unknown.push(name);
    else if (values.has(name)) repeated.push(name);
    else values.set(name, cut < 0 ? '' : decode(pair.slice(cut + 1)));
  }
  return { values, unknown, repeated };
}

/** Returns the pairs in the given order, without the `#`. */
export function writeAddress(pairs: Iterable<readonly [name: string, value: string]>): string {
  return [...pairs].map(([name, value]) => `${encode(name)}=${encode(value)}`).join('&');
}

export function decode(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

function encode(text: string): string {
  return encodeURIComponent(text.toWellFormed()).replace(/%(2C|3B|3A|2F)/g, (mark) => decodeURIComponent(mark));
}
