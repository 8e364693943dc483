/* Prefetches the largest file of the search when a search form is first used, so that the results come sooner. */
import { languageHere } from '../../../shared/country/language-here.ts';
import { tongueOf } from '../../../shared/country/language.ts';
import { wasmOf } from '../../../shared/words/search-files.ts';

/** Without a network the search page itself reports the problem. */
export const fetchAhead = (): Promise<unknown> => fetch(import.meta.env.BASE_URL + wasmOf(tongueOf(languageHere()))).catch(() => undefined);
