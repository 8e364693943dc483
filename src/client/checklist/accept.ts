/*
 * What a shared hive would change in this browser's record. Nothing of the reader's is replaced: a hive with the same mark gets the steps,
 * notes and dates that it lacks, and any other becomes a hive of its own. Pure functions.
 */
import { listOf, type ChecklistState, type Run } from './record.ts';
import { begin, freshId, merge, open } from './runs.ts';

export type Acceptance = {
  /** The record afterwards. */
  readonly state: ChecklistState;
  /** The hive's id in it. */
  readonly hive: string;
  /** `first`: no hive of this list was here. `more`: another hive. `same`: the hive is here and gets what it lacks. */
  readonly as: 'first' | 'more' | 'same';
  /** The steps that it adds to a hive that is here. */
  readonly ticks: readonly string[];
  readonly notes: readonly string[];
  /** Whether a hive that is here gets anything, be it only a day or a name. */
  readonly adds: boolean;
  /** Whether a day, a note or a name here differs from the shared one. The reader's stays. */
  readonly differs: boolean;
};

export function accept(state: ChecklistState, list: string, theirs: Run): Acceptance {
  const { open: current, runs } = listOf(state, list);
  const all = { ticks: Object.keys(theirs.ticks), notes: Object.keys(theirs.notes ?? {}), adds: true, differs: false };
  if (Object.values(runs).every(isEmpty)) {
    const run = { ...runs[current], ...theirs };
    const lists = { ...state.lists, [list]: { open: current, runs: { ...runs, [current]: run } } };
    return { state: { ...state, lists }, hive: current, as: 'first', ...all };
  }
  const same = Object.keys(runs).find((id) => runs[id]!.shared === theirs.shared && !runs[id]!.filed);
  if (same === undefined) {
    const hive = freshId(state, list);
    return { state: begin(state, list, hive, theirs), hive, as: 'more', ...all };
  }
  const ours = runs[same]!;
  const incoming = { ...theirs, name: ours.name || theirs.name };
  const { state: merged, difference } = merge(state, {
    version: state.version,
    lists: { [list]: { open: same, runs: { [same]: incoming } } },
  });
  const ticks = all.ticks.filter((step) => !Object.hasOwn(ours.ticks, step));
  const notes = all.notes.filter((step) => !Object.hasOwn(ours.notes ?? {}, step));
  return {
    state: open(merged, list, same),
    hive: same,
    as: 'same',
    ticks,
    notes,
    adds: ticks.length + notes.length > 0 || (!ours.day && Boolean(theirs.day)) || (!ours.name && theirs.name !== ''),
    differs: difference.clashes.length > 0 || (theirs.name !== '' && theirs.name !== incoming.name),
  };
}

/** A hive without anything of the reader's. The page makes one when it is only looked at. */
const isEmpty = ({ name, day, filed, ticks, notes, asked, choices }: Run): boolean =>
  !name && !day && !filed && [ticks, notes, asked, choices].every((held) => Object.keys(held ?? {}).length === 0);
