/*
 * Checks Markdown that does something else than its author expects. Examples: printed or swallowed marks, references defined elsewhere on
 * the page, dropped table cells, unclosed fences.
 */
import type { Emphasis, Nodes, Strong, TableRow } from 'mdast';
import { quoted, type Diagnostic } from '../source/diagnostic.ts';
import { plainText, walk } from '../source/prose.ts';
import type { ValidEntries } from './fields.ts';
import { atNode, atWords, isPage, lineAt, placeOf, sourceOf, type Page } from './place.ts';

export function markdownFaults(club: ValidEntries): Diagnostic[] {
  return club.folder.entries
    .filter(isPage)
    .flatMap((page) =>
      [...walk(page.tree)].flatMap((node) => [...textFaults(page, node), ...blockFaults(page, node), ...digitFaults(page, node)]),
    );
}

/** Markdown marks that remain as text, and what to write instead. */
const LEFT: readonly [sign: RegExp, found: string, write: string][] = [
  [/\[\^[^\]\n]+\]/, 'the mark of a footnote', 'a file under "sources:", or the note in brackets in its sentence'],
  [/\*\*/, '"**" that begins or ends nothing', '**words**, without a space inside the stars'],
  [/(?<![^\s(])\*(?=[^\s*])|(?<=[^\s*\\])\*(?![^\s.,;:!?)])/, '"*" that begins or ends nothing', '*words*, or \\* for a star'],
  [/__\s+__/, '"__ __" with nothing between', 'the words, or one line ____ for a blank to fill in'],
  [/^#{2,6}(?=[^\s#])/m, '"##" without a space after it', '"## " and the words of the heading'],
  [/^[•●▪◦‣·](?=\s*\S)/m, 'a line that begins with a dot', '"- " at the start of each line of a list'],
  [/^[–—−](?=\s*\[[ xX]?\]|\s.*\n[–—−]\s)/m, 'a long dash at the start of a line of a list', '"- "'],
  [/\[[^\]\n]+\]\[[^\]\n]*\]/, 'a link whose address stands nowhere', '[words](address)'],
  [/\]\s+\((?:\/|https?:|mailto:)/, 'a space between the words of a link and its address', '[words](address) without the space'],
  [/\[\[[^\]\n]*\]\]/, 'double square brackets', '[words](/pests/varroa/)'],
  [
    /https?:\/\/\[[0-9a-f:]+\]/i,
    'an address on your own computer',
    'the address of the page, from its first slash, such as /pests/varroa/',
  ],
  [/\]\(/, 'a link whose address has a space or a bracket that is not closed', '[words](address) with an address without spaces'],
  [/^\+\+\+$/m, '"+++" on a line of its own', 'nothing, or --- for a line across the page'],
  [/^:::/m, '":::" at the start of a line', 'a paragraph'],
  [
    /^\|.*\|[ \t]*$/m,
    'a line of a table that has no head',
    'a line of names, a line | --- | --- |, then the rows, with an empty line before them',
  ],
  [
    /^[^\n\t]*\S *\t[^\n]*(?:\t *\S|\n[^\n\t]*\S *\t)/m,
    'a table pasted with tabs, which would run together',
    '| between its cells, and a line | --- | --- | below the first one',
  ],
  [/^(?:-|\*)\[[ xX]?\]/m, 'a box without a space before it', '"- [ ] " and the step'],
];

function textFaults(page: Page, node: Nodes): Diagnostic[] {
  if (node.type !== 'text') return [];
  const source = sourceOf(page, node).replace(/\\[^\w\s]/g, '  ');
  const [sign, found, write] = LEFT.find(([pattern]) => pattern.test(source)) ?? [];
  if (!sign) return [];
  const typed = sign.exec(source)![0].trim();
  return [atWords(page, node, typed, { rule: 'markdown', field: 'the words', found: found!, write: write! })];
}

/** Marks that are shown as typed. Some authors mean them so. */
const TYPED: readonly [sign: RegExp, found: string, write: string][] = [
  [/\([^()\n]+\)\[(?:\/|https?:|mailto:)[^\]\n]*\]/, 'the brackets of a link the wrong way round', '[words](address)'],
  [/^#\p{Lu}\p{Ll}/mu, '"#" without a space after it, which is shown as typed', '"## " before a heading'],
  [/^-\p{L}/mu, '"-" without a space after it, which is shown as typed', '"- " before a line of a list'],
  [/^\d{1,2}[.)]\p{L}{2}/mu, 'a number without a space after its point, which is shown as typed', '"1. " before a line of a numbered list'],
];

