// Order of a bulletin's parts, and the parts of a bulletin or a long article that fold.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import type { Element, ElementContent } from 'hast';
import type { Nodes } from 'mdast';
import { folded } from '../../../src/components/mdx/folded.ts';
import { collectionOf, inBulletinOrder } from '../../../src/components/mdx/page-order.ts';
import { tag } from '../../../src/components/mdx/rehype-page.ts';

test('the collection of a file is its folder, with either slash', () => {
  assert.equal(collectionOf('/books/common/bulletins/varroa.mdx'), 'bulletins');
  assert.equal(collectionOf('C:\\club\\articles\\swarms.mdx'), 'articles');
  assert.equal(collectionOf(undefined), '');
});

test('a bulletin shows what to do first, then its open parts in their order, then the rest as written; no word is lost', () => {
  const written = [
    'lead',
    '#spread',
    'a',
    '#what-you-see',
    'b',
    '#law',
    'c',
    '#what-to-do-today',
    'd',
    '#after',
    'e',
    '#the-field-test',
    'f',
  ];
  const nodes = written.map((value) => ({ type: 'text', value }) as Nodes & { value: string });
  const shown = inBulletinOrder(nodes, ({ value }) => (value.startsWith('#') ? value.slice(1) : undefined)).map(({ value }) => value);
  assert.deepEqual(
    shown.filter((value) => value.startsWith('#')),
    ['#what-to-do-today', '#what-you-see', '#the-field-test', '#law', '#spread', '#after'],
  );
  assert.equal(shown[0], 'lead');
  assert.deepEqual([...shown].sort(), [...written].sort());
  // Words stay below their heading.
  for (let at = 1; at < written.length; at += 2) assert.equal(shown[shown.indexOf(written[at]!) + 1], written[at + 1]);
});

const element = (tagName: string, children: ElementContent[] | string, id?: string): Element => ({
  type: 'element',
  tagName,
  properties: id === undefined ? {} : { id },
  children: typeof children === 'string' ? [{ type: 'text', value: children }] : children,
});
const part = (id: string, ...children: ElementContent[]): Element => ({
  ...tag('Part'),
  children: [element('h2', `Heading of ${id}`, id), ...children],
});
const names = (parts: Element[]): string[] => parts.map((each) => (each as unknown as { name: string }).name);
const lines = (count: number): ElementContent[] => Array.from({ length: count }, (_, index) => element('li', `line ${index + 1}`));
const paragraph = (letters: number): Element => element('p', 'x'.repeat(letters));

test('a bulletin folds what is no open part; the rule of its fields has a place where no author wrote of the law', () => {
  const parts = ['what-to-do-today', 'what-you-see', 'what-not-to-do', 'spread'].map((id) => part(id, paragraph(10)));
  assert.deepEqual(names(folded([tag('Opening'), ...parts], 'bulletins')), ['Opening', 'DoNow', 'Part', 'Donts', 'Law', 'Fold']);
  const withLaw = ['what-not-to-do', 'law'].map((id) => part(id, paragraph(10)));
  assert.deepEqual(names(folded(withLaw, 'bulletins')), ['Donts', 'Law']);
});

test('what to do first has four lines at most; the others follow in a fold and go on counting', () => {
  const [four] = folded([part('what-to-do-today', element('ol', lines(4)))], 'bulletins');
  assert.equal(four!.children.length, 2);
  const [six] = folded([part('what-to-do-today', element('ol', lines(6)), paragraph(5))], 'bulletins');
  const [heading, first, fold] = six!.children as Element[];
  assert.deepEqual(heading!.children, [{ type: 'text', value: 'Do now' }]);
  assert.equal(first!.children.length, 4);
  assert.deepEqual([fold!.tagName, fold!.properties.slot], ['details', 'after']);
  const [, rest, after] = fold!.children as Element[];
  assert.deepEqual([rest!.properties.start, rest!.children.length, after!.tagName], [5, 2, 'p']);
});

test('an article folds its later parts only where it is long, never its first words; other pages fold nothing', () => {
  // Lines of 38 letters at 27 px: 1,000 letters are about 740 px.
  const short = ['one', 'two'].map((id) => part(id, paragraph(1000)));
  assert.deepEqual(names(folded([tag('Opening'), ...short], 'articles')), ['Opening', 'Part', 'Part']);
  const long = ['one', 'two', 'three', 'four'].map((id) => part(id, paragraph(1000)));
  assert.deepEqual(names(folded([tag('Opening'), ...long], 'articles')), ['Opening', 'Part', 'Fold', 'Fold', 'Fold']);
  const opening = { ...tag('Opening'), children: [paragraph(4000)] };
  assert.deepEqual(names(folded([opening, part('one', paragraph(10))], 'articles')), ['Opening', 'Fold']);
  assert.deepEqual(names(folded(long, 'meetings')), ['Part', 'Part', 'Part', 'Part']);
});
