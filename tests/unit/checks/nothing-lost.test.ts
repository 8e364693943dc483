/*
 * One character inserted anywhere into a good file: either a fault is reported, or every typed letter and digit still reaches a reader,
 * in the words, an address, a tag or a field.
 */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { checkFolder } from '../../../src/checks/check.ts';
import type { Diagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder, readText, type Entry } from '../../../src/source/folder.ts';
import { isTag, walk, type TagNode } from '../../../src/source/prose.ts';
import { goodClub } from '../../fixtures/invalid/cases.ts';

const good = readFolder(goodClub);
const SIGNS = [
  '"',
  "'",
  ':',
  ': ',
  ' #',
  '#',
  '-',
  '- ',
  '[',
  ']',
  '(',
  ')',
  '{',
  '}',
  '<',
  '>',
  '/>',
  '*',
  '**',
  '_',
  '__',
  '|',
  '> ',
  '\t',
  '\n',
  '\n\n',
  '---\n',
  '```',
  '~',
  '!',
  '🐝',
  '\\',
  '%',
  '@',
  '`',
  '=',
  '==',
  '  ',
  '? ',
  '[^1]',
  '![](',
  '](',
  '1. ',
  '5',
  '12',
  '+ ',
  '  \n',
  '    ',
  '\n    ',
  '0',
  '$',
  '1) ',
  '\n7. ',
  '\n1986. ',
];

const lettersOf = (text: string): string =>
  [...text.matchAll(/[\p{L}\p{N}]/gu)]
    .map(([letter]) => letter)
    .sort()
    .join('');

/** The parts of the words that reach a reader, or that make up a tag or an address. */
function kept(entry: Entry): string {
  if (!entry.tree) return '';
  return [...walk(entry.tree)]
    .map((node) => {
      const held = node as {
        value?: unknown;
        url?: string;
        title?: string | null;
        alt?: string | null;
        lang?: string | null;
        meta?: string | null;
      };
      const words = [held.value, held.url, held.title, held.alt, held.lang, held.meta].filter((each) => typeof each === 'string');
      const tag = isTag(node)
        ? [
            (node as TagNode).name,
            (node as TagNode).children.length > 0 ? (node as TagNode).name : '',
            ...(node as TagNode).attributes.flatMap(({ name, value }) => [name, value]),
          ]
        : [];
      return [...words, ...tag, node.type === 'list' && node.ordered ? node.start : ''].join('');
    })
    .join('');
}

test('typed text is shown, or a fault explains why not', () => {
  let clean = 0;
  const place = fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true });
  fc.assert(
    fc.property(fc.constantFrom(...good.entries), place, fc.constantFrom(...SIGNS), (entry, share, sign) => {
      const at = Math.floor(share * entry.text.length);
      const text = entry.text.slice(0, at) + sign + entry.text.slice(at);
      const faults: Diagnostic[] = [];
      const made = readText(entry.path, entry.collection, entry.id, text, faults);
      if (
        !made ||
        faults.length > 0 ||
        checkFolder({ ...good, entries: good.entries.map((each) => (each === entry ? made : each)) }).length > 0
      )
        return;
      clean += 1;
      const fields = made.tree ? text.slice(0, text.length - made.body.length) : text;
      const remarks = fields.replace(/^\s*#.*$/gm, '');
      assert.ok(
        lettersOf(made.body).length <= lettersOf(kept(made)).length,
        `lost from the words: ${JSON.stringify(text.slice(at - 20, at + 30))}`,
      );
      assert.ok(
        lettersOf(remarks).length <= lettersOf(JSON.stringify(made.fields.value)).length,
        `lost from the fields: ${JSON.stringify(text.slice(at - 20, at + 30))}`,
      );
    }),
    { numRuns: 1500, interruptAfterTimeLimit: 12_000, markInterruptAsFailure: false },
  );
  assert.ok(clean > 0);
});
