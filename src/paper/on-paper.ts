/*
 * Printable text of a drawn page. Controls, hidden parts and script output are removed. A checkbox becomes an empty box, folded parts are
 * open, and the days of other districts follow those of the first.
 */
import type { Element, ElementContent, Parents, Root } from 'hast';
import { SKIP, visit } from 'unist-util-visit';
import { spoken } from '../../shared/country/language-here.ts';
import type { Language } from '../../shared/country/language.ts';
import { formatMonthDays, monthDayIn } from '../../shared/days/year-span.ts';
import { all, isOf, wordsOf } from './find.ts';
import * as en from './text.en.ts';
import * as es from './text.es.ts';

export type Districts = {
  /** By id, as in "the hill". */
  names: ReadonlyMap<string, string>;
  /** Of the club: how its country writes days. */
  language: Language;
};

/** The title and all that follows, with every `id`. It changes the page's own tree. Data tags for programs are removed. */
export function onPaper(main: Element | undefined, districts: Districts): Root {
  const tree: Root = { type: 'root', children: main?.children ?? [] };
  visit(tree, (node, index, parent) => {
    if (index === undefined || !parent) return undefined;
    if (node.type === 'comment' || node.type === 'doctype') return replace(parent, index, []);
    if (node.type === 'text') node.value = node.value.replace(/\s+/g, ' ');
    if (node.type !== 'element') return undefined;
    if (isGone(node)) return replace(parent, index, []);
    const windows = node.properties.dataWindows;
    if (typeof windows === 'string') return replace(parent, index, [...node.children, ...elsewhere(windows, districts)]);
    // A book to send by mail has no photographs, so the description of each replaces it.
    if (node.tagName === 'img')
      return replace(
        parent,
        index,
        node.properties.alt ? [{ type: 'text', value: spoken<typeof en>({ en, es }).photograph(String(node.properties.alt)) }] : [],
      );
    if (node.tagName === 'span' && isOf(node, 'call-row')) apart(node);
    // A fold's own heading is a heading of the text.
    const heading = node.tagName === 'summary' && node.children.find((child) => child.type === 'element' && /^h\d$/.test(child.tagName));
    if (heading) return replace(parent, index, [heading]);
    if (isWrapping(node)) return replace(parent, index, node.children);
    turn(node);
    return undefined;
  });
  leadFromLines(tree);
  dropEmpty(tree);
  return tree;
}

const UNPRINTED = [
  'script',
  'source',
  'noscript',
  'style',
  'template',
  'meta',
  'link',
  'nav',
  'button',
  'input',
  'select',
  'textarea',
  'progress',
  'output',
];

function isGone(node: Element): boolean {
  const { tagName, properties } = node;
  if (properties.hidden !== undefined) return true;
  // A checkbox stays and becomes an empty box.
  if (UNPRINTED.includes(tagName)) return properties.type !== 'checkbox';
  if (tagName === 'form') return isOf(node, 'asks');
  if (isOf(node, 'asked')) return true;
  // A sign beside the words of a link or a button.
  if (tagName === 'svg') return isOf(node, 'icon');
  // The pointer of the ring is set when a page is read.
  if (tagName === 'g') return isOf(node, 'other') || properties.dataHand !== undefined;
  if (isOf(node, 'mini-ring')) return true;
  // The year page has the complete ring.
  if (isOf(node, 'ring-place')) return all(node, (each) => isOf(each, 'linked') || isOf(each, 'curve')).length === 0;
  if (tagName === 'a') return isOf(node, 'button') && properties.href?.toString().startsWith('#') === true;
  if (isOf(node, 'press') || isOf(node, 'actions') || isOf(node, 'result') || isOf(node, 'no-notice')) return true;
  // The book contains sources and cautions anyway. A single sheet repeats them.
  if (isOf(node, 'print-only')) return isOf(node, 'in-line') || isOf(node, 'listed');
  return isOf(node, 'no-print') && properties.dataInBook === undefined;
}

/** Elements without meaning on paper, such as a calculator's custom element and an empty form. */
function isWrapping({ tagName, properties }: Element): boolean {
  if (['data', 'time', 'label', 'form', 'picture'].includes(tagName) || tagName.includes('-')) return true;
  return tagName === 'span' && !/step-words|when|status|tick|phase-name/.test(String(properties.className ?? ''));
}

