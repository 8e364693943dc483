/* The book's words in the club's language. */
import { spoken } from '../../../shared/country/language-here.ts';
import * as en from './text.en.ts';
import * as es from './text.es.ts';

export const text = (): typeof en => spoken<typeof en>({ en, es });
