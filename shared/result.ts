/**
 * The one result type: a value, or the reason why there is none. Where a member typed it, the reason is one word, and the page holds the
 * sentence for it; `row` counts from 1 in a list, and `text` is what was typed. Where an author wrote it, the reason is a correction. On a
 * command line it is a sentence. A mistake of ours (an impossible figure, a negative tolerance) is not a result: it throws.
 */
export type Accepted<Value> = { readonly ok: true; readonly value: Value };

export type Refused<Reason> = {
  readonly ok: false;
  readonly reason: Reason;
  readonly row?: number;
  readonly text?: string;
};

export type Result<Value, Reason> = Accepted<Value> | Refused<Reason>;

/** What was found in a file of content, and what to write instead. */
export type Correction = { readonly found: string; readonly write: string };

export function ok<Value>(value: Value): Accepted<Value> {
  return { ok: true, value };
}

export function err<const Reason>(reason: Reason, where: { row?: number; text?: string } = {}): Refused<Reason> {
  return { ok: false, reason, ...where };
}

/** The value of a result that cannot fail unless the code itself is wrong, such as a day that stands in it. Throws otherwise. */
export function unwrap<Value>(result: Result<Value, unknown>): Value {
  if (!result.ok) throw new RangeError(`unwrap: needs a value, got ${JSON.stringify(result.reason)}`);
  return result.value;
}
