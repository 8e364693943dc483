import assert from 'node:assert/strict';
import { test } from 'vitest';
import { entryNamed } from '../../../src/cli/entry-named.ts';

const files = ['articles/stings.mdx', 'bulletins/varroa.mdx', 'club.yaml', 'counts/2026.csv', 'treatments/thymol.yaml', 'words/brood.yaml'];
const pathOf = (typed: string): string => {
  const named = entryNamed(typed, files);
  return named.ok ? named.value.path : named.reason;
};

for (const [typed, path] of [
  ['articles/stings', 'articles/stings.mdx'],
  ['article/stings', 'articles/stings.mdx'],
  ['articles/stings.mdx', 'articles/stings.mdx'],
  ['content/articles/stings.mdx', 'articles/stings.mdx'],
  ['/home/anna/content/treatments/thymol.yaml', 'treatments/thymol.yaml'],
  ['content\\treatments\\thymol.yaml', 'treatments/thymol.yaml'],
  ['/know-how/stings/', 'articles/stings.mdx'],
  ['https://club.example/bees/pests/varroa/#the-field-test', 'bulletins/varroa.mdx'],
  ['/treatments/thymol/', 'treatments/thymol.yaml'],
  ['counts/2026', 'counts/2026.csv'],
] as const)
  test(`${typed} is ${path}`, () => assert.equal(pathOf(typed), path));

for (const [typed, sentence] of [
  ['articles/stigns', 'There is no articles/stigns.mdx; did you mean articles/stings?'],
  ['bulletins/stings', 'There is no bulletins/stings.mdx; did you mean articles/stings?'],
  ['articles/honey', 'There is no articles/honey.mdx.'],
  ['stings', '"stings" is not the name of an entry. Write its folder and its name, such as articles/swarms.'],
  ['club.yaml', '"club.yaml" is not the name of an entry. Write its folder and its name, such as articles/swarms.'],
] as const)
  test(`${typed}: ${sentence}`, () => assert.equal(pathOf(typed), sentence));

test('an unknown folder is answered with the existing ones', () =>
  assert.match(pathOf('photos/hive'), /^There is no folder "photos"; there are: checklists, /));
