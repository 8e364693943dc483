/*
 * QR code of a text, drawn as SVG: ISO/IEC 18004 with error correction level M and a quiet zone of four modules. Load it with a dynamic
 * import when a reader asks for a code.
 */
import { correction, generate } from 'lean-qr';

/** Light modules on each side, as the standard wants them. */
export const QUIET = 4;
/** Version 17. On a phone of 320 px each module of a larger code would be under 3 px, too small to scan at arm's length. */
const MOST_MODULES = 85;

/** The width with its quiet zone, in modules, and the dark modules as a path. */
export type Code = { readonly width: number; readonly path: string };

/** Null where the text is too long for a code that a phone can scan: over about 500 characters of an address. */
export function codeOf(text: string): Code | null {
  try {
    const modules = generate(text, { minCorrectionLevel: correction.M });
    return modules.size > MOST_MODULES ? null : { width: modules.size + 2 * QUIET, path: darkPath(modules) };
  } catch {
    // The text is longer than the largest code of the standard.
    return null;
  }
}

/** One rectangle for each run of dark modules in a row. */
function darkPath({ size, get }: { size: number; get: (x: number, y: number) => boolean }): string {
  let path = '';
  for (let y = 0; y < size; y += 1)
    for (let x = 0; x < size; x += 1) {
      const from = x;
      while (x < size && get(x, y)) x += 1;
      if (x > from) path += `M${from + QUIET} ${y + QUIET}h${x - from}v1h${from - x}z`;
    }
  return path;
}

/**
 * Black on white in every form of the page, because a scanner needs the contrast. A listener hears the text itself. `millimeters` is the
 * side of the code on paper, without its quiet zone.
 */
export function drawCode({ width, path }: Code, text: string, millimeters?: number): SVGSVGElement {
  const make = <T extends keyof SVGElementTagNameMap>(name: T, attributes: Record<string, string>): SVGElementTagNameMap[T] => {
    const element = document.createElementNS('http://www.w3.org/2000/svg', name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    return element;
  };
  const drawing = make('svg', {
    class: 'qr',
    viewBox: `0 0 ${width} ${width}`,
    role: 'img',
    'aria-label': text,
    'shape-rendering': 'crispEdges',
  });
  const side = millimeters && `${((millimeters * width) / (width - 2 * QUIET)).toFixed(2)}mm`;
  if (side)
    for (const [name, value] of Object.entries({ class: 'qr-on-paper', width: side, height: side })) drawing.setAttribute(name, value);
  drawing.append(make('rect', { width: `${width}`, height: `${width}`, fill: '#fff' }), make('path', { d: path, fill: '#000' }));
  return drawing;
}
