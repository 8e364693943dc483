/*
 * A picture of a page: a figure of its own, with its width and height, so that nothing moves when it comes; where it
 * does not come, its description stands in the frame. The words around it in one paragraph become paragraphs.
 */
import type { Element, ElementContent } from 'hast';
import { h } from 'hastscript';
import type { State } from 'mdast-util-to-hast';
import type { Image, Paragraph, PhrasingContent } from 'mdast';
import type { Surroundings } from './tags.ts';

/** The published sizes below `pictures/`, widest first. */
export type PictureFiles = { files: readonly { name: string; width: number; height: number }[] };

/** How wide a picture is shown: the text block of a desk, or of a phone; one that is higher than wide is narrower. */
const WIDE = '(min-width: 900px) 696px, calc(100vw - 48px)';
const TALL = '(min-width: 480px) 400px, calc(100vw - 48px)';

/** Null where it is not shown. `early`: it may stand on the first screen. */
export function picture(image: Image, around: Surroundings, early: boolean): Element | null {
  const files = around.picture(image.url)?.files ?? [];
  const [widest, ...others] = files;
  if (!widest) return null;
  const address = (name: string): string => `${around.base}pictures/${name}`;
  const tall = widest.height > widest.width;
  return h('figure', { class: tall ? 'picture tall' : 'picture' }, [
    h('img', {
      src: address(widest.name),
      ...(others.length > 0
        ? {
            srcset: [...files]
              .reverse()
              .map(({ name, width }) => `${address(name)} ${width}w`)
              .join(', '),
            sizes: tall ? TALL : WIDE,
          }
        : {}),
      width: widest.width,
      height: widest.height,
      alt: image.alt ?? '',
      ...(early ? {} : { loading: 'lazy' }),
      decoding: 'async',
    }),
    image.title ? h('figcaption', image.title) : '',
  ]);
}

/** A paragraph with pictures: each picture a figure, and what stands before and behind it paragraphs of their own. */
export function parted(
  state: State,
  node: Paragraph,
  draw: (image: Image) => Element | null,
  words: (content: ElementContent[]) => Element,
): Element[] {
  const parts: (Element | PhrasingContent[])[] = [[]];
  for (const child of node.children) {
    const drawn = child.type === 'image' ? draw(child) : null;
    if (drawn) parts.push(drawn, []);
    else if (child.type !== 'image') (parts.at(-1) as PhrasingContent[]).push(child);
  }
  return parts.flatMap((part) => (Array.isArray(part) ? wordsOf(state, node, part).map(words) : [part]));
}

/** Nothing where only ends of lines are left. */
function wordsOf(state: State, node: Paragraph, children: PhrasingContent[]): ElementContent[][] {
  const isSpace = (child: PhrasingContent | undefined): boolean =>
    child !== undefined && (child.type === 'break' || (child.type === 'text' && child.value.trim() === ''));
  const left = [...children];
  while (isSpace(left[0])) left.shift();
  while (isSpace(left.at(-1))) left.pop();
  const trimmed = left.map((child, index) =>
    child.type !== 'text' ? child : { ...child, value: ends(child.value, index === 0, index === left.length - 1) },
  );
  return trimmed.length === 0 ? [] : [state.all({ ...node, children: trimmed })];
}

const ends = (text: string, first: boolean, last: boolean): string =>
  last ? (first ? text.trim() : text.trimEnd()) : first ? text.trimStart() : text;
