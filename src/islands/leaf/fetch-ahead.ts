/* Any search form: on first use what the search page will ask for is fetched, so that the list is there when the form is sent. */
const FILES = ['pagefind/pagefind.js', 'pagefind/wasm.en.pagefind', 'search-words.json'];

export function fetchAhead(): void {
  // Without a network the search page says so itself.
  for (const file of FILES) fetch(import.meta.env.BASE_URL + file).catch(() => undefined);
}
