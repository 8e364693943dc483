/**
 * What a function answers when a member's own input may be wrong: the value, or one word that says why there is none.
 * The page holds the sentence for the word. `row` counts from 1 and `text` is what was typed, where a list has one bad row.
 * A mistake of ours (a figure that cannot be, a negative tolerance) is not a result: it throws.
 */
export type Accepted<Value> = { readonly ok: true; readonly value: Value };

export type Refused<Reason extends string> = {
  readonly ok: false;
  readonly reason: Reason;
  readonly row?: number;
  readonly text?: string;
};

export type Result<Value, Reason extends string> = Accepted<Value> | Refused<Reason>;

export function ok<Value>(value: Value): Accepted<Value> {
  return { ok: true, value };
}

export function err<Reason extends string>(reason: Reason, where: { row?: number; text?: string } = {}): Refused<Reason> {
  return { ok: false, reason, ...where };
}
