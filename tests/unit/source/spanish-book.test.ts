/* The Spanish of the books: all cautions, and all that the pages of a package's first weeks show. A translation that is not whole is not shown. */
import assert from 'node:assert/strict';
import { fileURLToPath } from 'node:url';
import { test } from 'vitest';
import { readFolder, type Entry } from '../../../src/source/folder.ts';
import { attribute, isTag, walk, type TagNode } from '../../../src/source/prose.ts';
import { isFit } from '../../../src/source/translation-differences.ts';
import { textsOf } from '../../../src/source/translations.ts';

const folder = readFolder(fileURLToPath(new URL('../../fixtures/clubs/spanish', import.meta.url)));
const nameOf = ({ collection, id }: Entry): string => `${collection}/${id}`;
const shown = new Set(folder.translations.flatMap(({ file, differences }) => (isFit(file, differences) ? nameOf(file) : [])));

/** From the day before the bees come to the first count of mites, and what can go wrong on the way. */
const PAGES = [
  'checklists/package-day-before',
  'checklists/package-arrival',
  'checklists/package-first-six-weeks',
  'checklists/mite-count-day',
  'checklists/swarm-call',
  'checklists/disease-suspected',
  'articles/first-look',
  'articles/make-spring-syrup',
  'articles/feeders',
  'articles/smoke-and-fire',
  'articles/stings',
  'articles/next-hour-after-stings',
  'articles/many-stings',
  'articles/acid-splash',
  'articles/swarms',
  'bulletins/varroa',
  'bulletins/american-foulbrood',
  'bulletins/queenless',
];

test('every caution of the books is in Spanish, with each of its sentences', () => {
  const cautions = folder.entries.filter(({ collection }) => collection === 'cautions').map(nameOf);
  assert.ok(cautions.length >= 15);
  assert.deepEqual(
    cautions.filter((name) => !shown.has(name)),
    [],
  );
});

test.each(PAGES)('%s is in Spanish, with all that it shows', (name) => {
  assert.ok(shown.has(name));
  const page = folder.entries.find((entry) => nameOf(entry) === name)!;
  const held = new Set(folder.entries.map(nameOf));
  const tags = [...walk(page.tree!)].flatMap((node): TagNode[] => (isTag(node) ? [node as TagNode] : []));
  const parts = tags.flatMap((tag) => {
    if (tag.name === 'Figure') return `figures/${attribute(tag, 'id')}`;
    if (tag.name === 'Drawing') return `drawings/${attribute(tag, 'name')}`;
    if (tag.name === 'Caution') return `cautions/${attribute(tag, 'id')}`;
    return tag.name === 'Local' ? `local/${attribute(tag, 'id')}` : [];
  });
  assert.deepEqual(
    parts.filter((part) => held.has(part) && !shown.has(part)),
    [],
  );
});

test('no text uses the signal words of pesticide labels in Spanish', () => {
  // Peligro, aviso, precaución: from memory of labels in two languages; advertencia is the word of the European ones.
  const signal = /\b(?:peligro|aviso|precauci[oó]n|advertencia)(?:s|es)?\b/i;
  const used = folder.translations.flatMap(({ file }) =>
    [...textsOf(file).map(({ text }) => text), file.tree ? file.body : ''].flatMap(
      (text) => signal.exec(text)?.map((word) => `${file.path}: ${word}`) ?? [],
    ),
  );
  assert.deepEqual(used, []);
});
