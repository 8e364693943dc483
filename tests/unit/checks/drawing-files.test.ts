/* Drawings beyond the one-file cases: a drawing that is too large, and proof that only valid parts are ever drawn. */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { check } from '../../../src/checks/check.ts';
import { formatDiagnostic } from '../../../src/source/diagnostic.ts';
import { readDrawing, shapesOf } from '../../../src/source/drawing.ts';
import { withChanges } from '../../fixtures/invalid/cases.ts';

const svg = (inside: string): string => `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 342 200">${inside}</svg>`;

test('a drawing over 6,144 bytes is refused with its size', () => {
  const heavy = svg(`<path d="M0 0${'h1v1'.repeat(1600)}"/><text font-size="18">1</text>`);
  const found = withChanges([{ file: 'drawings/egg.svg', write: heavy }], check).map(formatDiagnostic);
  assert.deepEqual(found, [
    `drawings/egg.svg:1:1 drawing: the file: found ${heavy.length + 1} bytes; write at most 6144: fewer lines, and numbers with one digit after the point`,
  ]);
});

const refused = [
  '<script/>',
  '<SCRIPT/>',
  '<svg/>',
  '<g><animate/></g>',
  '<path D="M0 0"/>',
  '<path d="M0 0" onload="x"/>',
  '<path d=M0/>',
  '<g fill="url(#a)"/>',
  '<g fill="red"/>',
  '<title><g/></title><a/>',
  '<text font-size="20">&lt;b&gt;</text>',
  '<![CDATA[x]]>',
  '<path d="M0 0"',
  '<g><!-- --',
  '<path xlink:href="#a"/>',
  '<g transform="url(#a)"/>',
  '<text>1<path d="M0 0"/></text>',
  '<path d="M0 0"><g/></path>',
];
for (const inside of refused) {
  test(`nothing is drawn of ${inside}`, () => {
    const read = readDrawing(svg(inside));
    assert.ok(read.root === null && read.faults.length > 0);
  });
}

test('black becomes the text colour and white the background; comments and titles are left out', () => {
  const { root, faults } = readDrawing(svg('<!-- a note --><title>Egg</title><g stroke="#000"><path fill="#FFF" d="M0 0h9"/></g>'));
  assert.deepEqual(faults, []);
  assert.deepEqual(
    [...shapesOf(root!)].map(({ name, attributes }) => [name, attributes]),
    [
      ['svg', { viewBox: '0 0 342 200' }],
      ['g', { stroke: 'black' }],
      ['path', { fill: 'white', d: 'M0 0h9' }],
    ],
  );
});
