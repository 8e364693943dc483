/* A search form of any page: on first use the largest file of the search is fetched, so that the list comes sooner when the form is sent. */
import { WASM } from '../../../shared/words/search-files.ts';

/** Without a network the search page says so itself. */
export const fetchAhead = (): Promise<unknown> => fetch(import.meta.env.BASE_URL + WASM).catch(() => undefined);
