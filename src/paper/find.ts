/* Finds elements and words in a tree. */
import type { Element, ElementContent, Root } from 'hast';
import { visit } from 'unist-util-visit';

/** Whether an element has a class. */
export const isOf = (node: Element, name: string): boolean =>
  Array.isArray(node.properties.className) && node.properties.className.includes(name);

/** Every matching element in document order. Walks of our own, because the library's visitor took a third of the book's time. */
export function all(tree: Root | Element | undefined, passes: (node: Element) => boolean): Element[] {
  const found: Element[] = [];
  const look = (node: Root | ElementContent): void => {
    if (node.type === 'element' && passes(node)) found.push(node);
    if ('children' in node) for (const child of node.children) look(child as ElementContent);
  };
  if (tree) look(tree);
  return found;
}

export function first(node: Root | ElementContent, passes: (node: Element) => boolean): Element | undefined {
  if (node.type === 'element' && passes(node)) return node;
  if (!('children' in node)) return undefined;
  for (const child of node.children) {
    const found = first(child as ElementContent, passes);
    if (found) return found;
  }
  return undefined;
}

/** The words of nodes, with single spaces. */
export function wordsOf(nodes: readonly ElementContent[]): string {
  let words = '';
  visit({ type: 'root', children: [...nodes] } as Root, 'text', (node) => void (words += node.value));
  return words.replace(/\s+/g, ' ').trim();
}
