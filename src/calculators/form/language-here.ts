/* The language of the page, which says how its country writes and reads dates. */
import type { Language } from '../../../shared/country/language.ts';

export const languageHere = (): Language => document.documentElement.lang as Language;
