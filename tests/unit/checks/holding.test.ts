/* Where the pages of a wide book hold: each rule finds its mistake, and a place for the page or the row clears it. */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { bookYaml, faultsOfBook } from '../source/book-alone.ts';

const REVIEW = 'checked: 2026-05-01\nnext-check: 2027-05-01\nby: book editor\n';
const WRITE = '"for:" with the place, such as US or US-OH, or "for: anywhere" where it holds all the same';

/** The sources of every case. Those that bind say where they hold, so that only the case has a mistake. */
const SOURCES = Object.fromEntries(
  ['paper', 'law', 'label', 'standard'].map((kind) => [
    `sources/a-${kind}.yaml`,
    `who: A body\nyear: 2010\nkind: ${kind}\nseen: itself\n${kind === 'paper' ? '' : 'for: US\n'}`,
  ]),
);

const source = (kind: string): string => `who: A body\nyear: 2011\nkind: ${kind}\nseen: itself\nFOR\n`;
const article = (words: string, { title = 'Swarms', when = '', sources = 'a-paper' } = {}): string =>
  `---\ntitle: ${title}\nsummary: A colony splits.\nsubject: swarms\n${when}yard: false\nsources: [${sources}]\ncertainty: likely\nask: mentor\n${REVIEW}FOR\n---\n${words}\n`;
const checklist = (task: string): string =>
  `---\ntitle: Look\nsummary: Look.\nwhen: in swarming\nwhy: It is time.\nmode: read-do\nyard: false\nsources: [a-paper]\nask: mentor\n${REVIEW}FOR\n---\n## Steps\n\n- [ ] Look ${task}\n`;
const bulletin = (law: string): string =>
  `---\ntitle: Mites\nsummary: Count them.\nkind: mite\nstatus: law\nwhen: in dearth\nwhy: Brood shrinks.\nyard: false\n${law}sources: [a-paper]\ncertainty: settled\nask: mentor\n${REVIEW}---\n## What you see\n\nMites.\n\n## What looks like it\n\nA louse.\n\n## The field test\n\nCount them.\n\n## What to do today\n\nWrite it down.\n\n## What not to do\n\n- Do not guess.\n`;
const figure = (kind: string): string =>
  `title: Weight\nunit: kg\nrows:\n  - id: one\n    value: 2\n    source: a-${kind}\n    place: a land\n    from: 2010-01-01\n    certainty: likely\n    FOR\nfollows: one\n${REVIEW}`;
const caution = (line: string): string =>
  `heading: Ask first when you move bees\ncalls: Ask first\nline: ${line}\nsays:\n  - Ask your inspector.\n  - Wait for the answer.\ndefers: [regulator]\ngravity: 9\nsources: [a-paper]\n${REVIEW}FOR\n`;

/** The text with the line `for:` where it reads FOR, or without that line. */
const placed = (text: string, place?: string): string => text.replace(/^( *)FOR\n/m, place === undefined ? '' : `$1for: ${place}\n`);

