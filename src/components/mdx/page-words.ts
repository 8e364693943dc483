/* Words that the plug-ins add to a page. They run without Vite, so they choose the language themselves. */
import { spoken } from '../../../shared/country/language-here.ts';
import type { Tongue } from '../../../shared/country/language.ts';
import { words as en } from './page-words.en.ts';
import { words as es } from './page-words.es.ts';

export type PageWords = typeof en;

/** A page for readers of another language than the club's has that language before its collection: `es/articles/swarms.mdx`. */
export function pageWords(path = ''): PageWords {
  const [, tongue] = /[\\/](en|es)[\\/][^\\/]+[\\/][^\\/]+$/.exec(path) ?? [];
  return tongue ? { en, es }[tongue as Tongue] : spoken({ en, es });
}
