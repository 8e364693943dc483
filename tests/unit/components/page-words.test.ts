// Words of a page before components draw them: parts, steps, pictures, tables and links, with no word lost.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { codeOf } from '../../architecture/tree.ts';
import { compiled, shownAsHtml } from './compiled.ts';

const shown = async (body: string): Promise<string> => shownAsHtml(await compiled(body));
const WIDE = '<picture url="wide.jpg" alt="Capped brood"></picture>';
const TALL = '<picture url="tall.jpg" alt="A cell"></picture>';

for (const [name, body, html] of [
  ['words before the first heading are the opening', 'Words.', '<opening><p>Words.</p></opening>'],
  [
    'a heading with what is under it is a part',
    'Words.\n\n## Then & now\n\nMore.\n\n### Deeper\n\n## Last',
    '<opening><p>Words.</p></opening><part><h2 id="then-now">Then &#x26; now</h2><p>More.</p><h3 id="deeper">Deeper</h3></part><part><h2 id="last">Last</h2></part>',
  ],
  [
    'a picture alone, before every heading, is fetched at once',
    '![Capped brood](wide.jpg)',
    '<opening><picture url="wide.jpg" alt="Capped brood" early="early"></picture></opening>',
  ],
  ['a picture below a heading is not', '## Then\n\n![A cell](tall.jpg)', `<opening></opening><part><h2 id="then">Then</h2>${TALL}</part>`],
  [
    'the words below a picture are words',
    '## Then\n\n![Capped brood](wide.jpg "Seen in *May*, 5 < 6")',
    '<opening></opening><part><h2 id="then">Then</h2><picture url="wide.jpg" alt="Capped brood" title="Seen in *May*, 5 < 6"></picture></part>',
  ],
  [
    'a picture on a line between lines parts them',
    '## Then\n\nBefore *it*.\n![Capped brood](wide.jpg)\nBehind it.',
    `<opening></opening><part><h2 id="then">Then</h2><p>Before <em>it</em>.</p>${WIDE}<p>Behind it.</p></part>`,
  ],
  [
    'a picture after a forced end of line',
    '## Then\n\nBefore.\\\n![Capped brood](wide.jpg)',
    `<opening></opening><part><h2 id="then">Then</h2><p>Before.</p>${WIDE}</part>`,
  ],
  [
    'two pictures on one line',
    '## Then\n\n![Capped brood](wide.jpg) ![A cell](tall.jpg)',
    `<opening></opening><part><h2 id="then">Then</h2>${WIDE}${TALL}</part>`,
  ],
  [
    'a picture in a list',
    '## Then\n\n- One\n\n  ![Capped brood](wide.jpg)\n\n- Two',
    `<opening></opening><part><h2 id="then">Then</h2><ul><li><p>One</p>${WIDE}</li><li><p>Two</p></li></ul></part>`,
  ],
  [
    'a picture whose file has spaces in its name',
    '## Then\n\nBefore ![Capped brood](My hive (1).JPG "May") behind.',
    '<opening></opening><part><h2 id="then">Then</h2><p>Before</p><picture url="My hive (1).JPG" alt="Capped brood" title="May"></picture><p>behind.</p></part>',
  ],
  [
    'tags on lines of their own stay one sentence, a drawing stands by itself',
    '<Figure id="a" />\n<Contact duty="inspector" />\n\n<Drawing name="egg" />',
    '<opening><p><figure id="a"></figure> <contact duty="inspector"></contact></p><drawing name="egg"></drawing></opening>',
  ],
  [
    'a link or an example by itself says so',
    '[Here](/pests/).\n\nSee [there](/pests/).\n\n<Example tool="syrup">Mix</Example>',
    '<opening><p><a href="/pests/" class="alone">Here</a>.</p><p>See <a href="/pests/">there</a>.</p><p><example tool="syrup" alone="alone">Mix</example></p></opening>',
  ],
  [
    'a table has its alignment as a class, and no style',
    '| | Day |\n| :-- | --: |\n| Egg | 3 |',
    '<opening><div class="scroll-x" role="region" tabindex="0" aria-label="Table: Day"><table class="table"><thead><tr><td></td><th class="number" scope="col">Day</th></tr></thead><tbody><tr><td>Egg</td><td class="number">3</td></tr></tbody></table></div></opening>',
  ],
  [
    'a step has its words in a slot, the verb first, and its reason below',
    '## Pause\n\n- [ ] Look for eggs <Task id="eggs" time="5 min" />\n\n  ![A cell](tall.jpg)\n- [ ] Close <Task id="close" />\n',
    '<opening></opening><part><h2 id="pause">Pause</h2><ul class="steps">' +
      `<step id="eggs" time="5 min" below="below"><span slot="words" class="step-words"><strong>Look</strong> for eggs<span class="step-time"> (5 min)</span></span>${TALL}</step>` +
      '<step id="close"><span slot="words" class="step-words"><strong>Close</strong></span></step></ul></part>',
  ],
  [
    'the first words of the field test are there once more, for the page of signs',
    'Words.\n\n## The field test\n\n![A cell](tall.jpg)\n\n1. Draw <Figure id="a" />.\n2. Look.',
    `<opening><p>Words.</p></opening><part><h2 id="the-field-test">The field test</h2>${TALL}<ol><li>Draw <figure id="a"></figure>.</li><li>Look.</li></ol></part><fieldtest>Draw <figure id="a"></figure>.</fieldtest>`,
  ],
  ['a letter that an address must not have stays as typed', '[a](#käse)', '<opening><p><a href="#käse" class="alone">a</a></p></opening>'],
] as const) {
  test(name, async () => assert.equal(await shown(body), html));
}

