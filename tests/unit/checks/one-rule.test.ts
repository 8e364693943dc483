/*
 * No two pages of the demo club, or of the books of other lands, give different rules for one danger. Each rule of tests/tables/rules.ts is
 * in its owner, and pages quote it.
 */
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { describe, test } from 'vitest';
import type { Nodes } from 'mdast';
import { projectFolder } from '../../../src/cli/paths.ts';
import { readFolder, type Entry } from '../../../src/source/folder.ts';
import { attribute, isTag, walk } from '../../../src/source/prose.ts';
import { HAZARDS_OF } from '../../../src/schemas/hazards.ts';
import { RULES, type OneRule } from '../../tables/rules.ts';

const entriesOf = (folder: string): Entry[] =>
  readFolder(join(projectFolder, 'content', folder))
    .entries.filter(({ collection }) => collection !== 'sources')
    // Without the folder of its book.
    .map((entry) => ({ ...entry, path: entry.path.split('/').slice(-2).join('/') }));

const entries = entriesOf('demo-club');

/** Books that the demo club does not use, each read with the wider books below it, as a club of that land reads it. */
const elsewhere = ['books/nz', 'books/uk'].map((folder) => ({ folder, entries: entriesOf(folder) }));

function inFields(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, held]) => (key === 'history' || key === 'sources' ? [] : inFields(held)));
}

const BLOCKS = new Set(['paragraph', 'heading', 'tableRow']);

const inWords = ({ tree }: Entry): string[] => (tree ? [...walk(tree)].filter(({ type }) => BLOCKS.has(type)).map(wordsOf) : []);

/** Its words, with the duty that a contact names. */
function wordsOf(node: Nodes): string {
  if (isTag(node)) return attribute(node, 'duty') ?? '';
  if ('value' in node) return node.value;
  return 'children' in node ? (node.children as Nodes[]).map(wordsOf).join(node.type === 'tableRow' ? ' | ' : '') : ' ';
}

type Block = { path: string; words: string };

/** A field, a heading, a paragraph, a line of a list, or a row of a table. Changes are left out, because they report older rules. */
const blocks: readonly Block[] = [...entries, ...elsewhere.flatMap((book) => book.entries)].flatMap((entry) =>
  [...inFields(entry.fields.value), ...inWords(entry)].map((words) => ({ path: entry.path, words })),
);

test('the books of other lands are read, with the books below them', () =>
  assert.deepEqual(
    elsewhere.filter((book) => book.entries.length < 500).map(({ folder }) => folder),
    [],
  ));

const isRival = ({ rival, unless }: OneRule, words: string): boolean => rival.some((each) => each.test(words)) && !unless?.test(words);

/** Places of its box or its quotation. */
function shows(entry: Entry, caution: string): boolean {
  const { work = [] } = entry.fields.value as { work?: (keyof typeof HAZARDS_OF)[] };
  const quoted = entry.tree !== null && [...walk(entry.tree)].some((node) => isTag(node) && attribute(node, 'id') === caution);
  return quoted || work.some((each) => (HAZARDS_OF[each] as readonly string[]).includes(caution));
}

for (const rule of RULES)
  describe(rule.danger, () => {
    test('it has its owner', () => assert.ok(entries.some(({ path }) => path === rule.owner)));

    test('no page gives a different rule', () =>
      assert.deepEqual(
        blocks.filter(({ path, words }) => path !== rule.owner && isRival(rule, words)),
        [],
      ));

    for (const name of rule.shownOn)
      test(`it is shown on ${name}`, () => {
        const entry = entries.find(({ collection, id }) => `${collection}/${id}` === name);
        assert.ok(entry && shows(entry, rule.owner.replace(/^cautions\/|\.yaml$/g, '')));
      });

    test('each rival matches something, and every old sentence is matched', () => {
      assert.deepEqual(
        rule.stood.filter((words) => !isRival(rule, words.replace(/<Contact duty="([^"]*)" \/>/, '$1'))),
        [],
      );
      assert.deepEqual(
        rule.rival.filter((each) => !rule.stood.some((words) => each.test(words.replace(/<Contact duty="([^"]*)" \/>/, '$1')))),
        [],
      );
    });
  });
