export const title = 'Sheets to fill in';
export const lead = 'Blank sheets, one sheet of paper each. What you write stays on the paper: this site stores none of it.';
export const print = 'Print the sheet';
/** Names of the second copy on one paper, for listeners. */
export const onceMore = (title: string): string => `${title}, once more`;
export const table = (title: string): string => `The table of the sheet: ${title}`;
export const tableOnceMore = (title: string): string => `The table of the sheet: ${title}, once more`;
export const preview = (lines: number): string => `A small preview. The printed sheet has ${lines} lines, high enough to write by hand.`;
export const previewOfTwo = (lines: number): string =>
  `A small preview. The printed sheet has ${lines} lines on each of two cards, high enough to write by hand.`;
export const seeAlso = 'See also';
export const seeAlsoThese = 'See also: {pages}.';
