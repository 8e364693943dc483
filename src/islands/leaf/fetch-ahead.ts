/* Any search form: on first use what the search page will ask for is fetched, so that the list is there when the form is sent. */
const FILES = ['pagefind/pagefind.js?ts=', 'pagefind/wasm.en.pagefind', 'search-words.json?ts='];

export async function fetchAhead(): Promise<void> {
  const base = import.meta.env.BASE_URL;
  try {
    // The page itself knows by which print of the edition its files are asked for.
    const [, print] = /data-print="(\w+)"/.exec(await (await fetch(`${base}search/`)).text())!;
    for (const file of FILES) await fetch(base + file + (file.endsWith('=') ? print : ''));
  } catch {
    // Without a network the search page says so itself.
  }
}
