/** The usual title: that of a meeting has its name. */
export const title = (meeting?: string): string => (meeting ? `Hand-out: ${meeting}` : 'Hand-out');
export const loading = 'Loading …';
/** The name of a button for listeners. */
export const button = (does: string, page: string): string => `${does}: ${page}`;
export const moved = (page: string): string => `${page} has another address now.`;
export const removed = (page: string): string => `Removed: ${page}.`;
export const loadingPages = 'Loading the pages …';
export const lacking = (pages: number, all: number): string => `${pages} of ${all} pages could not be loaded. The first sheet names them.`;
export const makingFile = 'Making the file …';
export const noFile = 'No page could be loaded, so there is no file. The list above says what to do.';
export const fileName = 'hand-out';
/** `without` of `all` pages are not in it. */
export const fileSaved = (without: number, all: number): string =>
  without === 0
    ? 'The file is saved. Open it on a phone or an e-reader.'
    : `The file is saved without ${without} of ${all} pages. The list above says why.`;
export const copied = 'The link is copied. It opens this choice on any device.';
export const copyThis = (link: string): string => `Copy this link: ${link}`;
export const isNumber = (page: string, at: number, all: number): string => `${page} is now number ${at} of ${all}.`;
export const found = (pages: number): string => (pages === 1 ? '1 page' : `${pages} pages`);
export const dueNow = 'Due now';
export const past = (words: string): string => `Past: ${words}`;
export const leftOut = (addresses: readonly string[]): string =>
  `No page has the address ${addresses.join(', ')}, so it is left out. Choose it from the lists below.`;
