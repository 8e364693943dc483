/*
 * The words of the interface. A room keeps them in `text.en.ts`, or in `NAME.en.ts` beside the file that says them, and a Spanish build
 * takes `text.es.ts` in its place. The words of other English countries are the American ones in their own spelling.
 */
import { existsSync } from 'node:fs';
import type { AstroConfig } from 'astro';
import { tongueOf, type Language } from '../../shared/country/language.ts';
import { asWritten } from '../../shared/country/written.ts';

type Plugin = Extract<NonNullable<NonNullable<AstroConfig['vite']['plugins']>[number]>, { name: string }>;
type Node = { type: string; start: number; end: number; value?: unknown };

const WORDS = /\.en\.ts$/;

export const words = (language: Language): Plugin => ({
  name: 'words-of-the-interface',
  enforce: 'pre',
  config: () => ({ define: { __LANGUAGE__: JSON.stringify(language) } }),
  async resolveId(source, importer, options) {
    const tongue = tongueOf(language);
    if (tongue === 'en' || !WORDS.test(source)) return undefined;
    const found = await this.resolve(source, importer, { ...options, skipSelf: true });
    const other = found?.id.replace(WORDS, `.${tongue}.ts`);
    return other && existsSync(other) ? other : found;
  },
  transform: {
    order: 'post',
    handler(code, id) {
      return WORDS.test(id.replace(/\?.*$/, '')) && tongueOf(language) === 'en' && language !== 'en-US'
        ? { code: spelled(code, language, this.parse(code, { lang: 'ts' }) as unknown as Node), map: null }
        : undefined;
    },
  },
});

/** The module with the texts of its literals as the country writes them. Its names stay. */
function spelled(code: string, language: Language, tree: Node): string {
  let written = code;
  for (const { start, end } of literalsIn(tree).sort((a, b) => b.start - a.start))
    written = written.slice(0, start) + asWritten(written.slice(start, end), language) + written.slice(end);
  return written;
}

function literalsIn(node: Node): Node[] {
  if (node.type === 'ImportDeclaration') return [];
  if (node.type === 'TemplateElement') return [node];
  // Without its quotes, so that a rule about the first word finds it.
  if (node.type === 'Literal' && typeof node.value === 'string') return [{ ...node, start: node.start + 1, end: node.end - 1 }];
  return Object.entries(node).flatMap(([name, part]: [string, unknown]) =>
    (Array.isArray(part) ? part : [part])
      .filter((each): each is Node => typeof each === 'object' && each !== null && 'type' in each)
      .filter(() => !(node.type === 'Property' && name === 'key'))
      .flatMap(literalsIn),
  );
}
