/*
 * Files that change an entry of a book: `x.add.mdx` adds words, a figure without title and unit chooses among rows, and a file
 * with only `withdrawn:` takes the entry down. Every value keeps the position in its own file.
 */
import type { Root } from 'mdast';
import type { Tongue } from '../../shared/country/language.ts';
import { CHOICE_FIELDS } from '../schemas/overlays.ts';
import { isDraft } from './draft.ts';
import type { Fields } from './fields.ts';
import type { Entry } from './folder.ts';
import { parseProse } from './prose.ts';

export type Overlay = 'addition' | 'choice' | 'withdrawal';

/** Collections whose pages are words that a club may add to. */
export const ADDED_TO = ['articles', 'bulletins', 'checklists'];

export const isAddition = ({ id }: Pick<Entry, 'id'>): boolean => id.endsWith('.add');

/** Null for a whole entry. */
export function kindOfOverlay(entry: Entry): Overlay | null {
  if (isAddition(entry)) return 'addition';
  const { value } = entry.fields;
  if (typeof value !== 'object' || value === null) return null;
  const names = Object.keys(value);
  if (names.length === 1 && names[0] === 'withdrawn' && entry.body.trim() === '') return 'withdrawal';
  const isChoice = entry.collection === 'figures' && names.length > 0 && !('title' in value) && !('unit' in value);
  return isChoice && names.some((name) => CHOICE_FIELDS.includes(name)) ? 'choice' : null;
}

/** The entry that results from laying one over another. A draft does not change what readers see. */
export function laidOver(kind: Overlay, entry: Entry, below: Entry): Entry {
  const laid =
    kind === 'addition' ? withWords(entry, below) : kind === 'choice' ? withChoice(entry, below) : withFields(entry, below, ['withdrawn']);
  return {
    ...laid,
    over: below,
    overlays: [...(below.overlays ?? []), entry],
    ...(isDraft(entry) ? { fields: { ...laid.fields, value: { ...(laid.fields.value as object), draft: true } } } : {}),
  };
}

type Values = Record<string, unknown>;
const valuesOf = ({ fields }: Entry): Values => (typeof fields.value === 'object' && fields.value !== null ? fields.value : {}) as Values;

/** The fields named, from the file above; their places are in that file. */
function withFields(entry: Entry, below: Entry, names: readonly string[]): Entry {
  const own = valuesOf(entry);
  const taken = names.filter((name) => name in own);
  const fields: Fields = {
    ...below.fields,
    value: { ...valuesOf(below), ...Object.fromEntries(taken.map((name) => [name, own[name]])) },
    placeOf: placesIn(entry, below, taken, 'placeOf'),
    placeOfName: placesIn(entry, below, taken, 'placeOfName'),
  };
  return { ...below, fields, text: `${below.text}\n${entry.text}` };
}

const placesIn =
  (entry: Entry, below: Entry, taken: readonly string[], method: 'placeOf' | 'placeOfName'): Fields['placeOf'] =>
  (keys) =>
    taken.includes(String(keys[0])) ? { ...entry.fields[method](keys), path: entry.path } : below.fields[method](keys);

/** Adds own rows after those of the book. A row of the same id and day replaces the book's row. */
function withChoice(entry: Entry, below: Entry): Entry {
  const own = valuesOf(entry);
  const laid = withFields(entry, below, ['follows', 'also-follows', 'no-row-in', 'because', 'checked', 'next-check', 'by', 'history']);
  const chosen = 'follows' in own && !('also-follows' in own) ? { 'also-follows': undefined, 'no-row-in': undefined } : {};
  if (!Array.isArray(own.rows)) return without(laid, chosen);
  const ownRows = own.rows as Values[];
  const isReplaced = (row: Values): boolean => ownRows.some(({ id, from }) => id === row.id && from === row.from);
  const bookRows = ((valuesOf(below).rows ?? []) as Values[]).map((row, index) => ({ row, index })).filter(({ row }) => !isReplaced(row));
  const placeOf =
    (method: 'placeOf' | 'placeOfName'): Fields['placeOf'] =>
    (keys) => {
      const [name, index, ...rest] = keys;
      if (name !== 'rows' || typeof index !== 'number') return laid.fields[method](keys);
      const held = bookRows[index];
      return held
        ? below.fields[method](['rows', held.index, ...rest])
        : { ...entry.fields[method](['rows', index - bookRows.length, ...rest]), path: entry.path };
    };
  const value = { ...(laid.fields.value as Values), rows: [...bookRows.map(({ row }) => row), ...ownRows] };
  return without({ ...laid, fields: { ...laid.fields, value, placeOf: placeOf('placeOf'), placeOfName: placeOf('placeOfName') } }, chosen);
}

function without(entry: Entry, names: Values): Entry {
  const value = { ...valuesOf(entry) };
  for (const name of Object.keys(names)) delete value[name];
  return { ...entry, fields: { ...entry.fields, value } };
}

/** The heading above the words that a club adds, where it gives none. */
const ADDED: Readonly<Record<Tongue, string>> = { en: 'In our club', es: 'En nuestra asociación' };

/** Adds the words after those of the book, under a heading, and joins the lists of work, sources and law. */
function withWords(entry: Entry, below: Entry): Entry {
  if (!entry.tree || !below.tree) return below;
  const own = valuesOf(entry);
  const heading = typeof own.heading === 'string' ? own.heading : ADDED[entry.tongue ?? 'en'];
  const before = entry.body.trim() === '' ? below.body : `${below.body.trimEnd()}\n\n## ${heading}\n\n`;
  const body = before + entry.body;
  const line = before.split('\n').length;
  const value = valuesOf(below);
  const joined = (name: string): Values => {
    const both = [value[name], own[name]].flatMap((list) => (Array.isArray(list) ? (list as unknown[]) : []));
    return both.length > 0 ? { [name]: [...new Set(both)] } : {};
  };
  return {
    ...below,
    fields: {
      ...below.fields,
      value: { ...value, ...joined('work'), ...joined('sources'), ...joined('law'), ...(own.yard === true ? { yard: true } : {}) },
    },
    text: below.text.slice(0, below.text.length - below.body.length) + body,
    body,
    tree:
      entry.body.trim() === ''
        ? below.tree
        : joinedTree(below.tree, parseProse(body), line, entry.tongue === below.tongue ? undefined : entry.tongue),
    added: { path: entry.path, fromLine: below.bodyLine + line - 1, toLine: entry.bodyLine },
  };
}

/** Words in another language than those above them say so. */
function joinedTree(below: Root, whole: Root, line: number, tongue: Tongue | undefined): Root {
  const added = whole.children.filter(({ position }) => (position?.start.line ?? 0) >= line - 2);
  if (tongue) for (const node of added) node.data = { ...node.data, hProperties: { lang: tongue } } as typeof node.data;
  return { ...whole, children: [...below.children, ...added] };
}
