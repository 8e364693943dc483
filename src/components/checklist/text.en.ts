/** At the end of a list. `title` is that of the list that follows. */
export const done = 'Done';
export const next = 'Next: {title}';
export const start = 'Start';
export const allDone = 'All steps are checked off.';

/** Above the steps. */
export const thisChecklist = 'This checklist';
export const forHive = 'For';
export const firstHive = 'Hive 1';
export const addHive = 'Add a hive';

/** The reader's own day. */
export const suchDay = (day: string): string => `Such as ${day}. Each step then has a date.`;
export const queen = { asks: 'The queen', candy: 'in her cage', released: 'let out at once' };
export const comb = { asks: 'The frames', drawn: 'drawn comb', foundation: 'foundation only' };

export const setAside = 'Remove unreadable data';

export const share = {
  share: 'Share',
  print: 'Print',
  /** The word that is shown is marked; listeners hear all of it. */
  calendar: { before: 'Add to ', shown: 'Calendar' },
  panel: 'Share this checklist',
  travels: 'Your check marks and dates travel in the link. Nothing is stored online.',
  extras: 'Send the hive’s name and my notes too',
  send: 'Send',
  copy: 'Copy link',
  code: 'Show QR code',
};

export const tools = {
  more: 'More for this hive',
  notes: 'Write notes',
  rename: 'Rename this hive',
  startOver: 'Start over',
  file: 'Save to history',
  screen: 'Keep the screen on',
  yard: 'The yard’s address, to read out when help is called',
  yardHint: 'Road, number or gate, the nearest crossing. With two yards, write both, each with its name.',
  kept: 'Your ticks and the yard’s address stay in this browser, on this device. Some browsers clear them if you do not open the site for a week. Save them to a file.',
  files: 'Save to a file',
  saveAll: 'Save all checklists to a file',
  saveTable: 'Save this checklist as a table (CSV)',
  open: 'Open a saved file',
};
