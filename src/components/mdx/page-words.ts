/* Words that the plug-ins add to a page. They run without Vite, so they choose the language themselves. */
import { spoken } from '../../../shared/country/language-here.ts';
import { words as en } from './page-words.en.ts';
import { words as es } from './page-words.es.ts';

export const pageWords = (): typeof en => spoken({ en, es });
