/*
 * Replaces malformed values of an entry by valid ones, so that the other rules can be checked before the author mends the value. Checks
 * run once with the first and once with the last value that a field may have, and keep what does not depend on it.
 */
import type { z } from 'astro/zod';
import { references } from '../schemas/fields.ts';
import type { Entry } from '../source/folder.ts';
import { at, type ValidEntries, type ValidEntry } from './fields.ts';

type Which = 'first' | 'last';
type Ids = ValidEntries['ids'];

/** Replacing one value can only show one further issue, so a few rounds are enough. */
const ROUNDS = 5;

/** The entry with valid fields, or null where no values fit. */
export function supposed(entry: Entry, schema: z.ZodType | null, which: Which, ids: Ids): ValidEntry | null {
  if (schema === null || entry.fields.value === undefined) return null;
  const value = structuredClone(entry.fields.value ?? {});
  for (let round = 0; round < ROUNDS; round += 1) {
    const result = schema.safeParse(value);
    if (result.success) return { ...entry, data: result.data };
    for (const issue of result.error.issues) {
      if (issue.code === 'unrecognized_keys') for (const key of issue.keys) put(value, [...issue.path, key], undefined);
      else put(value, issue.path, sample(at(schema, issue.path) as z.ZodType | undefined, which, ids));
    }
  }
  return null;
}

function put(value: unknown, path: readonly PropertyKey[], to: unknown): void {
  const parent = path.slice(0, -1).reduce<unknown>((held, key) => (held as Record<PropertyKey, unknown> | undefined)?.[key], value);
  if (typeof parent !== 'object' || parent === null || path.length === 0) return;
  if (to === undefined) delete (parent as Record<PropertyKey, unknown>)[path.at(-1)!];
  else (parent as Record<PropertyKey, unknown>)[path.at(-1)!] = to;
}

/** Values of the usual fields, from the least to the greatest. */
const VALUES: readonly unknown[] = [
  false,
  true,
  '1950-01-02, the first reason',
  '1950-01-02',
  '2199-12-30',
  '2199-12-30, the last reason',
  'anywhere',
  '01-02',
  '12-30',
  '00:01',
  '23:58',
  '1 January to 2 January',
  '29 December to 30 December',
  'https://first.example.org/a',
  'https://last.example.org/z',
  'first@example.org',
  'last@example.org',
  '330-555-0101',
  '330-555-0199',
  'America/New_York',
  'NZ',
  '978-0-00-000000-2',
  'a-first-name',
  'z-last-name',
  'First words.',
  'Last words.',
  -20,
  0.5,
  1,
  2,
  45,
  1950,
  2199,
];

type Held = {
  def: { type: string; options?: z.ZodType[]; entries?: Record<string, unknown>; values?: unknown[] };
  shape?: Record<string, z.ZodType>;
  element?: z.ZodType;
  unwrap?: () => z.ZodType;
};

/** The first or last value that a schema allows among the usual ones. Undefined where none of them fits. */
function sample(schema: z.ZodType | undefined, which: Which, ids: Ids): unknown {
  if (schema === undefined) return undefined;
  const marked = references.get(schema);
  const known = marked ? [...(ids as Record<string, Set<string>>)[marked.collection]!].sort() : [];
  if (known.length > 0) return which === 'first' ? known[0] : known.at(-1);
  const { def, shape, element, unwrap } = schema as unknown as Held;
  if (unwrap && ['optional', 'nullable', 'default'].includes(def.type)) return sample(unwrap.call(schema), which, ids);
  if (def.type === 'array') return which === 'first' && schema.safeParse([]).success ? [] : [sample(element, which, ids)];
  if (def.type === 'record') return {};
  if (def.type === 'union') return sample(def.options?.[0], which, ids);
  if (def.type === 'object' && shape)
    return Object.fromEntries(
      Object.entries(shape)
        .filter(([, field]) => !field.safeParse(undefined).success)
        .map(([key, field]) => [key, sample(field, which, ids)]),
    );
  const own = def.values ?? (def.entries && Object.values(def.entries));
  const values = [...(own ?? VALUES), ...((schema.meta()?.examples ?? []) as unknown[])];
  const fitting = values.filter((value) => schema.safeParse(value).success);
  return which === 'first' ? fitting[0] : fitting.at(-1);
}
