/*
 * The name that was most likely meant by a misspelt one: a field, an option, a file, a word of a list. It is the one place that says how
 * near is near enough, and it says nothing where no name is near.
 */
import { editDistance } from './edit-distance.ts';

/**
 * The closest of `names` to `typed`, whatever the case: one edit in a word of four letters or fewer, two in a longer one, a quarter of
 * a long one. Null where none is so near, or where two are equally near.
 */
export function nearName(typed: string, names: Iterable<string>): string | null {
  const most = typed.length <= 4 ? 1 : Math.max(2, Math.floor(typed.length / 4));
  const near = [...new Set(names)]
    .map((name) => ({ name, distance: editDistance(typed.toLowerCase(), name.toLowerCase(), undefined, most) }))
    .filter(({ distance }) => distance <= most)
    .sort((a, b) => a.distance - b.distance);
  return near.length > 0 && near[0]!.distance !== near[1]?.distance ? near[0]!.name : null;
}

/** What to write instead: the name that is near, or all that there are. */
export function nearOrAll(typed: string, names: Iterable<string>): string {
  const all = [...new Set(names)];
  const near = nearName(typed, all);
  if (near !== null) return `"${near}"`;
  return all.length === 1 ? `"${all[0]!}"` : `one of: ${all.join(', ')}`;
}
