/* The words of a component in the language of its page, where that is another than the club's and we have it. */
import type { Language } from '../../shared/country/language.ts';
import type { RenderContext } from '../lib/render-context.ts';

type Words<Module> = { [Name in keyof Module]: Module[Name] extends string ? string : Module[Name] };

/** `lang`: their language, where it is not that of the page. */
export const wordsOn = <Module>(
  page: RenderContext | undefined,
  ofClub: Module,
  es: Words<Module>,
): { text: Words<Module>; lang: Language | undefined } =>
  page?.tongue === 'es' ? { text: es, lang: undefined } : { text: ofClub as Words<Module>, lang: page?.frame };
