/* The words of these tags in the language of their page, where it is another than the club's and we have it. */
import type { Language } from '../../../shared/country/language.ts';
import type { RenderContext } from '../../lib/render-context.ts';
import * as ofClub from './text.en.ts';
import * as es from './text.es.ts';

type Words = { [Name in keyof typeof ofClub]: (typeof ofClub)[Name] extends string ? string : (typeof ofClub)[Name] };

/** `lang`: their language, where it is not that of the page. */
export const wordsOn = ({ tongue, frame }: RenderContext): { text: Words; lang: Language | undefined } =>
  tongue === 'es' ? { text: es, lang: undefined } : { text: ofClub, lang: frame };
