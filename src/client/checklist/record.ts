/*
 * What a reader has ticked, as one record for the whole site folder: lists by their id, in each list the runs she named,
 * in each run the ticks by the step's own id. Rewording, moving or adding steps touches no tick; a tick whose step is gone
 * stays where it is. Pure: every change takes a record and gives a new one, and keeps what it does not know.
 */
export const VERSION = 2;

/** A tick: the day it was made, and a print of the words it was made on. */
export type Tick = { on: string; of: string };

export type Run = {
  name: string;
  /** The reader's own day that dates are counted from, `2026-04-18`. */
  day?: string;
  /** What she said of her start: how the queen was given, what comb there was. */
  choices?: Record<string, string>;
  ticks: Record<string, Tick>;
  notes?: Record<string, string>;
  /** At steps that pause the list: whom she asked, or that nothing was wrong. */
  asked?: Record<string, string>;
  /** The day the run was filed: it is then read, not changed. */
  filed?: string;
};

export type ListRecord = { open: string; runs: Record<string, Run> };
export type ChecklistState = {
  version: number;
  lists: Record<string, ListRecord>;
  /** Where the yard is, in words to read out to whoever sends help. One for the site folder. */
  yard?: string;
};

export const emptyState = (): ChecklistState => ({ version: VERSION, lists: {} });
export const FIRST_RUN = 'the first';

/** Whether a tick was made, and on these words: `done`, `changed` (the words are new since), or null. */
export function tickOf(run: Run, step: string, print: string): 'done' | 'changed' | null {
  const tick = own(run.ticks, step);
  return !tick ? null : tick.of === '' || tick.of === print ? 'done' : 'changed';
}

export const listOf = (kept: ChecklistState, list: string): ListRecord => own(kept.lists, list) ?? { open: FIRST_RUN, runs: {} };
export const openRun = (kept: ChecklistState, list: string): Run => {
  const held = listOf(kept, list);
  return own(held.runs, held.open) ?? { name: '', ticks: {} };
};

/** The record with the open run of a list changed. A filed run is left as it is. */
export function inOpenRun(kept: ChecklistState, list: string, change: (run: Run) => Run): ChecklistState {
  const held = listOf(kept, list);
  const run = openRun(kept, list);
  if (run.filed) return kept;
  return { ...kept, lists: { ...kept.lists, [list]: { ...held, runs: { ...held.runs, [held.open]: change(run) } } } };
}

export const withTick = (run: Run, step: string, tick: Tick | null): Run => ({
  ...run,
  ticks: tick ? { ...run.ticks, [step]: tick } : without(run.ticks, step),
});

export function without<T>(held: Record<string, T>, key: string): Record<string, T> {
  const { [key]: _, ...rest } = held;
  return rest;
}

export type Reading = { kept: ChecklistState; trouble: null | 'damaged' | 'newer' };

/** Reads a record from its text; what cannot be read is named, never thrown away here. */
export function readState(text: string | null): Reading {
  if (!text) return { kept: emptyState(), trouble: null };
  try {
    const value = JSON.parse(text) as ChecklistState;
    if (typeof value?.version !== 'number' || !isRecord(value.lists)) return { kept: emptyState(), trouble: 'damaged' };
    if (value.version > VERSION) return { kept: emptyState(), trouble: 'newer' };
    const whole = Object.values(value.lists).every(
      (list) => isRecord(list) && isRecord(list.runs) && Object.values(list.runs).every((run) => isRecord(run) && isRecord(run.ticks)),
    );
    return whole ? { kept: { ...value, version: VERSION }, trouble: null } : { kept: emptyState(), trouble: 'damaged' };
  } catch {
    return { kept: emptyState(), trouble: 'damaged' };
  }
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value);
/** Only what was put there: `constructor` is a step's name like another. */
export const own = <T>(held: Record<string, T> | undefined, key: string): T | undefined =>
  held && Object.hasOwn(held, key) ? held[key] : undefined;
