/* Sentences of a book for which a club has no contact or no figure: words take the place of a contact, and the rest goes whole. */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { daysKnown, gapsIn, withoutGaps, type Known } from '../../../src/source/gaps.ts';
import { parseProse, plainText } from '../../../src/source/prose.ts';
import type { Entry } from '../../../src/source/folder.ts';

const known: Known = {
  duties: new Set(['inspector']),
  wordsFor: new Map([
    ['doctor', 'your doctor'],
    ['inspector', 'an inspector'],
  ]),
  figures: new Map([
    ['here', { rows: new Set(['ours']), follows: ['ours'] }],
    ['elsewhere', { rows: new Set(), follows: ['theirs'] }],
  ]),
  locals: new Set(['written']),
  hasPoisonLine: false,
  hasDay: daysKnown({ season: { guesses: { 'first-drone': '1 April to 25 April' } } }),
};
const contact = (duty: string): string => `<Contact duty="${duty}" />`;
const left = (text: string): string => {
  const tree = withoutGaps(parseProse(text), known);
  return tree.children.map((block) => plainText(block).trim()).join('\n');
};

for (const [what, text, found] of [
  ['a duty of a contact stays a tag', `Call ${contact('inspector')} today.`, 'Call  today.'],
  ['a duty that has words is said in words', `Call ${contact('doctor')}, not us.`, 'Call your doctor, not us.'],
  ['words stay in a table', `| Day | Do |\n| --- | --- |\n| 1 | Call ${contact('doctor')} |`, 'DayDo1Call your doctor'],
  ['a duty without words takes its sentence along', `Wait. Call ${contact('keeper')} today. Sit down.`, 'Wait. Sit down.'],
  ['and the question before it', `Wait. Is it hot? Call ${contact('keeper')}.`, 'Wait.'],
  ['but not a question that is answered first', `Is it hot? Wait. Call ${contact('keeper')}.`, 'Is it hot? Wait.'],
  ['a sentence in heavier type goes alone', `**Call ${contact('keeper')}.** Have ready:`, 'Have ready:'],
  [
    'a sentence that begins with a link stays',
    `Call ${contact('keeper')}. [The list](/lists/) tells the rest.`,
    'The list tells the rest.',
  ],
  ['a row of a table goes', `| Day | Do |\n| --- | --- |\n| 1 | Call ${contact('keeper')} |\n| 2 | Wait |`, 'DayDo2Wait'],
  ['a cell keeps its other sentences', `| Day | Do |\n| --- | --- |\n| 1 | Wait. Call ${contact('keeper')} |`, 'DayDo1Wait.'],
  ['a table whose rows all went goes', `Wait.\n\n| Day | Do |\n| --- | --- |\n| 1 | Call ${contact('keeper')} |`, 'Wait.'],
  ['a day that begins a part of the year has a date', 'Decide by <Day of="fall flow" />. Wait.', 'Decide by . Wait.'],
  ['a day that the club guessed has one', 'Look on <Day of="first drone" />. Wait.', 'Look on . Wait.'],
  ['a day without a date takes its sentence along', 'Be done by <Day of="last syrup" />. Wait.', 'Wait.'],
  ['an item goes with what is below it', `- Call ${contact('keeper')}.\n\n  By day only.\n- Wait.`, 'Wait.'],
  ['a figure that holds here stays', 'It takes <Figure id="here" /> days. Wait.', 'It takes  days. Wait.'],
  ['a figure that holds elsewhere goes', 'It takes <Figure id="elsewhere" /> days. Wait.', 'Wait.'],
  ['a row that is not here goes', 'It takes <Figure id="here" row="theirs" /> days. Wait.', 'Wait.'],
  ['a figure that is nowhere goes', 'It takes <Figure id="nowhere" /> days. Wait.', 'Wait.'],
  ['a poison line that nobody gave goes', 'Call <Line of="poison" />. Wait.', 'Wait.'],
  ['the emergency number never goes', 'Call <Line of="emergency" />. Wait.', 'Call . Wait.'],
] as const)
  test(what, () => assert.equal(left(text), found));

test('a tree without a gap is the same tree', () => {
  const tree = parseProse(`Call ${contact('inspector')}. Wait.`);
  assert.equal(withoutGaps(tree, known), tree);
});

test('normals, or dates of members, may date every day', () => {
  assert.ok(daysKnown({ climate: {} })('last-syrup') && daysKnown({ observed: [] })('last-syrup'));
  assert.equal(daysKnown({})('last-syrup'), false);
});

test('everything that is missing is counted, whether words take its place or not', () => {
  const text = `${contact('doctor')} ${contact('keeper')} ${contact('inspector')} <Figure id="elsewhere" /> <Line of="poison" />\n\n<Local id="written" />\n\n<Local id="unwritten" />`;
  const entry = { fields: { value: { ask: 'mentor' } }, tree: parseProse(text) } as unknown as Entry;
  assert.deepEqual(gapsIn(entry, known), ['mentor', 'doctor', 'keeper', 'figure elsewhere', 'poison line', 'unwritten']);
});
