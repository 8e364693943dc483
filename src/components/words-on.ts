/* The words of a component in the language of its page, where that is another than the club's and we have it. */
import type { Language } from '../../shared/country/language.ts';
import type { WordsLike } from '../../shared/country/language-here.ts';
import type { RenderContext } from '../lib/render-context.ts';

/** `lang`: their language, where it is not that of the page. */
export const wordsOn = <Module>(
  page: RenderContext | undefined,
  ofClub: Module,
  es: WordsLike<Module>,
): { text: WordsLike<Module>; lang: Language | undefined } =>
  page?.tongue === 'es' ? { text: es, lang: undefined } : { text: ofClub as WordsLike<Module>, lang: page?.frame };
