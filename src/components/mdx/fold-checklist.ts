/*
 * Folds of a checklist, as a step of rehype-page. A part with steps gets its number and its count. In a part without steps every heading
 * of the third level becomes a case: a fold with what to do, and a link back to each step that names it. A part with neither is a fold too.
 */
import type { Element, ElementContent, Nodes, Root } from 'hast';
import { visit } from 'unist-util-visit';
import { attribute, isTag, type TagNode } from '../../source/prose.ts';
import type { PageWords } from './page-words.ts';

type Tag = Element & { name?: string; attributes?: { type: string; name: string; value: string }[] };

/** `address` is the path of the checklist, as its links write it. */
export function foldChecklist(tree: Root, address: string, words: PageWords): void {
  const parts = tree.children.filter((node): node is Tag & Root['children'][number] => isTag(node) && node.name === 'Part');
  const cases = new Map<string, Tag>();
  let number = 0;
  for (const part of parts as Tag[]) {
    const steps = part.children.flatMap((child) => (isSteps(child) ? child.children.filter(isStep) : [])).length;
    if (steps > 0) part.attributes!.push(given('number', (number += 1)), given('steps', steps));
    else part.children = casesOf(part.children, cases, words);
    const held = part.children.filter((child) => isTag(child) && child.name === 'Case').length;
    if (held > 0) part.attributes!.push(given('cases', held));
    if (steps + held === 0) part.name = 'Fold';
    (part.children[0] as Element).properties.slot = 'heading';
  }
  linkSteps(tree, (node) => asQuestion(node, address, cases, words), address, cases);
}

const given = (name: string, value: string | number) => ({ type: 'mdxJsxAttribute', name, value: String(value) });
const isSteps = (node: Nodes): node is Element =>
  node.type === 'element' && node.tagName === 'ul' && String(node.properties.className).includes('steps');
const isStep = (node: unknown): node is Tag => isTag(node) && node.name === 'Step';
const element = (tagName: string, className: string, children: ElementContent[]): Element => ({
  type: 'element',
  tagName,
  properties: { className: [className] },
  children,
});

/** The first numbered list of a case is what to do now. */
function casesOf(children: ElementContent[], cases: Map<string, Tag>, words: PageWords): ElementContent[] {
  const all: ElementContent[] = [];
  let open: Tag | undefined;
  for (const node of children) {
    if (node.type === 'element' && node.tagName === 'h3') {
      node.properties.slot = 'heading';
      open = { type: 'mdxJsxFlowElement', name: 'Case', attributes: [], children: [node] } as unknown as Tag;
      cases.set(String(node.properties.id), open);
      all.push(open);
    } else if (open) {
      const isFirst = !open.children.some((child) => child.type === 'element' && child.tagName === 'ol');
      if (node.type === 'element' && node.tagName === 'ol' && isFirst)
        open.children.push(element('p', 'case-now no-print', [{ type: 'text', value: words.doNow }]));
      open.children.push(node);
    } else all.push(node);
  }
  return all;
}

/** A line of links to cases becomes the step's question, and each case gets the number of the step. */
function linkSteps(tree: Root, asked: (node: ElementContent) => ElementContent, address: string, cases: Map<string, Tag>): void {
  let number = 0;
  const back = new Map<string, string[]>();
  visit(tree, (step) => {
    if (!isStep(step)) return;
    number += 1;
    const id = attribute(step as unknown as TagNode, 'id') ?? '';
    visit(step as Element, 'element', (link) => {
      const found = caseOf(link, address, cases);
      if (found && !back.get(found)?.includes(`${id} ${number}`)) back.set(found, [...(back.get(found) ?? []), `${id} ${number}`]);
    });
    step.children = step.children.map(asked);
  });
  for (const [id, steps] of back) cases.get(id)!.attributes!.push(given('back', steps.join(';')));
}

function caseOf(link: Nodes, address: string, cases: Map<string, Tag>): string | undefined {
  const href = link.type === 'element' && link.tagName === 'a' ? String(link.properties.href) : '';
  const id = href.startsWith(`${address}#`) ? href.slice(address.length + 1) : href.startsWith('#') ? href.slice(1) : '';
  return cases.has(id) ? id : undefined;
}

function asQuestion(node: ElementContent, address: string, cases: Map<string, Tag>, words: PageWords): ElementContent {
  if (node.type !== 'element' || node.tagName !== 'p') return node;
  const links = node.children.filter((child): child is Element => caseOf(child, address, cases) !== undefined);
  const others = node.children.filter((child) => !(links as ElementContent[]).includes(child));
  if (links.length === 0 || others.some((child) => child.type !== 'text' || /\p{L}/u.test(child.value))) return node;
  for (const link of links) delete link.properties.className;
  const asks = element('span', 'if-wrong-asks', [{ type: 'text', value: words.somethingWrong }]);
  asks.properties.dataUnfound = '';
  return element('p', 'if-wrong', [asks, ...links.flatMap((link): ElementContent[] => [{ type: 'text', value: ' ' }, link])]);
}
