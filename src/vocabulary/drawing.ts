/*
 * A drawing of the club: its lines, and below them the same in words, for those who do not see it. Black becomes the
 * page's ink and white its paper.
 */
import type { Element } from 'hast';
import { h, s } from 'hastscript';
import { readDrawing, type Shape } from '../reader/drawing.ts';

/** A drawing as the library hands it over; `lines` is its file of SVG. */
export type DrawingShown = { title: string; words: string; parts: readonly string[]; lines: string };

export function drawing(shown: DrawingShown | null): Element | undefined {
  const { root } = shown ? readDrawing(shown.lines) : { root: null };
  if (!shown || !root) return undefined;
  const lines = s('svg', { ...inInk(root.attributes), role: 'img' }, [s('title', shown.title), ...root.children.map(drawn)]);
  return h('figure', { class: 'drawing' }, [
    lines,
    h('figcaption', [
      h('p', [h('b', `${shown.title}.`), ` ${shown.words}`]),
      shown.parts.length > 0
        ? h(
            'ol',
            shown.parts.map((part) => h('li', part)),
          )
        : '',
    ]),
  ]);
}

const drawn = (shape: Shape | string): Element | string =>
  typeof shape === 'string' ? shape : s(shape.name, inInk(shape.attributes), shape.children.map(drawn));

function inInk({ fill, stroke, ...others }: Record<string, string>): Record<string, string | undefined> {
  const ink = (colour: string | undefined): string | undefined => (colour === 'black' ? 'currentcolor' : colour);
  return { ...others, ...(fill === 'white' ? { class: 'paper' } : { fill: ink(fill) }), stroke: ink(stroke) };
}
