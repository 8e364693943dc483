// Words of a page can contain anything. Text that check accepts becomes safe elements and our own tags, and no code.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import fc from 'fast-check';
import type { Nodes } from 'hast';
import { check } from '../../../src/checks/check.ts';
import { isTag } from '../../../src/source/prose.ts';
import { goodClub, withChanges } from '../../fixtures/invalid/cases.ts';
import { harmful } from '../../e2e/harmful.ts';
import { compiled } from './compiled.ts';

const ELEMENTS = new Set(
  'a abbr b blockquote br code del div em h2 h3 hr i input li ol p pre section span strong sub sup table tbody td th thead tr ul'.split(
    ' ',
  ),
);
const TAGS = new Set('Caution Contact Day Drawing Example FieldTest Figure Opening Part Picture Step'.split(' '));
const ATTRIBUTES = new Set(
  'className dataFootnotes dataFootnoteRef dataFootnoteBackref ariaLabel ariaDescribedBy role tabIndex id href title scope start type disabled checked colSpan slot'.split(
    ' ',
  ),
);
const OF_TAGS = new Set('id part row of duty name tool with alone url alt title early below time when calendar hazard asks'.split(' '));
const LEADS = /^(\/|#|https?:|mailto:|tel:)/i;

/** Parts that words never need. */
async function strange(body: string): Promise<string[]> {
  const found: string[] = [];
  const look = (node: Nodes): void => {
    if (isTag(node)) {
      if (!TAGS.has(node.name)) found.push(`<${node.name}>`);
      for (const { type, name, value } of node.attributes)
        if (type !== 'mdxJsxAttribute' || !OF_TAGS.has(name) || typeof value !== 'string')
          found.push(`<${node.name} ${name}={${String(value)}}>`);
    } else if (node.type === 'element') {
      const { tagName, properties } = node;
      if (!ELEMENTS.has(tagName)) found.push(`<${tagName}>`);
      for (const [name, value] of Object.entries(properties))
        if (!ATTRIBUTES.has(name)) found.push(`<${tagName} ${name}="${String(value)}">`);
      if (properties.href !== undefined && !LEADS.test(String(properties.href))) found.push(`a link to ${String(properties.href)}`);
    } else if (node.type !== 'root' && node.type !== 'text') found.push(node.type);
    if ('children' in node) (node.children as Nodes[]).forEach(look);
  };
  look((await compiled(body)).tree);
  return found;
}

const head = readFileSync(join(goodClub, 'articles', 'stings.mdx'), 'utf8')
  .replace('formerly: [/know-how/bee-stings/]\n', '')
  .split(/^---$/m)
  .slice(0, 2)
  .join('---');
/** Two pages may not have one title. */
const titled = (at: number): string => head.replace(/^title: .*$/m, `title: Odd words, page ${at}`);
const paragraph = fc
  .tuple(
    fc.constantFrom(
      '',
      '# ',
      '## ',
      '- ',
      '1. ',
      '> ',
      '    ',
      '| a | b |\n| - | - |\n| x | ',
      '[^1]: ',
      '[a]: ',
      '<Figure id="cooling" /> ',
      '[words](',
      '![words](',
      '[words](/know-how/stings/ "',
      '`',
      '**',
      '<',
      '<https://',
      'import ',
      'export const a = ',
      '{',
      '---\nlayout: ',
    ),
    harmful,
    fc.constantFrom('', ')', '")', '`', '**', ' |', '>', '/>', '\n---', '<br>', '</Figure>', '}'),
  )
  .map((parts) => parts.join(''));
const article = fc.array(paragraph, { minLength: 1, maxLength: 2 }).map((lines) => lines.join('\n\n'));

test('generated words are refused or harmless', async () => {
  let drawn = 0;
  let refused = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(article, { minLength: 10, maxLength: 10 }), async (bodies) => {
      const changes = bodies.map((body, at) => ({ file: `articles/odd-${at}.mdx`, write: `${titled(at)}---\n${body}\n` }));
      const faulty = withChanges(changes, (directory) => new Set(check(directory).map(({ path }) => path)));
      for (const [at, body] of bodies.entries()) {
        if (faulty.has(`articles/odd-${at}.mdx`)) refused += 1;
        else {
          drawn += 1;
          assert.deepEqual(await strange(body), [], body);
        }
      }
    }),
    { numRuns: 60 },
  );
  assert.ok(drawn > 50 && refused > 50, `${drawn} drawn, ${refused} refused`);
});

test('the test detects harmful parts', async () => {
  assert.deepEqual(await strange('[words](javascript:planted)'), ['a link to javascript:planted']);
  assert.deepEqual(await strange('Plain words, 1 < 2, {name}, and [a link](/know-how/stings/).'), []);
});

test('a second front matter is text, never a layout', async () => {
  const { code } = await compiled('---\nlayout: planted.astro\n---\n\nWords.');
  assert.doesNotMatch(code, /import[^\n]*planted/);
  assert.ok(code.includes('layout: planted.astro'), code);
});
