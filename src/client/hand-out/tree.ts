/*
 * Elements of a page as a tree of plain objects (hast), and back. The page's policy lets no script parse markup, so a hand-out is made of
 * elements, one by one.
 */
import type { Element, ElementContent, Properties, Root } from 'hast';

const SVG = 'http://www.w3.org/2000/svg';
const HTML = 'http://www.w3.org/1999/xhtml';

/** Names that hast writes with a capital, besides those of `aria-` and `data-`. */
const CAPITALS: Readonly<Record<string, string>> = {
  'aria-labelledby': 'ariaLabelledBy',
  class: 'className',
  colspan: 'colSpan',
  rowspan: 'rowSpan',
};
const SMALL = Object.fromEntries(Object.entries(CAPITALS).map(([written, name]) => [name, written]));

const nameOf = (written: string): string =>
  CAPITALS[written] ??
  (/^(aria|data)-/.test(written) ? written.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase()) : written);
const writtenAs = (name: string): string =>
  SMALL[name] ?? (/^(aria|data)[A-Z]/.test(name) ? name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`) : name);

/** Styles and handlers in attributes stay behind: the policy of the page allows neither. */
const isKept = ({ name }: Attr): boolean => name !== 'style' && !name.startsWith('on');

export function toTree(element: globalThis.Element): Element {
  const properties: Properties = {};
  for (const attribute of [...element.attributes].filter(isKept))
    properties[nameOf(attribute.name)] = attribute.name === 'class' ? attribute.value.split(/\s+/).filter(Boolean) : attribute.value;
  const children = [...element.childNodes].flatMap((node): ElementContent[] => {
    if (node.nodeType === Node.TEXT_NODE) return [{ type: 'text', value: node.nodeValue! }];
    return node.nodeType === Node.ELEMENT_NODE ? [toTree(node as globalThis.Element)] : [];
  });
  return { type: 'element', tagName: element.localName, properties, children };
}

export function toNodes(tree: Root | Element, isDrawing = false): Node[] {
  return tree.children.flatMap((node): Node[] => {
    if (node.type === 'text') return [document.createTextNode(node.value)];
    return node.type === 'element' ? [elementOf(node, isDrawing || node.tagName === 'svg')] : [];
  });
}

function elementOf(node: Element, isDrawing: boolean): globalThis.Element {
  const element = document.createElementNS(isDrawing ? SVG : HTML, node.tagName);
  for (const [name, value] of Object.entries(node.properties))
    if (value !== null && value !== undefined && value !== false)
      element.setAttribute(writtenAs(name), value === true ? '' : Array.isArray(value) ? value.join(' ') : String(value));
  element.append(...toNodes(node, isDrawing));
  return element;
}
