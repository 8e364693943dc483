/* Runs of one checklist, one for each hive: begin, open, name, file, start again. A reader sees hives. Pure functions. */
import { hiveName } from './hive-name.ts';
import { FIRST_RUN, listOf, type ChecklistState, type ListRecord, type Run } from './record.ts';
import * as text from './runs.en.ts';

const withList = (state: ChecklistState, list: string, held: ListRecord): ChecklistState => ({
  ...state,
  lists: { ...state.lists, [list]: held },
});

/** Begins a run and opens it. `id` must be new in the list. */
export function begin(state: ChecklistState, list: string, id: string, run: Run): ChecklistState {
  const held = listOf(state, list);
  if (Object.hasOwn(held.runs, id)) throw new RangeError(`begin: needs a new id, got ${id}`);
  return withList(state, list, { open: id, runs: { ...held.runs, [id]: run } });
}

export function open(state: ChecklistState, list: string, id: string): ChecklistState {
  const held = listOf(state, list);
  return Object.hasOwn(held.runs, id) ? withList(state, list, { ...held, open: id }) : state;
}

/** Changes the open run, filed or not, for its name and its filing. */
export function changeOpen(state: ChecklistState, list: string, change: (run: Run) => Run): ChecklistState {
  const held = listOf(state, list);
  return withList(state, list, { ...held, runs: { ...held.runs, [held.open]: change(held.runs[held.open] ?? { name: '', ticks: {} }) } });
}

/** Files the open run under its day and opens a new one for the same hive. A filed run can still be read. */
export const file = (state: ChecklistState, list: string, day: string, nextId: string): ChecklistState =>
  begin(
    changeOpen(state, list, (run) => ({ ...run, filed: day })),
    list,
    nextId,
    { name: hiveName(state, list, listOf(state, list).open), ticks: {} },
  );

/**
 * Removes all ticks, notes and answers from the open run. Its name stays. Ticks of steps that are not in today's list go too, after
 * confirmation.
 */
export const startAgain = (state: ChecklistState, list: string): ChecklistState =>
  changeOpen(state, list, ({ name }) => ({ name, ticks: {} }));

/** A new id for a run: the next free number. */
export function freshId(state: ChecklistState, list: string): string {
  const taken = Object.keys(listOf(state, list).runs);
  for (let number = taken.length + 1; ; number += 1) if (!taken.includes(`run ${number}`)) return `run ${number}`;
}

/** Adds a hive and opens its run. The present one gets a record too, so that it stays in the list of hives. */
export function addHive(state: ChecklistState, list: string): ChecklistState {
  const held = changeOpen(state, list, (run) => run);
  const taken = runsOf(held, list).map(({ name }) => name);
  let number = 1;
  while (taken.includes(text.hive(number))) number += 1;
  return begin(held, list, freshId(held, list), { name: text.hive(number), ticks: {} });
}

/** Opens the checklist that follows for the same hive, and gives it its day. A run there that has ticks keeps its own day. */
export function carryOn(state: ChecklistState, from: string, to: string, day: string | undefined): ChecklistState {
  const hive = hiveName(state, from, listOf(state, from).open);
  const there = runsOf(state, to).find(({ name, run }) => name === hive && !run.filed);
  const first = Object.keys(listOf(state, to).runs).length === 0 && hive === text.hive(1);
  const opened = there
    ? open(state, to, there.id)
    : begin(state, to, first ? FIRST_RUN : freshId(state, to), { name: first ? '' : hive, ticks: {} });
  return changeOpen(opened, to, (run) => (day && (!run.day || Object.keys(run.ticks).length === 0) ? { ...run, day } : run));
}

/** Runs in display order: newest last, filed ones after the others. */
export function runsOf(state: ChecklistState, list: string): { id: string; run: Run; open: boolean; name: string }[] {
  const held = listOf(state, list);
  return Object.entries(held.runs)
    .map(([id, run]) => ({ id, run, open: id === held.open, name: hiveName(state, list, id) }))
    .sort((a, b) => Number(Boolean(a.run.filed)) - Number(Boolean(b.run.filed)));
}

export type Difference = { ticks: number; notes: number; runs: number; clashes: string[] };

/**
 * Merges two records: every tick and note of both. Where the two differ in a note, an answer or a day, ours stays and the conflict is
 * reported. Runs are the same when list and id are equal and either the name or a tick agrees.
 */
export function merge(ours: ChecklistState, theirs: ChecklistState): { state: ChecklistState; difference: Difference } {
  const difference: Difference = { ticks: 0, notes: 0, runs: 0, clashes: [] };
  let state = ours;
  for (const [list, held] of Object.entries(theirs.lists)) {
    for (const [id, run] of Object.entries(held.runs)) state = mergeRun(state, list, id, run, difference);
  }
  if (theirs.yard && ours.yard && theirs.yard !== ours.yard) difference.clashes.push(text.yardsAddress);
  else if (theirs.yard) state = { ...state, yard: theirs.yard };
  return { state, difference };
}

function mergeRun(state: ChecklistState, list: string, id: string, theirs: Run, difference: Difference): ChecklistState {
  const held = listOf(state, list);
  const ours = Object.hasOwn(held.runs, id) ? held.runs[id]! : null;
  const same = ours && (ours.name === theirs.name || !ours.name || !theirs.name);
  if (!ours || !same) {
    difference.runs += 1;
    difference.ticks += Object.keys(theirs.ticks).length;
    difference.notes += Object.keys(theirs.notes ?? {}).length;
    const free = ours ? freshId(state, list) : id;
    return withList(state, list, { open: Object.keys(held.runs).length === 0 ? free : held.open, runs: { ...held.runs, [free]: theirs } });
  }
  const both = <T>(field: 'ticks' | 'notes' | 'asked' | 'choices'): Record<string, T> =>
    joined(ours[field] as Record<string, T> | undefined, theirs[field] as Record<string, T> | undefined, (key) => {
      if (field !== 'ticks') difference.clashes.push(`${list}, ${key}`);
    });
  difference.ticks += Object.keys(theirs.ticks).filter((step) => !Object.hasOwn(ours.ticks, step)).length;
  difference.notes += Object.keys(theirs.notes ?? {}).filter((step) => !Object.hasOwn(ours.notes ?? {}, step)).length;
  if (ours.day && theirs.day && ours.day !== theirs.day) difference.clashes.push(text.dayOf(list));
  const run: Run = { ...theirs, ...ours, name: ours.name || theirs.name, ticks: both('ticks') };
  for (const field of ['notes', 'asked', 'choices'] as const) if (ours[field] || theirs[field]) run[field] = both<string>(field);
  return withList(state, list, { ...held, runs: { ...held.runs, [id]: run } });
}

function joined<T>(ours: Record<string, T> = {}, theirs: Record<string, T> = {}, clash: (key: string) => void): Record<string, T> {
  for (const key of Object.keys(theirs))
    if (Object.hasOwn(ours, key) && JSON.stringify(ours[key]) !== JSON.stringify(theirs[key])) clash(key);
  return { ...theirs, ...ours };
}
