/** Above the title, where an address has a shared hive. */
export const sharedChecklist = 'Shared checklist';
export const unreadable = 'This link to a shared checklist can’t be read.';
export const cutShort = 'It may have been cut short. Nothing was changed.';

const count = (number: number, one: string, many = `${one}s`): string => `${number} ${number === 1 ? one : many}`;
/** `since`: "installed 18 April 2026". `unknown` steps of the link are not in this list. */
export const described = (name: string, since: string, done: number, all: number, notes: number, unknown: number): string => {
  const parts = [name, since, `${done} of ${all} steps done`, notes > 0 ? count(notes, 'note') : ''];
  const gone = unknown > 0 ? ` ${count(unknown, 'of its steps is', 'of its steps are')} not in this checklist.` : '';
  return `Someone shared this checklist with you: ${parts.filter(Boolean).join(', ')}.${gone}`;
};
/** Where the list does not say which day it counts from. */
export const from = (day: string): string => `from ${day}`;
export const isHere = 'It is now on this device.';
export const hiveIsHere = (hive: string): string => `${hive} is now on this device.`;
export const hasAll = (hive: string): string => `${hive} on this device already has all of it.`;

/** The shared hive is one more. `here` are the names of those on this device. */
export const added = (here: readonly string[], hive: string): string => {
  const stay = here.length === 1 ? `${here[0]} here stays as it is` : `Your ${here.length} hives here stay as they are`;
  return `${stay}. The shared one is added as ${hive}.`;
};
/** What a hive that is here gets: `done` steps, of which the first are `named`, and `notes`. */
export const adds = (hive: string, done: number, named: readonly string[], notes: number, differs: boolean): string => {
  const words = named.map((step) => `“${step}”`);
  if (done > named.length) words.push(`${done - named.length} more`);
  const all = [done > 0 ? `${count(done, 'step')} done (${words.join(', ')})` : '', notes > 0 ? count(notes, 'note') : ''].filter(Boolean);
  return `It adds ${all.join(' and ') || 'a date or a name'} to ${hive}. ${differs ? 'Where the two differ, yours stays.' : 'What you have stays.'}`;
};

export const use = 'Use it here';
export const notNow = 'Not now';
export const undo = 'Undo';
export const notKept = 'This browser can’t keep it: open the link again next time.';
export const changedSince = 'You have changed this checklist since then.';
export const stays = 'It stays as it is.';
