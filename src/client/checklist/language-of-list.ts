/* The language of the steps of this list. It is the club's, or Spanish on a Spanish page of an English club. */
import type { Language } from '../../../shared/country/language.ts';
import { languageHere, type WordsLike } from '../../../shared/country/language-here.ts';
import { list } from './checklist.ts';

const held = list.querySelector('.step')?.closest<HTMLElement>('[lang]')?.lang;

export const languageOfList: Language = held === 'es' ? held : languageHere();

/** What stands between the steps is in their language. */
export const wordsOfList = <Module>(ofClub: Module, es: WordsLike<Module>): WordsLike<Module> =>
  languageOfList === 'es' ? es : (ofClub as WordsLike<Module>);
