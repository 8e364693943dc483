/*
 * Parser for drawings: a safe subset of SVG with a few plain shapes in black, white or none. Black becomes the page's text colour and
 * white its background, so that one file works in print, in dark mode and in forced colours. Everything else in an SVG file (script,
 * style, links, pictures) is a fault and is never drawn.
 */
import type { Correction } from '../../shared/result.ts';

export type DrawingFault = Correction & { line: number; column: number };

/** An element of the drawing. Its paint is `black`, `white` or `none`. */
export type Shape = { name: string; attributes: Record<string, string>; children: (Shape | string)[] };

/** `root` is the safe drawing, or null where anything is wrong. `numbers` are the words in the drawing. */
export type ReadDrawing = { root: Shape | null; width: number; numbers: string[]; faults: DrawingFault[] };

const LENGTH = /^-?(?:\d+\.?\d*|\.\d+)$/;
const LIST = /^[-+\d.,\s]+$/;
const COLOUR = /^(?:none|black|#000|#000000|currentcolor|white|#fff|#ffffff)$/i;
const SIZES = ['x', 'y', 'x1', 'y1', 'x2', 'y2', 'cx', 'cy', 'r', 'rx', 'ry', 'width', 'height', 'dx', 'dy', 'font-size', 'stroke-width'];

/** Allowed values of each attribute. Attributes that are not listed are refused. */
const MAY: Readonly<Record<string, RegExp>> = {
  ...Object.fromEntries(SIZES.map((name) => [name, LENGTH])),
  d: /^[MLHVCSQTAZmlhvcsqtaz\d.,\s+-]+$/,
  points: LIST,
  transform: /^(?:\s*(?:translate|rotate|scale|matrix|skewX|skewY)\([-\d.,\s]+\)\s*)+$/,
  fill: COLOUR,
  stroke: /^(?:none|black|#000|#000000|currentcolor)$/i,
  'stroke-linecap': /^(?:butt|round|square)$/,
  'stroke-linejoin': /^(?:miter|round|bevel)$/,
  'stroke-dasharray': LIST,
  'text-anchor': /^(?:start|middle|end)$/,
  'font-weight': /^(?:bold|normal|[1-9]00)$/,
};

const PAINT = ['fill', 'stroke', 'stroke-width', 'stroke-linecap', 'stroke-linejoin', 'stroke-dasharray', 'transform'];

/** Allowed attributes of each element, besides its paint. */
const ELEMENTS: Readonly<Record<string, readonly string[]>> = {
  svg: [],
  g: [],
  title: [],
  path: ['d'],
  line: ['x1', 'y1', 'x2', 'y2'],
  circle: ['cx', 'cy', 'r'],
  ellipse: ['cx', 'cy', 'rx', 'ry'],
  rect: ['x', 'y', 'width', 'height', 'rx', 'ry'],
  polyline: ['points'],
  polygon: ['points'],
  text: ['x', 'y', 'dx', 'dy', 'font-size', 'font-weight', 'text-anchor'],
};
const HOLDS = new Set(['svg', 'g']);
const SHAPES = Object.keys(ELEMENTS)
  .filter((name) => name !== 'svg' && name !== 'title')
  .join(', ');

/** Suggestions for values that are refused. */
const HINTS: Readonly<Record<string, string>> = {
  ...Object.fromEntries(SIZES.map((name) => [name, 'a plain number'])),
  d: 'the letters of a path and numbers, such as M10 20h40',
  points: 'pairs of numbers',
  transform: 'translate(), rotate() or scale() with numbers',
  fill: 'black, white or none',
  stroke: 'black or none',
};

const START = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 342 200">';
const PIECE = /<!--[\s\S]*?-->|<\?[\s\S]*?\?>|<(\/?)([A-Za-z][\w:.-]*)((?:\s+[\w:.-]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?)>|[^<]+|</g;
const ATTRIBUTE = /([\w:.-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;

export function readDrawing(text: string): ReadDrawing {
  const read: ReadDrawing = { root: null, width: 0, numbers: [], faults: [] };
  const top: Shape[] = [];
  const open: { name: string; children: Shape['children']; at: number }[] = [];
  // The children of a refused element are not reported again.
  const isLost = (): boolean => open.some(({ name }) => !ELEMENTS[name]);
  const wrong = (at: number, found: string, write: string): void =>
    isLost() ? undefined : void read.faults.push({ ...place(text, at), found, write });
  if (!/<svg[\s>]/.test(text)) {
    wrong(0, 'no <svg> at its head', START);
    return read;
  }
  for (const match of text.matchAll(PIECE)) {
    const [typed, closes, name, attributes, closed] = match;
    const at = match.index;
    const parent = open.at(-1);
    if (typed.startsWith('<!--') || typed.startsWith('<?')) continue;
    if (typed === '<') {
      wrong(
        at,
        `"${text.slice(at, at + 20).split('\n')[0]}", which is no element of a drawing`,
        `one of: ${SHAPES}, each attribute in quotes`,
      );
      return read;
    }
    if (name === undefined) {
      if (typed.trim() === '' || parent?.name === 'title') continue;
      if (parent?.name !== 'text') wrong(at, 'words outside an element <text>', 'them in the file of words beside it');
      else if (/&/.test(typed)) wrong(at, '"&" in the words of a drawing', 'a number');
      else {
        read.numbers.push(typed.trim());
        parent.children.push(typed.trim());
      }
    } else if (closes) {
      if (parent?.name !== name) {
        wrong(
          at,
          `</${name}>, ${parent ? `while <${parent.name}> is open` : 'which nothing opened'}`,
          parent ? `</${parent.name}> before it` : 'nothing',
        );
        return read;
      }
      open.pop();
    } else {
      const element = elementOf(name, attributes ?? '', (found, write) => wrong(at, found, write), open.length === 0);
      if (name !== 'title') (parent?.children ?? top).push(element);
      if (!parent && top.length + (name === 'title' ? 1 : 0) > 1) wrong(at, `<${name}> outside <svg>`, 'it inside');
      if (parent && !HOLDS.has(parent.name)) wrong(at, `<${name}> inside <${parent.name}>`, `<${parent.name} ... /> closed before it`);
      if (!closed) open.push({ name, children: element.children, at });
    }
  }
  if (open.length > 0) wrong(open.at(-1)!.at, `<${open.at(-1)!.name}> that is not closed`, `</${open.at(-1)!.name}> where it ends`);
  const svg = top[0];
  if (svg?.name !== 'svg') {
    if (read.faults.length === 0) wrong(0, 'no <svg> at its head', START);
    return read;
  }
  read.width = Number(/^0 0 (\S+)/.exec(svg.attributes.viewBox ?? '')?.[1] ?? 0);
  if (read.faults.length === 0) read.root = svg;
  return read;
}

function elementOf(name: string, attributes: string, wrong: (found: string, write: string) => void, isRoot: boolean): Shape {
  const own = ELEMENTS[name];
  const element: Shape = { name, attributes: {}, children: [] };
  if (!own || (name === 'svg') !== isRoot) {
    wrong(
      `<${name}>${own ? ' inside a drawing' : ''}`,
      name === 'image' || name === 'use' ? 'the shape itself, drawn' : `nothing, or one of: ${SHAPES}`,
    );
    return element;
  }
  for (const [, key, double, single] of attributes.matchAll(ATTRIBUTE)) {
    const value = (double ?? single ?? '').trim();
    if (isRoot && key === 'xmlns' && value === 'http://www.w3.org/2000/svg') continue;
    if (isRoot && key === 'viewBox' && /^0 0 \d+(?:\.\d+)? \d+(?:\.\d+)?$/.test(value)) element.attributes.viewBox = value;
    else if (isRoot && key === 'viewBox') wrong(`viewBox="${value}"`, 'viewBox="0 0 342 200", its width and height');
    else if (/^on/i.test(key!)) wrong(`"${key}", which runs a script`, 'nothing');
    else if (key === 'style') wrong('"style"', 'its parts as attributes, such as stroke-width="2"');
    else if (![...own, ...PAINT].includes(key!)) wrong(`"${key}", which <${name}> may not have`, `only: ${[...own, ...PAINT].join(', ')}`);
    else if (!MAY[key!]!.test(value))
      wrong(`${key}="${value.slice(0, 40)}"`, HINTS[key!] ?? `nothing, or one of the values that a plain ${key} has`);
    else element.attributes[key!] = key === 'fill' || key === 'stroke' ? plainColour(value) : value;
  }
  if (isRoot && element.attributes.viewBox === undefined && !/\bviewBox\s*=/.test(attributes))
    wrong('no viewBox', 'viewBox="0 0 342 200", its width and height');
  return element;
}

const plainColour = (value: string): string => (/^(?:white|#fff)/i.test(value) ? 'white' : /^none$/i.test(value) ? 'none' : 'black');

function place(text: string, at: number): { line: number; column: number } {
  const before = text.slice(0, at).split('\n');
  return { line: before.length, column: before.at(-1)!.length + 1 };
}

/** Every element of a drawing, parents first. */
export function* shapesOf(shape: Shape): Generator<Shape> {
  yield shape;
  for (const child of shape.children) if (typeof child !== 'string') yield* shapesOf(child);
}
