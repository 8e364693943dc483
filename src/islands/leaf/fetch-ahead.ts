/* Any search form: on first use what the search page will ask for is fetched, so that the list is there when the form is sent. */
export async function fetchAhead(): Promise<void> {
  const base = import.meta.env.BASE_URL;
  try {
    // The search page itself knows by which print of the edition its files are asked for.
    const print =
      document.querySelector<HTMLElement>('[data-print]')?.dataset.print ??
      /data-print="(\w+)"/.exec(await (await fetch(`${base}search/`)).text())![1];
    await fetch(`${base}search/index.json?ts=${print}`);
  } catch {
    // Without a network the search page says so itself.
  }
}