function turn(node: Element): void {
  const { tagName } = node;
  if (tagName === 'input')
    Object.assign(node, { tagName: 'span', properties: { className: ['tick'] }, children: [{ type: 'text', value: '☐' }] });
  if (['details', 'aside', 'article'].includes(tagName)) node.tagName = 'div';
  if (tagName === 'summary') Object.assign(node, { tagName: 'p', properties: { className: ['unfolded'] } });
  if (tagName === 'svg') named(node);
  // A book does not know on which day it is read, so it contains no number with a consent that ends.
  for (const name of ['dataReach', 'dataReachTo', 'dataReachWords']) delete node.properties[name];
}

/** Who to call, within the text: the name, the hours and the number are one line, so each is set off by a comma. */
function apart(row: Element): void {
  for (const part of all(row, ({ tagName }) => tagName === 'span'))
    part.children = part.children.flatMap((child) =>
      child.type === 'element' && ['small', 'a'].includes(child.tagName) ? [{ type: 'text' as const, value: ', ' }, child] : [child],
    );
}

/** A picture has its name as a label, so that no `id` is needed. */
function named(svg: Element): void {
  if (svg.properties.ariaHidden === 'true') return;
  svg.properties.role = 'img';
  for (const part of all(svg, ({ tagName }) => tagName === 'svg')) if (part !== svg) part.properties.ariaHidden = 'true';
  delete svg.properties.ariaLabelledBy;
  for (const child of svg.children) if (child.type === 'element' && child.tagName === 'title') delete child.properties.id;
  visit(svg, 'element', (node, index, parent) =>
    node.tagName === 'a' && parent && index !== undefined ? replace(parent, index, node.children) : undefined,
  );
}

/** The days in `valley 05-03 05-17;hill 05-12 05-26` that differ from the first. */
function elsewhere(windows: string, { names, language }: Districts): ElementContent[] {
  const [first, ...others] = windows.split(';').map((each) => each.split(' ') as [id: string, from: string, to: string]);
  const differing = others.filter(([, from, to]) => from !== first![1] || to !== first![2]);
  return differing.map(([id, from, to]) => ({
    type: 'text',
    value: ` (${names.get(id) ?? id}: ${formatMonthDays(monthDayIn(from), monthDayIn(to), language)})`,
  }));
}

/** A line that ends in a "more" link becomes that link, so that nothing is read twice. */
function leadFromLines(tree: Root): void {
  for (const word of all(tree, (node) => isOf(node, 'word'))) {
    const [name] = all(word, ({ tagName }) => tagName === 'b');
    const [meaning] = all(word, ({ tagName }) => tagName === 'dd');
    const more = meaning?.children.findLast((child): child is Element => child.type === 'element');
    if (!name || !meaning || more?.tagName !== 'a') continue;
    meaning.children = meaning.children.filter((child) => child !== more);
    name.children = [{ ...more, children: name.children }];
  }
  for (const line of all(tree, (node) => isOf(node, 'box')).flatMap((box) => all(box, ({ tagName }) => tagName === 'li'))) {
    const more = line.children.find(
      (child): child is Element => child.type === 'element' && child.tagName === 'a' && isOf(child, 'no-print'),
    );
    if (more && line.children.every((child) => child === more || child.type === 'text'))
      line.children = [{ ...more, children: [{ type: 'text', value: wordsOf(line.children.filter((child) => child !== more)) }] }];
  }
}

const KEPT_EMPTY = new Set(['br', 'td', 'th', 'hr', 'path', 'line', 'rect', 'circle', 'use']);

/** Removes empty elements, names of values that are gone, and then their empty parents. */
export function dropEmpty(tree: Root): void {
  let found = false;
  visit(tree, 'element', (node, index, parent) => {
    if (node.tagName === 'dl' || node.tagName === 'div') found = dropUnanswered(node) || found;
    if (index === undefined || !parent || KEPT_EMPTY.has(node.tagName)) return undefined;
    if (node.children.some((child) => child.type === 'element' || (child.type === 'text' && child.value.trim() !== ''))) return undefined;
    found = true;
    return replace(parent, index, []);
  });
  if (found) dropEmpty(tree);
}

/** Removes each name of a list, or of a group in it, that has no value behind it, as in the results of a form. Answers whether there was one. */
function dropUnanswered(list: Element): boolean {
  const parts = list.children.filter((child): child is Element => child.type === 'element');
  const answered = parts.filter(({ tagName }, at) => tagName !== 'dt' || (parts[at + 1] !== undefined && parts[at + 1]!.tagName !== 'dt'));
  if (answered.length === parts.length) return false;
  list.children = answered;
  return true;
}

function replace(parent: Parents, index: number, others: readonly ElementContent[]): [typeof SKIP, number] {
  (parent.children as ElementContent[]).splice(index, 1, ...others);
  return [SKIP, index];
}
