/* Translations: a file x.es.mdx gives words alone, all else stays that of the original, and what could mislead is not shown. */
import assert from 'node:assert/strict';
import { fileURLToPath } from 'node:url';
import { test } from 'vitest';
import { check, checkFolder, hintsOf } from '../../../src/checks/check.ts';
import { foundIn } from '../../../src/checks/drafts.ts';
import { formatDiagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder, type Entry, type Folder } from '../../../src/source/folder.ts';
import { hashOfOriginal } from '../../../src/source/translations.ts';
import { writtenAt } from '../../../src/source/page-files.ts';
import { headingIds, plainText } from '../../../src/source/prose.ts';
import { edit, withClub } from './layered.ts';

type Files = Readonly<Record<string, string>>;

/** A club over the books of the fixtures, in a language. */
const read = (language: string, files: Files, land = 'US-OH'): Folder =>
  withClub(land, files, (directory) => {
    edit(directory, 'club.yaml', 'language: en-US', `language: ${language}`);
    return readFolder(directory);
  });
const inEnglish = (files: Files): Folder =>
  withClub('US-OH', { 'club.yaml': 'also-in: [es]\n', ...files }, (directory) => readFolder(directory));
const of = (entries: readonly Entry[], name: string): Entry => entries.find(({ collection, id }) => `${collection}/${id}` === name)!;
const wordsOf = (entry: Entry): string => plainText(entry.tree!);
const valueOf = (entry: Entry): Record<string, unknown> => entry.fields.value as Record<string, unknown>;
const faultsIn = (folder: Folder): string[] => foundIn(folder).translations.map(formatDiagnostic);

const SWARMS = `---
title: Enjambres
summary: Una colonia llena se divide en primavera.
---
Un enjambre cuelga quieto. Por un enjambre llame a <Contact duty="swarm-line" />. Déjelo en paz.

## Cuánto tiempo

Se queda <Figure id="swarm-hours" />. Pesa <Figure id="swarm-weight" />.

- Manténgase lejos.
- Llame a <Contact duty="swarm-line" /> enseguida.

## La regla aquí

<Local id="registering-hives" />
`;
const STINGS = `heading: Cuidado con el aguijón
line: Saque el aguijón enseguida.
says:
  - Saque el aguijón.
  - Observe a la persona.
`;

test('in a Spanish club a translated page has its own words, and all else is that of the original', () => {
  const folder = read('es-US', { 'articles/swarms.es.mdx': SWARMS });
  assert.deepEqual(faultsIn(folder), []);
  const swarms = of(folder.entries, 'articles/swarms');
  assert.equal(valueOf(swarms).title, 'Enjambres');
  assert.equal(valueOf(swarms).ask, 'swarm-line');
  assert.equal(valueOf(swarms).checked, '2026-04-18');
  assert.equal(swarms.tongue, 'es');
  assert.match(wordsOf(swarms), /Cuánto tiempo/);
  assert.deepEqual([...headingIds(swarms.tree!).values()], ['how-long', 'the-rule-here']);
});

test('the sentences of a translation that the club cannot complete are left out like those of the original', () => {
  const swarms = of(read('es-US', { 'articles/swarms.es.mdx': SWARMS }).entries, 'articles/swarms');
  assert.match(wordsOf(swarms), /Un enjambre cuelga quieto\. Déjelo en paz\./);
  assert.doesNotMatch(wordsOf(swarms), /enseguida/);
});

test('a page without a translation stays in the language of its book', () =>
  assert.equal(of(read('es-US', {}).entries, 'articles/swarms').tongue, 'en'));

test('an English club reads its pages in English, and offers the translated ones beside them', () => {
  const folder = inEnglish({ 'articles/swarms.es.mdx': SWARMS, 'articles/stings.es.mdx': '---\ntitle: Picaduras\n---\n' });
  assert.equal(valueOf(of(folder.entries, 'articles/swarms')).title, 'Swarms');
  const spanish = folder.alsoIn.get('es')!;
  assert.equal(valueOf(of(spanish, 'articles/swarms')).title, 'Enjambres');
  assert.equal(of(spanish, 'words/skep').tongue, 'en');
  assert.equal(read('en-US', { 'articles/swarms.es.mdx': SWARMS }).alsoIn.size, 0);
});

test('what the club adds stays below a translation, and says in which language it is', () => {
  const added = '---\nchecked: 2026-05-01\nnext-check: 2027-05-01\nby: mentor\n---\nRing the bell.\n';
  const spanish = inEnglish({ 'articles/swarms.es.mdx': SWARMS, 'articles/swarms.add.mdx': added }).alsoIn.get('es')!;
  const swarms = of(spanish, 'articles/swarms');
  assert.match(wordsOf(swarms), /Un enjambre.*In our clubRing the bell\./s);
  const langs = swarms.tree!.children.map(({ data }) => (data as { hProperties?: { lang?: string } } | undefined)?.hProperties?.lang);
  assert.deepEqual(langs.filter(Boolean), ['en', 'en']);
  assert.deepEqual([...headingIds(swarms.tree!).values()], ['how-long', 'the-rule-here', 'in-our-club']);
});

test('a mistake in the words of a translation is looked for in its own file', () =>
  assert.deepEqual(writtenAt(of(read('es-US', { 'articles/swarms.es.mdx': SWARMS }).entries, 'articles/swarms'), 13), {
    path: 'articles/swarms.es.mdx',
    line: 5,
  }));

