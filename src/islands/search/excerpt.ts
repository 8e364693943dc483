/* A piece of a page with the sought words marked, as text nodes: nothing in it can become a tag. */

/** The engine marks words with `<mark>` and writes the page's own < and > as entities, and nothing else. */
export function piecesOf(excerpt: string): { text: string; marked: boolean }[] {
  return excerpt
    .split(/<\/?mark>/)
    .map((text, at) => ({ text: text.replaceAll('&lt;', '<').replaceAll('&gt;', '>'), marked: at % 2 === 1 }))
    .filter(({ text }) => text !== '');
}
