/*
 * Drawing of a chart as plain shapes, for the build and for the browser alike. Horizontal positions are per cent of the width. Vertical
 * positions are in rem, so that text keeps its size at every width.
 */
export type Shape = {
  /** An `svg` is a place with shapes of its own, whose positions are in px from its point. */
  readonly tag: 'line' | 'rect' | 'circle' | 'text' | 'path' | 'svg';
  readonly at: Readonly<Record<string, string | number>>;
  readonly words?: string;
  readonly inside?: readonly Shape[];
};

export type Drawing = { readonly heightRem: number; readonly label: string; readonly shapes: readonly Shape[] };

const svg = 'http://www.w3.org/2000/svg';

/** Draws into an `svg` of the page. */
export function draw(place: SVGElement, { heightRem, label, shapes }: Drawing): void {
  place.setAttribute('height', `${heightRem}rem`);
  place.setAttribute('aria-label', label);
  place.replaceChildren(...shapes.map(elementOf));
}

function elementOf({ tag, at, words = '', inside = [] }: Shape): SVGElement {
  const shape = document.createElementNS(svg, tag);
  for (const [name, value] of Object.entries(at)) shape.setAttribute(name, String(value));
  shape.append(words, ...inside.map(elementOf));
  return shape;
}
