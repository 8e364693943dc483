/* Examples of a book of both halves of the world: in the south their days are half a year on, in the link and in its words. */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { attribute, isTag, parseProse, plainText, walk } from '../../../src/source/prose.ts';
import { turnedExamples, turnedWords } from '../../../src/source/turned-examples.ts';

for (const [words, turned] of [
  ['Eggs seen on May 1: which day shows caps?', 'Eggs seen on November 1: which day shows caps?'],
  ['the first of two, 20 April', 'the first of two, 20 October'],
  ['Put in on September 12 or on October 3', 'Put in on March 12 or on April 3'],
  ['August 31 has no day in February', 'February 28 has no day in February'],
  ['nine mites on 300 bees in May', 'nine mites on 300 bees in May'],
] as const)
  test(`“${words}” is “${turned}”`, () => assert.equal(turnedWords(words), turned));

const page = parseProse(
  'On May 1 look: <Example tool="brood-dates" with="caste=queen&seen=open&date=2026-05-10">Open on May 10</Example>.\n\n' +
    '<Example tool="treatment-window" with="start=2026-08-31&high=28">A hot week</Example>\n\n' +
    '<Example tool="syrup" with="amount=2">two pounds</Example>\n',
);
const examples = (tree: typeof page): (string | undefined)[][] =>
  [...walk(tree)].flatMap((node) => (isTag(node) ? [[attribute(node, 'with'), plainText(node)]] : []));

test('the link and its words are turned, and the other words of the page are not', () => {
  const turned = turnedExamples(page);
  assert.deepEqual(examples(turned), [
    ['caste=queen&seen=open&date=2026-11-10', 'Open on November 10'],
    ['start=2026-02-28&high=28', 'A hot week'],
    ['amount=2', 'two pounds'],
  ]);
  assert.match(plainText(turned.children[0]!), /^On May 1 look/);
  assert.equal(examples(page)[0]![1], 'Open on May 10', 'the tree of the book is not changed');
});

test('words that a nearer folder added stay as its own half wrote them', () =>
  assert.deepEqual(
    examples(turnedExamples(page, 3)).map(([address]) => address),
    ['caste=queen&seen=open&date=2026-11-10', 'start=2026-08-31&high=28', 'amount=2'],
  ));

test('a page whose examples have no day is the same page', () => {
  const tree = parseProse('<Example tool="syrup" with="amount=2">two pounds</Example>');
  assert.equal(turnedExamples(tree), tree);
});
