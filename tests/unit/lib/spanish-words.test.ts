/*
 * Spanish words of pages, lists and the book, said with sample values: each sentence is whole, has no English word, and leads to the same
 * places as the English one. Whether the Spanish is good is for a reader: docs/glossary-es.md.
 */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { files } from '../../architecture/tree.ts';

const ROOMS = /^src\/(?:lib|pages|paper|integration)\/.*\.es\.ts$|^src\/components\/(?:text|PestCard|SignPoints)\.es\.ts$/;
/** Rooms with tests of their own, whose functions take other values. */
const ELSEWHERE =
  /\/(?:calculator-figures|climate-words|counts|next-steps|own-events|stores-figures|tools|treatment-[\w-]+|weight-rules)\.es\.ts$|^src\/pages\/(?:_?(?:card|counts|hall|hand-out|search|signs)|lists|treatments|work-it-out)/;

/** Values for functions that take more than texts and numbers. */
const SAMPLES: Readonly<Record<string, readonly unknown[]>> = {
  bases: [['uno', 'dos']],
  bring: [['velo', 'guantes']],
  fromMemory: [['tira'], 2],
  gives: [['nectar', 'pollen']],
  inSentence: ['La oficina'],
  inPhases: [['escasez de flores']],
  languages: [['inglés']],
  madeUp: [['911', '112']],
  moreOn: ['acids'],
  notOpened: [null, 2],
  notThere: [{ always: '3', often: '2', sometimes: '1' }],
  pointsTo: ['strong'],
  range: [['1', '2']],
  reading: [{ articles: 3, words: 3, figures: 3 }],
  stageHead: ['en flor'],
  sum: [{ isFull: true, degreeDays: 42, base: '50 F', cap: '86 F', from: '1 de enero', method: 'sine' }],
};
const PLAIN = [7, 7, 7, 7];

/** Every text of a module by its name, with functions called. */
function textsOf(value: unknown, name: string): [name: string, text: string][] {
  if (typeof value === 'string') return [[name, value]];
  if (typeof value === 'function') return textsOf(said(value as (...values: unknown[]) => unknown, name), name);
  if (typeof value !== 'object' || value === null || value instanceof RegExp) return [];
  return Object.entries(value).flatMap(([key, each]) => textsOf(each, `${name}.${key}`));
}

const said = (speak: (...values: unknown[]) => unknown, name: string): unknown => speak(...(SAMPLES[name.split('.').at(-1)!] ?? PLAIN));

/** What a text leads to, and what is put into it. */
const places = (text: string): string[] => [...text.matchAll(/\]\((\w[\w-]*)\)|\{(\w+)\}/g)].map(([found]) => found).sort();

const spanish = files('src').filter((path) => ROOMS.test(path) && !ELSEWHERE.test(path));

test('there are words to look at', () => assert.ok(spanish.length > 30, `${spanish.length} files`));

test.for(spanish)('%s', async (path) => {
  const [es, en] = (await Promise.all(
    [path, path.replace('.es.ts', '.en.ts')].map((each) => import(/* @vite-ignore */ `../../../${each}`)),
  )) as Record<string, unknown>[];
  const english = new Map(textsOf(en, ''));
  for (const [name, text] of textsOf(es, '')) {
    assert.doesNotMatch(text, /undefined|NaN|\[object|\$\{/, name);
    assert.doesNotMatch(text, /\b(?:the|of|and|with|your|is|from|this)\b/i, name);
    assert.deepEqual(places(text), places(english.get(name) ?? ''), `${path}${name}: ${text}`);
  }
});
