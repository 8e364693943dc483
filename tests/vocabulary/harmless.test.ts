// Words of a page can hold anything: what check lets through is drawn as elements of a page of words, and as nothing that runs.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import fc from 'fast-check';
import { fromHtml } from 'hast-util-from-html';
import { visit } from 'unist-util-visit';
import { check } from '../../src/checks/check.ts';
import { drawProse } from '../../src/vocabulary/prose.ts';
import type { Surroundings } from '../../src/vocabulary/tags.ts';
import { goodClub, withChanges } from '../faulty/cases.ts';
import { harmful } from '../site/harmful.ts';

const ELEMENTS = new Set(
  'a abbr b blockquote br code del dl div em figcaption figure h2 h3 hr i img input label li ol p pre s section small span strong sub sup table tbody td th thead tr ul'.split(
    ' ',
  ),
);
const ATTRIBUTES = new Set(
  'className dataFootnotes dataFootnoteRef dataFootnoteBackref ariaLabel ariaDescribedBy role tabIndex id href rel scope align start type disabled checked src srcSet sizes width height alt loading decoding colSpan'.split(
    ' ',
  ),
);
const LEADS = /^(\/|#|https?:|mailto:|tel:)/i;

const around = {
  base: '/club/',
  leads: () => true,
  picture: () => null,
  dayOf: () => null,
  window: () => null,
  contact: () => null,
  caution: () => null,
  figure: () => null,
  drawing: () => null,
} as Partial<Surroundings> as Surroundings;

/** What is drawn of it that words have no use for. */
function strange(body: string): string[] {
  const { opening, rest } = drawProse(body, around);
  const found: string[] = [];
  visit(fromHtml(opening + rest, { fragment: true }), 'element', ({ tagName, properties }) => {
    if (!ELEMENTS.has(tagName)) found.push(`<${tagName}>`);
    for (const [name, value] of Object.entries(properties))
      if (!ATTRIBUTES.has(name)) found.push(`<${tagName} ${name}="${String(value)}">`);
    if (properties.href !== undefined && !LEADS.test(String(properties.href))) found.push(`a link to ${String(properties.href)}`);
  });
  return found;
}

const head = readFileSync(join(goodClub, 'articles', 'stings.mdx'), 'utf8')
  .replace('formerly: [/know-how/bee-stings/]\n', '')
  .split(/^---$/m)
  .slice(0, 2)
  .join('---');
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
    ),
    harmful,
    fc.constantFrom('', ')', '")', '`', '**', ' |', '>', '/>', '\n---', '<br>', '</Figure>'),
  )
  .map((parts) => parts.join(''));
const article = fc.array(paragraph, { minLength: 1, maxLength: 2 }).map((lines) => lines.join('\n\n'));

test('generated words: refused, or harmless', () => {
  let drawn = 0;
  let refused = 0;
  fc.assert(
    fc.property(fc.array(article, { minLength: 10, maxLength: 10 }), (bodies) => {
      const changes = bodies.map((body, at) => ({ file: `articles/odd-${at}.mdx`, write: `${head}---\n${body}\n` }));
      const faulty = withChanges(changes, (directory) => new Set(check(directory).map(({ path }) => path)));
      for (const [at, body] of bodies.entries()) {
        if (faulty.has(`articles/odd-${at}.mdx`)) refused += 1;
        else {
          drawn += 1;
          assert.deepEqual(strange(body), [], body);
        }
      }
    }),
    { numRuns: 60 },
  );
  assert.ok(drawn > 50 && refused > 50, `${drawn} drawn, ${refused} refused`);
});

test('what would do harm is seen', () => {
  assert.deepEqual(strange('[words](javascript:planted)'), ['a link to javascript:planted']);
  assert.deepEqual(strange('Plain words, 1 < 2, {name}, and [a link](/know-how/stings/).'), []);
});