test('rows are those of the same id, and the figures in them stay', () => {
  const folder = read('es-US', {
    'figures/swarm-hours.es.yaml': 'title: Horas de un enjambre\nrows:\n  - id: hand-book\n    place: En todas partes\n',
  });
  assert.deepEqual(faultsIn(folder), []);
  const figure = valueOf(of(folder.entries, 'figures/swarm-hours'));
  assert.equal(figure.title, 'Horas de un enjambre');
});

/** A translation, what is changed in it, and the line and the words of the fault. */
const FAULTY: readonly (readonly [what: string, change: (text: string) => string, fault: RegExp])[] = [
  ['a tag is missing', (text) => text.replace(' Pesa <Figure id="swarm-weight" />.', ''), /:11:1 translation: the words: found a line of a list; write <Figure id="swarm-weight">/],
  ['two figures are exchanged', (text) => text.replace('swarm-hours', 'x').replace('swarm-weight', 'swarm-hours').replace('"x"', '"swarm-weight"'), /:9:10 .*found <Figure id="swarm-weight">; write <Figure id="swarm-hours">, which the original has here \(line 17\)/],
  ['a line of a list is missing', (text) => text.replace('- Manténgase lejos.\n', ''), /found <Contact duty="swarm-line">; write a line of a list/],
  ['a heading is of another level', (text) => text.replace('## La regla', '### La regla'), /found a heading "###"; write a heading "##"/],
  ['a number is added', (text) => text.replace('quieto', 'quieto 3 días'), /:5:1 .*found the number 3; write only numbers of the original/],
  ['a field is no text', (text) => text.replace('title:', 'ask: mentor\ntitle:'), /:2:6 translation: ask: found "ask", a field that is not translated; write nothing/],
  ['a field is misspelt', (text) => text.replace('summary:', 'sumary:'), /found "sumary", a field that is not translated; write "summary"|write nothing/],
  ['a comment would be read', (text) => text.replace('quieto.', 'quieto. <!-- x -->'), /found "<!--"/],
  ['a text is blank', (text) => text.replace('title: Enjambres', 'title:'), /title: found a blank; write a text/],
  ['a tag is not closed', (text) => text.replace('<Local id="registering-hives" />', '<Local id="registering-hives">'), /tag: a tag/],
]; // prettier-ignore

for (const [what, change, fault] of FAULTY)
  test(`the original is shown and the build goes on where ${what}`, () => {
    const folder = read('es-US', { 'articles/swarms.es.mdx': change(SWARMS) });
    assert.notEqual(change(SWARMS), SWARMS);
    const found = faultsIn(folder);
    assert.ok(
      found.some((each) => each.startsWith('articles/swarms.es.mdx') && fault.test(each)),
      found.join('\n') || 'no fault',
    );
    assert.equal(valueOf(of(folder.entries, 'articles/swarms')).title, 'Swarms');
    assert.deepEqual(
      foundIn(folder)
        .faults.map(formatDiagnostic)
        .filter((each) => each.includes('swarms')),
      [],
    );
  });

test('a caution with fewer sentences, or with a text in another language, is not shown', () => {
  const says = (text: string): string[] => faultsIn(read('es-US', { 'cautions/stings.es.yaml': text }));
  assert.match(says(STINGS.replace('  - Observe a la persona.\n', ''))[0]!, /says: found 1 of \d+ sentences/);
  assert.match(says(STINGS.replace(/^line.*\n/m, '')).join('\n'), /line: found nothing; write "line:"/);
});

test('a translation without an original, or of what is never translated, is a fault', () => {
  const found = faultsIn(
    read('es-US', { 'articles/lost.es.mdx': SWARMS, 'meetings/2026-06-13-yard-day.es.mdx': '---\ntitle: Día\n---\n' }),
  );
  assert.match(found.join('\n'), /articles\/lost\.es\.mdx:1:1 .*without its original; write articles\/lost\.mdx/);
  assert.match(found.join('\n'), /meetings\/.* translation in meetings\/, which is not translated/);
});

test('a language that the program does not speak is a fault of the name', () =>
  assert.match(
    checkFolder(read('en-US', { 'articles/swarms.xx.mdx': SWARMS }))
      .map(formatDiagnostic)
      .join('\n'),
    /articles\/swarms\.xx\.mdx:1:1 file-name: .*"xx", a language that the program does not speak; write one of: en, es/,
  ));

test('the line of: names the text that was translated, and tells when that has changed', () => {
  const folder = read('es-US', { 'articles/swarms.es.mdx': SWARMS });
  const original = of(read('en-US', {}).entries, 'articles/swarms');
  const hash = hashOfOriginal(original);
  const hints = (text: string): string[] =>
    hintsOf(read('es-US', { 'articles/swarms.es.mdx': text }))
      .filter(({ rule }) => rule === 'translation')
      .map(formatDiagnostic);
  assert.match(hintsOf(folder).map(formatDiagnostic).join('\n'), new RegExp(`of: found nothing; write "of: ${hash}"`));
  assert.deepEqual(hints(SWARMS.replace('---\n', `---\nof: ${hash}\n`)), []);
  assert.match(hints(SWARMS.replace('---\n', '---\nof: t0000000\n')).join('\n'), /:2:5 translation: of: found "t0000000", an earlier text/);
  assert.equal(
    hashOfOriginal({ ...original, fields: { ...original.fields, value: { ...valueOf(original), checked: '2030-01-01' } } }),
    hash,
  );
  assert.notEqual(hashOfOriginal({ ...original, body: `${original.body} More.` }), hash);
});

test('the Spanish club of the fixtures has no fault over the books of the program', () =>
  assert.deepEqual(check(fileURLToPath(new URL('../../fixtures/clubs/spanish', import.meta.url))).map(formatDiagnostic), []));
