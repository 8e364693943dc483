/**
 * Result of a function whose input a member may have mistyped: the value, or a reason in one word. The page holds the sentence for the
 * reason. Where one row of a list is bad, `row` counts from 1 and `text` is what was typed. A mistake of ours (an impossible figure, a
 * negative tolerance) is not a result: it throws.
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

/** The value of a result that cannot fail unless the code itself is wrong, such as a day that stands in it. Throws otherwise. */
export function unwrap<Value>(result: Result<Value, string>): Value {
  if (!result.ok) throw new RangeError(`unwrap: needs a value, got "${result.reason}"`);
  return result.value;
}

export function err<Reason extends string>(reason: Reason, where: { row?: number; text?: string } = {}): Refused<Reason> {
  return { ok: false, reason, ...where };
}
