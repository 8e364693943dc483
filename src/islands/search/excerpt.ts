/* A piece of a page with the sought words marked, as plain text: nothing in it can become a tag. */

export type Piece = { text: string; marked: boolean };

/** The engine marks words with `<mark>` and writes the page's own < and > as entities, and nothing else. */
export const piecesOf = (excerpt: string): Piece[] =>
  excerpt.split(/<\/?mark>/).map((text, at) => ({ text: text.replaceAll('&lt;', '<').replaceAll('&gt;', '>'), marked: at % 2 > 0 }));
