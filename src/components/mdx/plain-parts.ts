/*
 * The words of a page as plain text, a heading at a time, for the open files. From the tree that the reader has parsed;
 * a line for each paragraph, item and row, the cells of a row with a bar between them.
 */
import type { Heading, Nodes, TableRow } from 'mdast';
import { inSentence } from '../../lib/contacts.ts';
import type { RenderContext } from '../../lib/render-context.ts';
import { attribute, isTag, type TagNode } from '../../source/prose.ts';
import { heldFolder } from '../../source/open-folder.ts';

export type PlainPart = { heading: string; words: string };

/** The words under each second-level heading of `path`, such as bulletins/varroa.mdx; those before the first under `title`. A heading without words is left out. */
export function plainParts(path: string, title: string, context: RenderContext): PlainPart[] {
  const tree = heldFolder()?.parsed.get(path)?.entry?.tree;
  const parts: { heading: string; nodes: Nodes[] }[] = [{ heading: title, nodes: [] }];
  for (const node of tree?.children ?? []) {
    if (isPartHeading(node)) parts.push({ heading: tidy(plain(node, context)), nodes: [] });
    else parts.at(-1)!.nodes.push(node);
  }
  return parts
    .map(({ heading, nodes }) => ({ heading, words: tidy(nodes.map((node) => plain(node, context)).join('\n')) }))
    .filter(({ words }) => words !== '');
}

const isPartHeading = (node: Nodes): node is Heading => node.type === 'heading' && node.depth === 2;

function plain(node: Nodes | TagNode, context: RenderContext): string {
  const below = (): string => ('children' in node ? (node.children as Nodes[]) : []).map((child) => plain(child, context)).join('');
  if (isTag(node)) return tagged(node, below, context);
  switch (node.type) {
    case 'paragraph':
    case 'heading':
    case 'code':
      return `${'value' in node ? node.value : below()}\n`;
    case 'listItem':
      return `\n- ${below()}`;
    case 'tableRow':
      return `${cells(node, context)}\n`;
    case 'image':
      return `\n${node.alt ?? ''}\n${node.title ?? ''}\n`;
    case 'break':
      return ' ';
    default:
      return 'value' in node ? node.value : below();
  }
}

const cells = (row: TableRow, context: RenderContext): string =>
  row.children
    .map((cell) => cell.children.map((child) => plain(child, context)).join(''))
    .join(' | ')
    .trim();

function tagged(tag: TagNode, below: () => string, { caution, contact, dayOf, drawing, figure }: RenderContext): string {
  const said = (name: string): string => attribute(tag, name) ?? '';
  switch (tag.name) {
    case 'Figure': {
      const shown = figure(said('id'), attribute(tag, 'row'));
      return shown ? shown.main + (shown.other && ` (${shown.other})`) : 'no figure for this club';
    }
    // Whom to ask is named by duty, without a number.
    case 'Contact':
      return inSentence(contact(said('duty'))?.name ?? said('duty'));
    case 'Caution': {
      const sentences = caution(said('id'))?.[said('part') === 'if-it-happens' ? 'if-it-happens' : 'says'] ?? [];
      return ['', ...sentences.map((sentence) => `- ${sentence}`), ''].join('\n');
    }
    case 'Day':
      return dayOf(said('of'))?.words ?? 'no date for this club';
    case 'Drawing': {
      const shown = drawing(said('name'));
      return shown ? ['', `${shown.title}. ${shown.words}`, ...shown.parts.map((part) => `- ${part}`), ''].join('\n') : '';
    }
    default:
      return below() || 'Work it out';
  }
}

const tidy = (text: string): string =>
  text
    .replace(/[ \t\u00a0]+/g, ' ')
    .replace(/ *\n\s*/g, '\n')
    .trim();