test('a page knows how many figures are before each text of its place', async () => {
  const { ahead } = await compiled('<Local id="first" />\n\nAt <Figure id="a" />.\n\n<Local id="second" />\n\nAnd <Figure id="b" />.\n');
  assert.deepEqual(JSON.parse(JSON.stringify(ahead.locals)), [
    { id: 'first', after: 0 },
    { id: 'second', after: 1 },
  ]);
});

test('a page knows its figures in reading order, those of the field test, and its parts with their steps in advance', async () => {
  const { ahead } = await compiled(
    'At <Figure id="a" row="x" />.\n\n## The field test\n\nDraw <Figure id="b" />.\n\n## Then\n\n- [ ] Look <Task id="look" /> <Figure id="c" />\n- [ ] Close <Task id="close" />\n',
  );
  assert.deepEqual(JSON.parse(JSON.stringify(ahead)), {
    figures: [{ id: 'a', row: 'x' }, { id: 'b' }, { id: 'c' }],
    testFigures: [{ id: 'b' }],
    locals: [],
    parts: [
      { id: 'the-field-test', words: 'The field test', steps: 0 },
      { id: 'then', words: 'Then', steps: 2 },
    ],
  });
});

test('the page supplies each tag that the compiled words need', async () => {
  const { code } = await compiled(
    '![A](a.jpg)\n\n<Figure id="a" /> <Contact duty="a" /> <Example tool="a">b</Example>\n\n<Drawing name="a" />\n\n## The field test\n\nWords.\n\n- [ ] Look <Task id="a" />',
  );
  const asked = new Set([...code.matchAll(/_missingMdxReference\("(\w+)"/g)].map(([, name]) => name!));
  const handed = /const shared = \{([^}]*)\}/.exec(codeOf('src/components/mdx/tags.ts'))![1]!.match(/\w+(?=[,:\s]|$)/g)!;
  assert.ok(asked.size >= 9, [...asked].join(' '));
  for (const map of ['tags', 'fieldTestTags']) {
    const own = new RegExp(`export const ${map} = \\{\\s*([^}]*)\\}`).exec(codeOf('src/components/mdx/tags.ts'))![1]!;
    assert.deepEqual(
      [...asked].filter((name) => !handed.includes(name) && !new RegExp(`\\b${name}\\b`).test(own)),
      [],
      map,
    );
  }
});
