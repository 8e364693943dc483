/** The book's own words, beside those of its pages. */
export const edition = (name: string): string => `edition of ${name}`;
export const part = (number: number): string => `Part ${number}`;
export const contents: string = 'Contents';
export const sources: string = 'Sources';
export const landmarks: { title: string; firstPart: string } = { title: 'Title', firstPart: 'First part' };
export const parts: string = 'Parts of the book';
export const emergency: string = 'Emergency';
/** Before the first and before each further number of the emergency line. */
export const emergencyFirst: string = 'Emergency: ';

export const front = {
  book: (edition: string): string => `The book, ${edition}`,
  demonstration: 'A demonstration: this club does not exist.',
  madeUp: 'Its county, its dates and its offices’ numbers are made up.',
  whoDecides: 'The label, the inspector, the extension service and your doctor decide; this book does not.',
  days: (district: string): string => `Days are those of ${district}.`,
  daysElsewhere: (district: string): string => `Days are those of ${district}; where they differ elsewhere, those days follow in brackets.`,
  marks: 'Raised numbers lead to the sources at the end. A notice holds for its days only.',
  onlyLive: 'Forms that reckon with your own numbers, and the search, are on the club’s pages alone.',
  /** With `{address}` for the address, where the site has one. */
  newerAt: (edition: string): string =>
    `This copy does not change. What was found wrong after the edition of ${edition} is not in it: look for a newer one at {address}.`,
  newer: (edition: string): string =>
    `This copy does not change. What was found wrong after the edition of ${edition} is not in it: ask the club for a newer one.`,
};

/** Marks of sources in the text. */
export const source = (number: number): string => `Source ${number}`;
export const sourceInRow = (number: number, rest: string): string => `. Source ${number}. ${rest} `;
export const asSource = (number: number, rest: string): string => `As ${number}. ${rest}`;
export const noAddress = (words: string): string => `${words} (no open address found)`;
export const opened = (day: string): string => ` (opened ${day})`;
export const numbers: string = 'numbers ';

/** A drawing that is on an earlier page. `{page}` is a link. */
export const drawnUnder: string = 'Drawn under {page}.';
/** The start of a table's name for listeners, which the name of the chapter replaces. */
export const table = /^Table: /;
/** The line of a review that the front matter already has. */
export const publishedBy = /^Published by/;

/** For style sheets: the number of a printed sheet. */
export const sheetOf: string = 'counter(page) " of " counter(pages)';
