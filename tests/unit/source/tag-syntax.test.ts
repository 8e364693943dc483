// One syntax for checks and pages: all typed text stays text, except for the almanac's tags, and both parse it alike.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import type { Nodes as HastNodes } from 'hast';
import type { Nodes } from 'mdast';
import { isTag, parseProse, plainText, walk } from '../../../src/source/prose.ts';
import { TAGS } from '../../../src/source/tag-syntax.ts';
import { rows } from '../../rows.ts';
import { compiled } from '../components/compiled.ts';

const tagsIn = (body: string): string[] => [...walk(parseProse(body))].flatMap((node) => (isTag(node) ? [node.name] : []));

rows(
  'tags seen',
  [
    ['<Figure id="a" />', ['Figure']],
    ['At <Figure id="a" row="b"/> or <Contact duty="c" />.', ['Figure', 'Contact']],
    ['<Example tool="syrup"\n  with="a=1&b=2">words</Example>', ['Example']],
    ['> <Drawing name="egg" />', ['Drawing']],
    ['- [ ] Look <Task id="a" />', ['Task']],
    ['`<Figure id="a" />`', []],
    ['\\<Figure id="a" />', []],
    ['<Figure id="a"', []],
    ['<Figure id=“a” />', []],
    ['<Figure id={a} />', []],
    ['<Figure {...a} />', []],
    ['<Figure id="a" /', []],
    ['<figure id="a" />', []],
    ['<Step id="a" />', []],
    ['<Part>a</Part>', []],
    ['<a.b />', []],
    ['<></>', []],
    ['<script>a</script>', []],
    ['<!-- a -->', []],
    ['<https://example.org>', []],
    ['import a from "b"', []],
    ['export const a = <Figure id="b" />', ['Figure']],
    ['{a}', []],
    ['{/* a */}', []],
  ].map(([given, expect]) => ({
    case: given as string,
    given: given as string,
    expect: expect as string[],
    from: 'the syntax of this almanac',
  })),
  (given, expect) => assert.deepEqual(tagsIn(given), expect),
);

test('one tilde is a character, two strike words out', () => {
  assert.equal(plainText(parseProse('~one~ and 2~3 l')), '~one~ and 2~3 l');
  assert.ok([...walk(parseProse('~~gone~~'))].some(({ type }) => type === 'delete'));
});

const piece = fc.constantFrom(
  '<', '>', '</', '/>', '{', '}', '{a}', '~', '~~', '*', '**', '_', '`', '```\n', '#', '## ', '[', ']', '](', '(', ')', '|', '| - |', '!', '\n', '\n\n', ' ', '- ', '- [ ] ', '> ', '1. ', '---\n',
  'import ', 'export ', 'import a from "b"\n', 'export const a = 1\n', 'a', '5', '&', '&lt;', '\\', '"', '=', '🐝', 'é', '<!--', '-->', '<br>', '<script>', '</script>', '<a href="b">', '<Step>', '<Figure id="a" />',
  '<Figure id="', '<Example tool="syrup">', '</Example>', '<Contact duty="a" />', '<Drawing name="a" />', '<Task id="a" />', '<Example>', '![a](b c.jpg)', 'https://example.org/', 'www.example.org',
); // prettier-ignore

test('checks and pages fail on the same text, and the rest contains only our tags and no code', async () => {
  let good = 0;
  let bad = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(piece, { maxLength: 14 }), async (pieces) => {
      const body = pieces.join('');
      const read = [() => parseProse(body)].map((parse) => {
        try {
          return parse();
        } catch {
          return null;
        }
      })[0]!;
      const made = await compiled(body).catch(() => null);
      assert.equal(made === null, read === null, body);
      if (!read || !made) return void (bad += 1);
      good += 1;
      const types = [...walk(read)].flatMap((node) =>
        isTag(node) ? ((TAGS as readonly string[]).includes(node.name) ? [] : [node.name]) : odd(node),
      );
      assert.deepEqual(types, [], body);
      // Our own imports and Astro's exports are in each module. The words add none.
      assert.doesNotMatch(made.code.replace(/"(?:[^"\\\n]|\\.)*"/g, '""'), /\bimport a\b|\bconst a = 1\b|<script/, body);
    }),
    { numRuns: 600 },
  );
  assert.ok(good > 100 && bad > 5, `${good} compiled, ${bad} refused`);
});

/** Characters that are code in MDX, as people type them. None is Markdown in its place. */
const typed = fc.constantFrom(
  'import', 'export', 'import a from "b"', 'export default {a}', '<3', '<= 20 C', '<name>', '</name>', '<Step />', '<', '>', 'a<b', '{name}', '{{twice}}', '{', '}', '{a.b()}', '${a}', '2~3', '~10', '"quoted"', "it's",
  '5\'10"', '=', '=>', '//', ';', 'bees', '12', '%', '@a', '&', '🐝', 'é', '<!--', '-->', '<?', '<a', 'b>', '<Figures',
); // prettier-ignore

test('MDX code is shown as typed, on the page too', async () => {
  const textOf = (node: HastNodes): string =>
    'value' in node ? node.value : 'children' in node ? node.children.map((child) => textOf(child as HastNodes)).join('') : '';
  await fc.assert(
    fc.asyncProperty(fc.array(fc.array(typed, { minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 3 }), async (lines) => {
      const body = lines
        .map((words) => words.join(' '))
        .filter((line) => !/^[>=]/.test(line))
        .join('\n');
      assert.equal(plainText(parseProse(body)), body);
      assert.equal(textOf((await compiled(body)).tree), body);
    }),
    { numRuns: 200 },
  );
});

const odd = (node: Nodes): string[] => (/^(?:html|mdxjsEsm|mdx(?:Flow|Text)Expression)$/.test(node.type) ? [node.type] : []);
