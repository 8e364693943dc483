/* Finds elements and words in a tree. */
import type { Element, ElementContent, Root } from 'hast';
import { EXIT, visit } from 'unist-util-visit';

/** Whether an element has a class. */
export const isOf = (node: Element, name: string): boolean =>
  Array.isArray(node.properties.className) && node.properties.className.includes(name);

/** Every matching element in document order. A walk of our own, because the library's visitor took a third of the book's time. */
export function all(tree: Root | Element | undefined, passes: (node: Element) => boolean): Element[] {
  const found: Element[] = [];
  const look = (node: Root | ElementContent): void => {
    if (node.type === 'element' && passes(node)) found.push(node);
    if ('children' in node) for (const child of node.children) look(child as ElementContent);
  };
  if (tree) look(tree);
  return found;
}

export function first(tree: Root | Element, passes: (node: Element) => boolean): Element | undefined {
  let found: Element | undefined;
  visit(tree, 'element', (node) => {
    if (!passes(node)) return undefined;
    found = node;
    return EXIT;
  });
  return found;
}

/** The words of nodes, with single spaces. */
export function wordsOf(nodes: readonly ElementContent[]): string {
  let words = '';
  visit({ type: 'root', children: [...nodes] } as Root, 'text', (node) => void (words += node.value));
  return words.replace(/\s+/g, ' ').trim();
}
