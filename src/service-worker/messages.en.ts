export const saving = (done: number, all: number): string => `Saving for offline use: ${done} of ${all} files.`;
/** `left` of the `pictures` are not saved. `edition` is its day and mark. */
export const saved = (pages: number, size: string, edition: string, left: number, pictures: number): string =>
  `Available offline: all ${pages} pages, search and calendars, ${size}, edition of ${edition}.${left > 0 ? ` ${left} of ${pictures} pictures are not saved; their words are.` : ''}`;
export const notSaved =
  'The offline copy is not complete. A file did not arrive as it should, or this device has no room. The next visit goes on from here.';
export const newEdition = (edition: string): string =>
  `A new edition, of ${edition}, is saved on this device. This page is of another one.`;
export const showIt = 'Show it';
const old = (days: number): string => ` It is more than ${days} days old: ask before you rely on a number.`;
/** `days` is given where the edition is older than that. */
export const isSaved = (edition: string, days?: number): string =>
  `No signal: this is the saved edition of ${edition}.${days ? old(days) : ''}`;
export const isAsSeen = (edition: string, days?: number): string =>
  `No signal: this page is as you last saw it, newer than the saved edition of ${edition}.${days ? old(days) : ''}`;