const cases: [what: string, path: string, text: string, found: string][] = [
  ...['law', 'label', 'standard'].map((kind): [string, string, string, string] => [
    `a ${kind} among the sources`,
    `sources/rule.yaml`,
    source(kind),
    `3:7 place: kind: found a ${kind} without a place; write ${WRITE}`,
  ]),
  ...['law', 'label', 'standard'].map((kind): [string, string, string, string] => [
    `a row of a figure that rests on a ${kind}`,
    'figures/weight.yaml',
    figure(kind),
    `6:13 place: rows 1, source: found "a-${kind}", a ${kind}, in a row without a place; write ${WRITE}`,
  ]),
  [
    'a page under which a law is named, once however many there are',
    'articles/swarms.mdx',
    article('A swarm hangs still.', { sources: 'a-paper, a-law, a-label' }),
    `6:20 place: sources 2: found "a-law", a law, under a page without a place; write ${WRITE}`,
  ],
  [
    'a country in the words',
    'articles/swarms.mdx',
    article('A swarm hangs still.\n\nIn New Zealand it hangs longer.'),
    `15:4 place: for: found "New Zealand" on a page without a place; write ${WRITE}`,
  ],
  [
    'a state in the words',
    'articles/swarms.mdx',
    article('In Ohio it hangs longer.'),
    `13:4 place: for: found "Ohio" on a page without a place; write ${WRITE}`,
  ],
  [
    'an agency in the words',
    'articles/swarms.mdx',
    article('The EPA has a list.'),
    `13:5 place: for: found "EPA" on a page without a place; write ${WRITE}`,
  ],
  [
    'a state in the title',
    'articles/swarms.mdx',
    article('A swarm hangs still.', { title: 'Swarms in Ohio' }),
    `2:1 place: for: found "Ohio" on a page without a place; write ${WRITE}`,
  ],
  [
    'an agency in a caution',
    'cautions/disease-spread.yaml',
    caution('OSHA has the last word.'),
    `1:1 place: for: found "OSHA" on a page without a place; write ${WRITE}`,
  ],
  [
    'fixed months',
    'articles/swarms.mdx',
    article('A swarm hangs still.', { when: 'when: 1 May to 5 June\n' }),
    '5:7 place: when: found "1 May to 5 June", fixed months in a book of both halves of the world; write a part of the year, such as "in swarming", or "for: north"',
  ],
  [
    'fixed months of one step',
    'checklists/look.mdx',
    checklist('<Task id="look" when="1 May to 5 June" />'),
    '16:12 place: Task, when: found "1 May to 5 June", fixed months in a book of both halves of the world; write a part of the year, such as "in swarming", or "for: north"',
  ],
];

const at = (path: string, text: string, place = 'anywhere'): string[] =>
  faultsOfBook({
    'trial/book.yaml': bookYaml('trial', place),
    ...Object.fromEntries(Object.entries(SOURCES).map(([file, words]) => [`trial/${file}`, words])),
    [`trial/${path}`]: text,
  });

for (const [what, path, text, found] of cases) {
  test(`${what}: found`, () => assert.deepEqual(at(path, placed(text)), [`${path}:${found}`]));
  for (const place of ['anywhere', 'US', '[US, NZ]'])
    test(`${what}: "for: ${place}" clears it`, () => assert.deepEqual(at(path, placed(text, place)), []));
  test(`${what}: no mistake in the book of a country`, () => assert.deepEqual(at(path, placed(text), 'US'), []));
}

const LAW = 'law:\n  - place: Ohio\n    duty: inspector\n    says: Report it.\n    source: a-law\n';

test('a law of a bulletin names its place, whatever its source', () => {
  const path = 'bulletins/mites.mdx';
  assert.deepEqual(at(path, bulletin(LAW)), [`${path}:10:5 place: law 1: found a law without a place; write ${WRITE}`]);
  assert.deepEqual(at(path, bulletin(`${LAW}    for: US-OH\n`)), []);
});

test('a book of one half of the world may name months, and no land', () => {
  const dated = placed(article('A swarm hangs still.', { when: 'when: 1 May to 5 June\n' }));
  assert.deepEqual(at('articles/swarms.mdx', dated, 'north'), []);
  const [fault, ...others] = at('articles/swarms.mdx', placed(article('In Ohio it hangs longer.')), 'north');
  assert.match(fault!, /found "Ohio" on a page without a place/);
  assert.deepEqual(others, []);
});

test('words of lower case, and parts of other words, name no land', () =>
  assert.deepEqual(at('articles/swarms.mdx', placed(article('A turkey eats bees. Ohioans know it, and so does the HSEX.'))), []));

test('a draft, a page that is withdrawn and the files of a club are not asked', () => {
  const named = placed(article('In Ohio it hangs longer.'));
  assert.deepEqual(at('articles/swarms.mdx', named.replace('yard:', 'draft: true\nyard:')), []);
  assert.deepEqual(at('articles/swarms.mdx', named.replace('yard:', 'withdrawn: 2026-05-14, it can mislead\nyard:')), []);
});
