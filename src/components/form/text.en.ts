export const today = 'Today';
/** The button of the browser's own calendar. `label` is that of the box. */
export const inACalendar = (label: string): string => `${label}: choose in a calendar`;

export const counted = 'What was counted';
export const firstColony = 'Colony 1';
export const colony = 'Colony';
export const mites = 'Mites';
export const bees = 'Bees';
export const removeFirst = 'Remove colony 1';
export const addColony = 'Add a colony';
export const pasteList = 'Paste a list';
export const fromSpreadsheet = 'From a spreadsheet: colony, mites, bees';
export const listHint = 'One line per colony, such as A 12 300. Separate the columns with a tab, comma or space. Names are optional.';
