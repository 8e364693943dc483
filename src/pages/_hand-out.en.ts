export const title = 'Hand-out';
export const lead =
  'Choose pages for a class or a meeting. Print them as one set of sheets, or save them as one file for a phone or an e-reader.';
export const noScript =
  'Choosing pages needs script, and script is off in this browser. Every page also prints alone, with its cautions and its address.';
export const book = 'The book has all pages in one file';
export const almanac = (name: string, isDemo: boolean): string => `${name}${isDemo ? ' (demo)' : ''}`;
export const editionOf = (edition: string): string => `edition of ${edition}`;
export const yourPages = 'Your pages';
export const none = 'None yet. Choose them from the lists below. They stay in the address of this page, so you can send it as a link.';
export const setTitle = 'Title';
export const apart = 'Start each page on a new sheet';
export const print = 'Print';
export const epub = 'Save as EPUB';
export const copy = 'Copy link';
export const choose = 'Choose pages';
export const filter = 'Filter by title';
export const goToYours = 'Go to your pages';
export const up = 'Move up';
export const down = 'Move down';
export const remove = 'Remove';
export const sheets = 'Sheets of the hand-out';
