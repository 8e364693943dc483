/*
 * Checklist record: a reader's ticks in one record for the whole site. It holds lists by id, in each list the runs that she named, and in
 * each run the ticks by step id. Rewording, moving or adding steps changes no tick, and the tick of a removed step stays. Pure functions:
 * every change takes a record and returns a new one, with its unknown parts.
 */
export const VERSION = 2;

/** A tick: its day, and a hash of the words of the step. */
export type Tick = { on: string; of: string };

export type Run = {
  name: string;
  /** The reader's own day from which dates are counted, `2026-04-18`. */
  day?: string;
  /** How she started: how the queen was given, and with what comb. */
  choices?: Record<string, string>;
  ticks: Record<string, Tick>;
  notes?: Record<string, string>;
  /** At steps that pause the list: who she asked, or that nothing was wrong. */
  asked?: Record<string, string>;
  /** The day on which the run was filed. A filed run is read-only. */
  filed?: string;
  /** The mark of the hive in shared links, by which another phone recognises it. */
  shared?: string;
};

export type ListRecord = { open: string; runs: Record<string, Run> };
export type ChecklistState = {
  version: number;
  lists: Record<string, ListRecord>;
  /** Where the apiary is, in words to read out to emergency services. One for the site. */
  yard?: string;
};

export const emptyState = (): ChecklistState => ({ version: VERSION, lists: {} });
export const FIRST_RUN = 'the first';

/** Whether a tick belongs to these words: `done`, `changed` (the words are newer), or null. */
export function tickOf(run: Run, step: string, print: string): 'done' | 'changed' | null {
  const tick = own(run.ticks, step);
  return !tick ? null : tick.of === '' || tick.of === print ? 'done' : 'changed';
}

export const listOf = (state: ChecklistState, list: string): ListRecord => own(state.lists, list) ?? { open: FIRST_RUN, runs: {} };
export const openRun = (state: ChecklistState, list: string): Run => {
  const held = listOf(state, list);
  return own(held.runs, held.open) ?? { name: '', ticks: {} };
};

/** The record with a change to the open run of a list. A filed run stays unchanged. */
export function inOpenRun(state: ChecklistState, list: string, change: (run: Run) => Run): ChecklistState {
  const held = listOf(state, list);
  const run = openRun(state, list);
  if (run.filed) return state;
  return { ...state, lists: { ...state.lists, [list]: { ...held, runs: { ...held.runs, [held.open]: change(run) } } } };
}

export const withTick = (run: Run, step: string, tick: Tick | null): Run => ({
  ...run,
  ticks: tick ? { ...run.ticks, [step]: tick } : without(run.ticks, step),
});

export function without<T>(held: Record<string, T>, key: string): Record<string, T> {
  const { [key]: _, ...rest } = held;
  return rest;
}

export type Reading = { state: ChecklistState; trouble: null | 'damaged' | 'newer' };

/** Parses a record from its text. An error is returned with its reason, and nothing is discarded here. */
export function readState(text: string | null): Reading {
  if (!text) return { state: emptyState(), trouble: null };
  try {
    const value = JSON.parse(text) as ChecklistState;
    if (typeof value?.version !== 'number' || !isRecord(value.lists)) return { state: emptyState(), trouble: 'damaged' };
    if (value.version > VERSION) return { state: emptyState(), trouble: 'newer' };
    const whole = Object.values(value.lists).every(
      (list) => isRecord(list) && isRecord(list.runs) && Object.values(list.runs).every((run) => isRecord(run) && isRecord(run.ticks)),
    );
    return whole ? { state: { ...value, version: VERSION }, trouble: null } : { state: emptyState(), trouble: 'damaged' };
  } catch {
    return { state: emptyState(), trouble: 'damaged' };
  }
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value);
/** Own properties only, because `constructor` is a valid name of a step. */
export const own = <T>(held: Record<string, T> | undefined, key: string): T | undefined =>
  held && Object.hasOwn(held, key) ? held[key] : undefined;
