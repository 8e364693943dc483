/* The language of the steps of this list. It is the club's, or Spanish on a Spanish page of an English club: what stands between the steps is in it too. */
import type { Language } from '../../../shared/country/language.ts';
import { languageHere } from '../../../shared/country/language-here.ts';
import { list } from './checklist.ts';

export const isSpanishList = list.querySelector('.step')?.closest<HTMLElement>('[lang]')?.lang === 'es';

export const languageOfList: Language = isSpanishList ? 'es' : languageHere();
