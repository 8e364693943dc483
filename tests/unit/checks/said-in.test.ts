/* Names of offices within a sentence of a language that has an article before them. */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { checkFolder, hintsOf } from '../../../src/checks/check.ts';
import { formatDiagnostic, type Diagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder, type Folder } from '../../../src/source/folder.ts';
import { edit, withClub } from '../source/layered.ts';

/** What a club over the books of the fixtures is told. `also` is added to its club.yaml, and then each change is made there. */
const told = (what: (folder: Folder) => Diagnostic[], also: string, change: [from: string, to: string][] = []): string[] =>
  withClub('US-OH', { 'club.yaml': also }, (directory) => {
    for (const [from, to] of change) edit(directory, 'club.yaml', from, to);
    return what(readFolder(directory)).map(formatDiagnostic);
  });
const hints = (also: string, change: [from: string, to: string][] = []): string[] =>
  told(hintsOf, also, change).filter((line) => line.includes('said-in'));

test('an almanac that is offered in Spanish, or is Spanish, lacks the Spanish names of its offices', () => {
  const [line, ...more] = hints('also-in: [es]\n');
  assert.deepEqual(more, []);
  assert.match(
    line!,
    /^club\.yaml:\d+:\d+ contact: contacts 1: found no name for a sentence in Spanish of "inspector".*; write "said-in:" and below it "es:" with the name and its article, such as "la oficina de extensión"$/,
  );
  assert.equal(hints('', [['language: en-US', 'language: es-US']]).length, 1);
  assert.deepEqual(hints(''), []);
});

test('a name that begins with "el" is refused, because "a" and "el" are one word', () => {
  const faults = (name: string): string[] =>
    told(checkFolder, '', [['  - duty: inspector\n', `  - duty: inspector\n    said-in:\n      es: ${name}\n`]]);
  assert.equal(faults('el médico').length, 1);
  assert.match(faults('el médico')[0]!, /said-in.*does not begin with "el"/);
  assert.deepEqual(faults('la oficina de inspección'), []);
  assert.deepEqual(faults('Elk office'), []);
});
