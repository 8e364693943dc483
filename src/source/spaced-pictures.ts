/*
 * Remark plug-in for pictures whose file name contains spaces, as phones and scanners name them: `![A hive](My hive (1).jpg)`. Markdown
 * accepts no such address and leaves the line as text. The plug-in makes an image of it.
 */
import type { Image, Nodes, Parent, PhrasingContent, Root, Text } from 'mdast';
import type { Processor } from 'unified';

const PICTURE = /!\[([^[\]]*)\]\([ \t]*([^\s"()<>][^"\n<>]*?\.[A-Za-z]{3,4})(?:[ \t]+"([^"\n]*)")?[ \t]*\)/g;

export function remarkSpacedPictures(this: Processor): void {
  const data = this.data() as { fromMarkdownExtensions?: unknown[] };
  (data.fromMarkdownExtensions ??= []).push({ transforms: [(tree: Root) => inEach(tree)] });
}

function inEach(node: Nodes): void {
  if (!('children' in node)) return;
  const parent = node as Parent;
  parent.children = parent.children.flatMap((child): Parent['children'] => {
    if (child.type === 'text') return withPictures(child);
    inEach(child);
    return [child];
  });
}

function withPictures(node: Text): PhrasingContent[] {
  const parts: PhrasingContent[] = [];
  let from = 0;
  for (const match of node.value.matchAll(PICTURE)) {
    const to = match.index + match[0].length;
    const [, alt, url, title] = match;
    const image: Image = { type: 'image', alt: alt!, url: url!, title: title ?? null, position: placeOf(node, match.index, to) };
    if (match.index > from) parts.push(textOf(node, from, match.index));
    parts.push(image);
    from = to;
  }
  if (parts.length === 0) return [node];
  return from < node.value.length ? [...parts, textOf(node, from, node.value.length)] : parts;
}

const textOf = (node: Text, from: number, to: number): Text => ({
  type: 'text',
  value: node.value.slice(from, to),
  position: placeOf(node, from, to),
});

/** The position of a part of a text, or of the whole text where Markdown marks in it prevent a match. */
function placeOf({ value, position }: Text, from: number, to: number): Text['position'] {
  const offset = position?.start.offset;
  if (!position || offset === undefined || position.end.offset !== offset + value.length) return position;
  const pointAt = (index: number) => {
    const lines = value.slice(0, index).split('\n');
    const column = lines.length === 1 ? position.start.column + index : lines.at(-1)!.length + 1;
    return { line: position.start.line + lines.length - 1, column, offset: offset + index };
  };
  return { start: pointAt(from), end: pointAt(to) };
}
