/* Checks references: every id that names another entry must name an existing one. */
import type { Club } from '../schemas/club.ts';
import { collections, type Collection } from '../schemas/collections.ts';
import { references } from '../schemas/fields.ts';
import type { z } from 'astro/zod';
import type { Diagnostic } from '../source/diagnostic.ts';
import { fieldName, type ValidEntries, type ValidEntry } from './fields.ts';
import { nearOrAll } from '../../shared/words/near-name.ts';
import { notIn } from './suggestions.ts';
import { atField, isAway, isDraft } from './place.ts';

export function referenceFaults(club: ValidEntries): Diagnostic[] {
  const faults: Diagnostic[] = [];
  const drafts = new Set(club.folder.entries.filter(isAway).map((entry) => `${entry.collection}/${entry.id}`));
  for (const [name, { schema }] of Object.entries(collections)) {
    for (const entry of club.of[name as Collection]) {
      for (const { path, collection, id } of pointers(schema, entry.data, [])) {
        const known = club.ids[collection as Collection];
        if (!known.has(id)) faults.push(missing(club, entry, path, collection as Collection, id));
        else if (!isDraft(entry) && drafts.has(`${collection}/${id}`)) faults.push(hidden(entry, path, id));
      }
    }
  }
  return [...faults, ...dutyFaults(club)];
}

function missing(club: ValidEntries, entry: ValidEntry, path: PropertyKey[], collection: Collection, id: string): Diagnostic {
  return atField(entry, path, { rule: 'reference', field: fieldName(path), ...notIn(club, collection, id) });
}

const hidden = (entry: ValidEntry, path: PropertyKey[], id: string): Diagnostic =>
  atField(entry, path, {
    rule: 'reference',
    field: fieldName(path),
    found: `"${id}", a draft, which is not shown`,
    write: 'an entry that is not a draft',
  });

type Pointer = { path: PropertyKey[]; collection: string; id: string };

/** Walks a schema together with its value and yields each id that is marked as a reference. */
function* pointers(schema: z.ZodType, value: unknown, path: PropertyKey[]): Generator<Pointer> {
  if (value === undefined || value === null) return;
  const marked = references.get(schema);
  if (marked) yield { path, collection: marked.collection, id: String(value) };
  const held = schema as unknown as {
    def: { type: string };
    shape?: Record<string, z.ZodType>;
    element?: z.ZodType;
    unwrap?: () => z.ZodType;
  };
  if (held.def.type === 'optional' && held.unwrap) yield* pointers(held.unwrap(), value, path);
  if (held.def.type === 'array' && held.element)
    for (const [index, item] of (value as unknown[]).entries()) yield* pointers(held.element, item, [...path, index]);
  if (held.def.type === 'object' && held.shape)
    for (const [key, field] of Object.entries(held.shape)) yield* pointers(field, (value as Record<string, unknown>)[key], [...path, key]);
}

/** The duties that somebody answers for: that of a contact, and one for which another stands in. */
export const dutiesOf = ({ contacts, 'stands-in': standsIn = {} }: Club): Set<string> =>
  new Set([...contacts.map(({ duty }) => duty), ...Object.keys(standsIn)]);

/** `ask:` and the law's `duty:` must name a contact of club.yaml. */
function dutyFaults(club: ValidEntries): Diagnostic[] {
  if (!club.club) return [];
  const known = dutiesOf(club.club.data);
  const faults: Diagnostic[] = [];
  for (const name of ['checklists', 'bulletins', 'articles', 'meetings', 'sheets', 'notices', 'answers'] as const) {
    for (const entry of club.of[name]) {
      const law = 'law' in entry.data ? (entry.data.law ?? []) : [];
      const asked: [PropertyKey[], string][] = [
        ...(entry.data.ask === undefined ? [] : [[['ask'], entry.data.ask] as [PropertyKey[], string]]),
        ...law.map((item, index): [PropertyKey[], string] => [['law', index, 'duty'], item.duty]),
      ];
      for (const [path, duty] of asked) {
        if (known.has(duty)) continue;
        faults.push({
          path: entry.path,
          ...entry.fields.placeOf(path),
          rule: 'contact',
          field: fieldName(path),
          found: `"${duty}", a duty that no contact in club.yaml has`,
          write: nearOrAll(duty, known),
        });
      }
    }
  }
  return faults;
}
