/* Words of a page as Astro's MDX processor has them just before they become code: elements, and the tags that components draw. */
import { unified } from '@astrojs/markdown-remark';
import type { Root } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { markdownOptions } from '../../../src/components/mdx/markdown-options.ts';
import type { WordsAhead } from '../../../src/lib/render-context.ts';
import { isTag } from '../../../src/source/prose.ts';

export type Compiled = { tree: Root; ahead: WordsAhead; code: string };

export const compiled = (body: string): Promise<Compiled> => compiledModule(`a line that the reader puts there\n${body}`, 'nowhere.mdx');

/** The module at `address`, from the bundler's input for it. */
export async function compiledModule(given: string, address: string): Promise<Compiled> {
  let tree: Root | null = null;
  const capture = () => (seen: Root) => void (tree = structuredClone(seen));
  const processor = unified({ ...markdownOptions, rehypePlugins: [...markdownOptions.rehypePlugins, capture] });
  const renderer = await processor.createMdxRenderer!({ syntaxHighlight: false }, { optimize: false });
  const ahead = {} as WordsAhead;
  const { code } = await renderer.process(given, address, ahead);
  return { tree: tree!, ahead, code };
}

/** As HTML without line ends, each tag an element of its name in lower case. */
export const shownAsHtml = ({ tree }: Compiled): string => toHtml(asElements(tree)).replaceAll('\n', '');

function asElements<Node>(node: Node): Node {
  const { children } = node as { children?: unknown[] };
  const below = children ? { children: children.map(asElements) } : {};
  if (!isTag(node)) return { ...node, ...below };
  const properties = Object.fromEntries(node.attributes.map(({ name, value }) => [name, value]));
  return { type: 'element', tagName: node.name.toLowerCase(), properties, ...below } as Node;
}
