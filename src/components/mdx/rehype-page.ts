/*
 * Rehype plug-in for a page's words. Each heading with its content becomes a part, and a table gets a scrollable frame. In a checklist
 * a part with steps is numbered, and what goes wrong becomes cases that are linked with their steps.
 */
import type { Element, ElementContent, Root, RootContent } from 'hast';
import { SKIP, visit } from 'unist-util-visit';
import type { VFile } from 'vfile';
import { isGraver } from '../../lib/hazards.ts';
import { isTag } from '../../source/prose.ts';
import { folded } from './folded.ts';
import { collectionOf } from './page-order.ts';
import { pageWords, type PageWords } from './page-words.ts';
import { foldChecklist } from './fold-checklist.ts';

export function rehypePage() {
  return (tree: Root, file: VFile): void => {
    const words = pageWords(file.path);
    visit(tree, 'element', (node, index, parent) => {
      if (node.tagName !== 'table' || index === undefined || !parent) return undefined;
      parent.children[index] = table(node, words);
      return [SKIP, index + 1];
    });
    const { work = [] } = (file.data.astro as { frontmatter: { work?: string[] } }).frontmatter;
    tree.children = folded(parts(tree.children), collectionOf(file.path), { hasBox: isGraver(work), words });
    if (collectionOf(file.path) === 'checklists') foldChecklist(tree, `/lists/${nameOf(file.path)}/`, words);
  };
}

/** Alignment as a class, because the content policy forbids inline styles, and a frame that a keyboard can scroll. */
function table(node: Element, words: PageWords): Element {
  const heads: string[] = [];
  visit(node, 'element', (cell) => {
    if (cell.tagName !== 'th' && cell.tagName !== 'td') return;
    if (cell.properties.align === 'right') cell.properties.className = ['number'];
    delete cell.properties.align;
    if (cell.tagName === 'td') return;
    for (const child of cell.children) if (child.type === 'text' && child.value) heads.push(child.value);
    // The empty corner above a column of names is no heading.
    if (cell.children.length === 0) cell.tagName = 'td';
    else cell.properties.scope = 'col';
  });
  node.properties.className = ['table'];
  return {
    type: 'element',
    tagName: 'div',
    properties: { className: ['scroll-x'], role: 'region', tabIndex: 0, ariaLabel: words.tableOf(heads) },
    children: [node],
  };
}

/** "package-arrival" of the file package-arrival.mdx. */
const nameOf = (path: string): string => path.replace(/^.*[/\\]|\.mdx?$/g, '');

export const tag = (name: string): Element => ({ type: 'mdxJsxFlowElement', name, attributes: [], children: [] }) as unknown as Element;

/** <Opening> contains what precedes the first heading, and each <Part> a heading with its content. */
function parts(content: RootContent[]): Element[] {
  let open = tag('Opening');
  const all = [open];
  for (const node of content) {
    if (isTag(node) && node.name === 'FieldTest') {
      all.push(node as unknown as Element);
      continue;
    }
    if (node.type === 'element' && node.tagName === 'h2') all.push((open = tag('Part')));
    open.children.push(node as ElementContent);
  }
  return all;
}
