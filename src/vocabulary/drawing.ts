/* A drawing of the club: its lines, and below them the same in words, for those who do not see it. */
import type { Element } from 'hast';
import { h, s } from 'hastscript';
import { readDrawing } from '../reader/drawing.ts';

/** A drawing as the library hands it over; `lines` is its file of SVG. */
export type DrawingShown = { title: string; words: string; parts: readonly string[]; lines: string };

export function drawing(shown: DrawingShown | null): Element | undefined {
  const { root } = shown ? readDrawing(shown.lines) : { root: null };
  if (!shown || !root) return undefined;
  const lines = s('svg', { ...root.properties, role: 'img' }, [s('title', shown.title), ...root.children]);
  return h('figure', { class: 'drawing' }, [
    lines,
    h('figcaption', [h('p', [h('b', `${shown.title}.`), ` ${shown.words}`]), shown.parts.length > 0 ? h('ol', shown.parts.map((part) => h('li', part))) : '']),
  ]);
}
