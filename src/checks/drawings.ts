/* Checks drawings: a file of words and an SVG file with few, small lines, black on white, and numbers as the only lettering. */
import type { Diagnostic } from '../source/diagnostic.ts';
import { isPictureName, isUnreadName } from '../source/picture-file.ts';
import { readDrawing, shapesOf, type Shape } from '../source/drawing.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import type { Drawing } from '../schemas/drawings.ts';

/** A larger file would slow down every page that shows it. */
const MOST_BYTES = 6144;
/** Width of a phone's text block and the smallest lettering on it, both in CSS pixels. */
const PHONE = 342;
const LEAST_LETTERING = 18;

export function drawingFaults(club: ValidEntries): Diagnostic[] {
  const { files } = club.folder;
  const alone = files
    .filter((path) => /^drawings\/.*\.svg$/.test(path) && !files.includes(path.replace(/svg$/, 'yaml')))
    .map((path) => fault(path, 'the file', 'lines without words', `a file ${path.replace(/svg$/, 'yaml')} with "title:" and "words:"`));
  const dots = files
    .filter((path) => path.startsWith('drawings/') && !path.endsWith('.svg') && (isPictureName(path) || isUnreadName(path)))
    .map((path) => fault(path, 'the file', 'a picture of dots', 'lines saved as .svg; a photograph lies beside its page'));
  return [
    ...alone,
    ...dots,
    ...club.of.drawings.flatMap((entry) =>
      files.includes(linesOf(entry))
        ? linesFaults(entry)
        : [fault(entry.path, 'the file', 'words without lines', `the drawing beside it, ${linesOf(entry)}`)],
    ),
  ];
}

const linesOf = (entry: ValidEntry): string => `drawings/${entry.id}.svg`;

function linesFaults(entry: ValidEntry<Drawing>): Diagnostic[] {
  const path = linesOf(entry);
  const bytes = Buffer.byteLength(entry.body);
  if (bytes > MOST_BYTES)
    return [fault(path, 'the file', `${bytes} bytes`, `at most ${MOST_BYTES}: fewer lines, and numbers with one digit after the point`)];
  const { root, width, numbers, faults } = readDrawing(entry.body);
  if (!root)
    return faults.map((each) => ({
      path,
      line: each.line,
      column: each.column,
      rule: 'drawing',
      field: 'the drawing',
      found: each.found,
      write: each.write,
    }));
  if (![...shapesOf(root)].some(({ name }) => name !== 'svg' && name !== 'g'))
    return [fault(path, 'the drawing', 'no lines', 'at least one shape, such as <path d="M10 20h40" />')];
  return [...letteringFaults(path, root, width), ...numberFaults(entry, numbers)];
}

/** A drawing is as wide as the phone's text, and its lettering scales with it. */
function letteringFaults(path: string, root: Shape, width: number): Diagnostic[] {
  const least = Math.ceil((LEAST_LETTERING * width) / PHONE);
  const small = [...shapesOf(root)].find(({ name, attributes }) => name === 'text' && !(Number(attributes['font-size']) >= least));
  const size = small?.attributes['font-size'];
  return small
    ? [fault(path, 'font-size', size === undefined ? 'a number without one' : size, `at least ${least}, so that it can be read on a phone`)]
    : [];
}

/** The numbers in the SVG match the list of parts, each at least once. */
function numberFaults(entry: ValidEntry<Drawing>, numbers: readonly string[]): Diagnostic[] {
  const parts = entry.data.parts ?? [];
  const known = parts.map((_, index) => String(index + 1));
  const strange = numbers.find((each) => !known.includes(each));
  if (strange !== undefined)
    return [
      fault(
        linesOf(entry),
        'the drawing',
        `"${strange}" written in it`,
        known.length === 0
          ? 'nothing: words stand in "words:", and numbers need a list "parts:"'
          : `${known.length === 1 ? 'the number 1' : `a number from 1 to ${known.length}`}, as "parts:" lists them`,
      ),
    ];
  const missing = known.find((each) => !numbers.includes(each));
  return missing === undefined
    ? []
    : [
        {
          path: entry.path,
          ...entry.fields.placeOf(['parts', Number(missing) - 1]),
          rule: 'drawing',
          field: `parts ${missing}`,
          found: `"${parts[Number(missing) - 1]}", whose number is not in the drawing`,
          write: `${missing} in ${linesOf(entry)}, or one part fewer`,
        },
      ];
}

const fault = (path: string, field: string, found: string, write: string): Diagnostic => ({
  path,
  line: 1,
  column: 1,
  rule: 'drawing',
  field,
  found,
  write,
});
