/** Answers at a step that pauses the list. */
export const allIsWell = 'All is well here.';

export const nowFor = (hive: string): string => `This checklist is now for ${hive}. Rename it under More.`;
export const askName = 'A name for this hive, such as "green hive":';
export const askFile = 'Save this checklist to history? You can still read it, and a new one opens for the same hive.';
export const askStartOver = 'Clear all ticks and notes for this hive? Other hives and lists keep theirs.';
export const putAside = 'What could not be read was put aside, not deleted. Ticks are kept again.';
export const noRoom = 'This browser has no room to put it aside. Nothing was changed.';
export const savedAs = (name: string): string => `Saved as ${name}.`;

/** What a fault of the date box asks for. */
export const theDay = 'the day';
export const datesCount = (day: string): string => `Dates count from ${day}. Ticks stay.`;
export const addressStands = 'The address stands beside the emergency number on every list.';
export const noAddress = 'No address is kept now.';

export const notesOn = 'Each step has a button for a note now.';
export const addNote = 'Add a note';
export const changeNote = 'Change the note';
/** For listeners. */
export const addNoteOn = (step: string): string => `Add a note on: ${step}`;
export const changeNoteOn = (step: string): string => `Change the note on: ${step}`;
export const noteOn = (step: string): string => `Note on: ${step}`;
export const note = 'Note';

export const wrongFile = {
  'not-a-record': 'That file holds no ticks of this almanac.',
  newer: 'That file was saved by a newer edition. Reload this page first.',
  'other-club': 'That file is another club’s.',
};
const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? '' : 's'}`;
/** `saved` is the day of the file. `clashes` names what differs. */
export const fileAdds = (saved: string | undefined, ticks: number, notes: number, hives: number, clashes: readonly string[]): string => {
  const file = saved ? `The file that was saved on ${saved}` : 'The file';
  const added = [count(ticks, 'check mark'), count(notes, 'note'), count(hives, 'hive')].join(', ');
  return `${file} adds ${added}.${clashes.length > 0 ? ` Where both differ, yours stays: ${clashes.join('; ')}.` : ''} `;
};
export const use = 'Use it here';
export const notNow = 'Not now';
export const isHere = 'It is now on this device.';
export const unchanged = 'Nothing was changed.';
