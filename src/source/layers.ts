/*
 * A club's folder laid over the books it stands on: of each collection and name the nearest file, and what only changes a
 * book's entry (added words, another choice of rows, a withdrawal) joined with the entry below it. What does not hold in
 * the club's land, and what the club leaves out, is not among the entries.
 */
import { holdsHere, type For, type Here, type Where } from '../schemas/where.ts';
import { isDraft } from './draft.ts';
import type { Entry, Translation } from './folder.ts';
import { isAddition, kindOfOverlay, laidOver } from './overlay.ts';
import { differences, isFit } from './translation-differences.ts';
import { baseOf, translated } from './translations.ts';

/**
 * Files of one folder, as they lie there. `place` is that of a book; the club's own folder has none. `translations` are in the language
 * that is wanted.
 */
export type Layer = { id: string; place: Where | null; entries: readonly Entry[]; translations?: readonly Entry[] };

export type Merged = {
  entries: Entry[];
  /** Files that only change an entry below them. */
  overlays: Entry[];
  /** Own files that would change an entry that is in no book. */
  overNothing: Entry[];
  /** What was compared with an entry below it. */
  translations: Translation[];
  /** What is not here: entries of other places, and rows of figures and treatments. */
  elsewhere: { entries: number; rows: number };
};

/** What no book can give a club. */
const NEVER = new Set(['meetings', 'notices', 'counts', 'files']);

/** `here` is null where a book is checked by itself: then everything holds. Layers from the widest to the nearest. */
export function mergeLayers(layers: readonly Layer[], here: Here | null, leavesOut: readonly string[]): Merged {
  const held = new Map<string, Entry>();
  const merged: Merged = { entries: [], overlays: [], overNothing: [], translations: [], elsewhere: { entries: 0, rows: 0 } };
  const left = new Set(leavesOut);
  for (const layer of layers) {
    const isOwn = layer === layers.at(-1);
    const entries = layer.entries.filter(
      (entry) => isOwn || (!isDraft(entry) && !NEVER.has(entry.collection) && !left.has(entry.collection) && !left.has(nameOf(entry))),
    );
    // Words are added to what the same folder may have put there.
    for (const entry of [...entries].sort((a, b) => Number(isAddition(a)) - Number(isAddition(b)))) {
      const kind = kindOfOverlay(entry);
      const below = held.get(nameOf(entry));
      if (kind === null) {
        const placed = withPlaces(entry, layer.place);
        held.set(nameOf(entry), below ? { ...placed, over: below } : placed);
      } else {
        if (isOwn) merged.overlays.push(entry);
        if (below) held.set(nameOf(entry), laidOver(kind, withPlaces(entry, layer.place), below));
        else if (isOwn) merged.overNothing.push(entry);
      }
    }
    for (const file of layer.translations ?? []) {
      const entry = held.get(nameOf(file));
      if (!entry) continue;
      const original = baseOf(entry);
      const found = differences(original, file);
      merged.translations.push({ file, original, differences: found });
      if (isFit(file, found)) held.set(nameOf(file), translated(entry, file));
    }
  }
  for (const entry of held.values()) {
    if (here && !holdsHere(placesOf(entry.fields.value) ?? 'anywhere', here)) merged.elsewhere.entries += 1;
    else {
      merged.entries.push(entry);
      if (here) merged.elsewhere.rows += rowsOf(entry.fields.value).filter((row) => !holdsHere(placesOf(row) ?? 'anywhere', here)).length;
    }
  }
  merged.entries.sort((a, b) => compare(a.collection, b.collection) || compare(a.id, b.id));
  return merged;
}

/** `articles/swarms`; of words that are added, the entry that they are added to. */
export const nameOf = ({ collection, id }: Pick<Entry, 'collection' | 'id'>): string => `${collection}/${id.replace(/\.add$/, '')}`;

/** What a book's file does not say of where it holds, its place says: of the entry, and of each row. */
function withPlaces(entry: Entry, place: Where | null): Entry {
  const { value } = entry.fields;
  if (place === null || place === 'anywhere' || typeof value !== 'object' || value === null) return entry;
  const own = placesOf(value) ?? place;
  const fields = value as { rows?: unknown };
  // A choice has no place of its own: the entry below it keeps its.
  const whole = kindOfOverlay(entry) === null ? { for: own } : {};
  const rows =
    Array.isArray(fields.rows) && entry.collection !== 'counts' ? { rows: fields.rows.map((row: unknown) => placed(row, own)) } : {};
  return { ...entry, fields: { ...entry.fields, value: { ...value, ...whole, ...rows } } };
}

const placed = (row: unknown, place: For): unknown =>
  typeof row === 'object' && row !== null && !('for' in row) ? { ...row, for: place } : row;

function placesOf(value: unknown): For | undefined {
  const places = (value as { for?: unknown } | null | undefined)?.for;
  if (typeof places === 'string') return places;
  return Array.isArray(places) && places.every((place) => typeof place === 'string') ? (places as string[]) : undefined;
}

function rowsOf(value: unknown): unknown[] {
  const rows = (value as { rows?: unknown } | null | undefined)?.rows;
  return Array.isArray(rows) ? rows : [];
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
