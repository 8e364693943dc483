/*
 * Checks that the pages of a wide book say where they hold. An entry needs `for:` if it rests on a law, a label or a standard,
 * names a country or an agency, or has fixed months. Without it a club could print the law of another place. What a club or the
 * book of a land says of another land is in checks/elsewhere.
 */
import { monthNames } from '../../shared/days/month-names.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import type { Entry } from '../source/folder.ts';
import { narrowness, type Where } from '../schemas/where.ts';
import { fieldName, type ValidEntry, type ValidEntries } from './fields.ts';
import { attribute, isTag, plainText, walk } from '../source/prose.ts';
import { LAND_NAMES } from './land-names.ts';
import { atField, atFieldName, atNode, atWords, isDraft, isPage, isWithdrawn } from './place.ts';

export const BINDING = new Set(['law', 'label', 'standard']);
const WRITE = '"for:" with the place, such as US or US-OH, or "for: anywhere" where it holds all the same';

export function holdingFaults(club: ValidEntries): Diagnostic[] {
  const { book } = club.folder;
  const place = (book?.fields.value as { place?: Where } | undefined)?.place;
  if (typeof place !== 'string' || narrowness(place) > 1) return [];
  const binding = new Map(club.of.sources.filter(({ data }) => BINDING.has(data.kind)).map(({ id, data }) => [id, data.kind]));
  return unplaced(club).flatMap((entry) => [
    ...sourceFaults(entry, binding),
    ...(place === 'anywhere' ? monthFaults(entry) : []),
    ...nameFaults(entry, (text) => LAND_NAMES.exec(text)?.[0] ?? null),
  ]);
}

/** The folder's own entries that readers see and that do not say where they hold. */
export const unplaced = (club: ValidEntries): ValidEntry<Held>[] =>
  (Object.values(club.of).flat() as ValidEntry<Held>[]).filter(
    (entry) => entry.book === undefined && !isDraft(entry) && !isWithdrawn(entry) && entry.data.for === undefined,
  );

type Row = { for?: unknown; source?: string };
export type Held = {
  for?: unknown;
  kind?: string;
  who?: string;
  title?: string;
  where?: string;
  sources?: string[];
  rows?: Row[];
  law?: Row[];
  when?: string;
};

function sourceFaults(entry: ValidEntry<Held>, binding: ReadonlyMap<string, string>): Diagnostic[] {
  const { data } = entry;
  const at = (path: PropertyKey[], found: string): Diagnostic =>
    atField(entry, path, { rule: 'place', field: fieldName(path), found, write: WRITE });
  if (entry.collection === 'sources') return binding.has(entry.id) ? [at(['kind'], `a ${data.kind} without a place`)] : [];
  const rows = (['rows', 'law'] as const).flatMap((name) =>
    (Array.isArray(data[name]) ? data[name] : []).flatMap((row, index) => {
      if (row.for !== undefined) return [];
      if (name === 'law') return [at([name, index], 'a law without a place')];
      return row.source !== undefined && binding.has(row.source)
        ? [at([name, index, 'source'], `"${row.source}", a ${binding.get(row.source)}, in a row without a place`)]
        : [];
    }),
  );
  const named = (data.sources ?? []).flatMap((id, index) =>
    binding.has(id) ? [at(['sources', index], `"${id}", a ${binding.get(id)}, under a page without a place`)] : [],
  );
  return [...rows, ...named.slice(0, 1)];
}

const MONTHS = monthNames.join('|');
const DATED = new RegExp(`\\b(?:${MONTHS})\\b`);

function monthFaults(entry: ValidEntry<Held>): Diagnostic[] {
  const message = (found: string, field: string) => ({
    rule: 'place',
    field,
    found: `"${found}", fixed months in a book of both halves of the world`,
    write: 'a part of the year, such as "in swarming", or "for: north"',
  });
  const { when } = entry.data;
  const ofTasks = (isPage(entry) ? [...walk(entry.tree)] : []).flatMap((node) => {
    const of = isTag(node) && node.name === 'Task' ? (attribute(node, 'when') ?? '') : '';
    return DATED.test(of) ? [atNode(entry, node, message(of, 'Task, when'))] : [];
  });
  return [...(when !== undefined && DATED.test(when) ? [atField(entry, ['when'], message(when, 'when'))] : []), ...ofTasks];
}

/** Pages whose words may name a place. Figures and sources give theirs in fields. */
const NAMED_IN = new Set(['articles', 'bulletins', 'checklists', 'cautions', 'local']);

/** The first name that `find` gives of a land, a state or an agency among the words of a page. */
export function nameFaults(entry: ValidEntry<Held>, find: (text: string) => string | null): Diagnostic[] {
  const name = NAMED_IN.has(entry.collection) ? find(textOf(entry)) : null;
  if (name === null) return [];
  const message = { rule: 'place', field: 'for', found: `"${name}" on a page without a place`, write: WRITE };
  return [isPage(entry) && entry.body.includes(name) ? atWords(entry, entry.tree, name, message) : atFieldName(entry, ['for'], message)];
}

function textOf(entry: Entry): string {
  const { title, summary, line, says } = (entry.fields.value ?? {}) as Record<string, unknown>;
  return [entry.tree ? plainText(entry.tree) : '', title, summary, line, ...(Array.isArray(says) ? says : [])]
    .filter((words) => typeof words === 'string')
    .join('\n');
}
