/* A search form of any page: on first use, what the search page will ask for is fetched, so that the list is there when the form is sent. */
import { ENGINE, WASM, WORDS } from '../../../shared/words/search-files.ts';

export async function fetchAhead(): Promise<void> {
  const base = import.meta.env.BASE_URL;
  try {
    // The search page itself knows by which print of the edition its files are asked for.
    const print = /data-print="(\w+)"/.exec(await (await fetch(`${base}search/`)).text())![1];
    await Promise.all([`${ENGINE}?ts=${print}`, WASM, `${WORDS}?ts=${print}`].map((file) => fetch(base + file)));
  } catch {
    // Without a network the search page says so itself.
  }
}