export function typedHints(club: ValidEntries): Diagnostic[] {
  return club.folder.entries.filter(isPage).flatMap((page) =>
    [...walk(page.tree)].flatMap((node): Diagnostic[] => {
      if (node.type !== 'text' || node.position === undefined) return [];
      // Text behind a tag or another mark does not begin its line.
      const isFirst = page.body[node.position.start.offset! - 1] !== '\n' && node.position.start.column > 1;
      const source = (isFirst ? ' ' : '') + sourceOf(page, node);
      const [sign, found, write] = TYPED.find(([pattern]) => pattern.test(source)) ?? [];
      if (!sign) return [];
      return [atWords(page, node, sign.exec(source)![0], { rule: 'markdown', field: 'the words', found: found!, write: write! })];
    }),
  );
}

function blockFaults(page: Page, node: Nodes): Diagnostic[] {
  const at = (found: string, write: string, corrected?: string): Diagnostic[] => [
    atNode(page, node, { rule: 'markdown', field: 'the words', found, write, corrected }),
  ];
  const line = lineAt(page, placeOf(page, node).line).trim();
  switch (node.type) {
    case 'footnoteReference':
      return at('a footnote', 'a file under "sources:", or the note in brackets in its sentence');
    case 'definition':
      return at(
        `the address of a link apart from its words, ${quoted(node.label ?? node.identifier)}`,
        `[words](${node.url}) in the sentence`,
      );
    case 'break':
      return sourceOf(page, node).startsWith('\\')
        ? at('a back-slash at the end of a line, which would be swallowed', '\\\\ for a back-slash that is to be seen')
        : [];
    case 'list':
      return node.ordered && (node.start ?? 1) > 99
        ? at(
            `"${node.start}." at the start of a line, which would begin a numbered list`,
            'another word first, or \\ before the point',
            line.replace(/^(\d+)([.)])/, '$1\\$2'),
          )
        : [];
    case 'listItem': {
      if (/^\+ +\d/.test(line))
        return at('"+" at the start of a line, which would be a line of a list', '"plus" and the number, or "- " for a list');
      const first = /^\[[xX ]?\]/.exec(plainText(node));
      if (!first || node.checked === true || node.checked === false) return [];
      return plainText(node).trim() === first[0]
        ? at('a box without words', '"- [ ] " and the step, verb first')
        : at(
            `${quoted(first[0])} at the start of a line of a list`,
            '"- [ ] " with one space inside and one after',
            line.replace(/\[[xX ]?\] */, '[ ] '),
          );
    }
    case 'blockquote':
      return /^[\d=≥≤.,]/.test(plainText(node))
        ? at(
            'a number after ">" at the start of a line, which would be read as a quotation',
            '"over" or "more than" and the number',
            line.replace(/^> */, 'over '),
          )
        : [];
    case 'code':
      return /^(?:`{3,}|~{3,})/.test(sourceOf(page, node)) && !/\n[ >]*(?:`{3,}|~{3,})\s*$/.test(sourceOf(page, node))
        ? at('``` that is not closed', 'another ``` below the lines it holds')
        : [];
    case 'table':
      return node.children.slice(1).flatMap((row) => lostCells(page, row, node.children[0]!.children.length));
    default:
      return [];
  }
}

/** Cells beyond those of the header row are not shown. */
function lostCells(page: Page, row: TableRow, columns: number): Diagnostic[] {
  const cells = sourceOf(page, row)
    .trim()
    .replace(/`[^`]*`/g, '')
    .replace(/\\\|/g, '')
    .replace(/^\|/, '')
    .replace(/\|$/, '')
    .split('|').length;
  if (cells <= columns) return [];
  return [
    atNode(page, row, {
      rule: 'markdown',
      field: 'a table',
      found: `a row of ${cells} cells under a head of ${columns}`,
      write: `${columns} cells, with \\| for a line inside a cell`,
    }),
  ];
}

/** `5*3*2` would read "532" with a slanted 3. */
function digitFaults(page: Page, parent: Nodes): Diagnostic[] {
  if (!('children' in parent)) return [];
  return (parent.children as Nodes[]).flatMap((node, index, all): Diagnostic[] => {
    if (node.type !== 'emphasis' && node.type !== 'strong') return [];
    const [before, after] = [all[index - 1], all[index + 1]];
    const touches =
      (before?.type === 'text' && /\d$/.test(before.value) && /^\d/.test(plainText(node))) ||
      (after?.type === 'text' && /^\d/.test(after.value) && /\d$/.test(plainText(node)));
    return touches
      ? [
          atNode(page, node as Emphasis | Strong, {
            rule: 'markdown',
            field: 'the words',
            found: `${quoted(sourceOf(page, node))} between digits, whose stars would be swallowed`,
            write: '× between the numbers',
          }),
        ]
      : [];
  });
}
