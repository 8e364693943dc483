import assert from 'node:assert/strict';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import { fileURLToPath } from 'node:url';
import { check } from '../../../src/checks/check.ts';
import { fieldFaults } from '../../../src/checks/fields.ts';
import { booksFolder } from '../../../src/source/books-folder.ts';
import { formatDiagnostic, type Diagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder, readText, type Entry } from '../../../src/source/folder.ts';
import { CERTAINTIES, WORK } from '../../../src/schemas/fields.ts';
import { HAZARDS } from '../../../src/schemas/cautions.ts';
import { collectionNames, collections } from '../../../src/schemas/collections.ts';
import { HAZARDS_OF } from '../../../src/schemas/hazards.ts';
import { goodClub, withChanges } from '../../fixtures/invalid/cases.ts';

const content = fileURLToPath(new URL('../../../content/demo-club', import.meta.url));
const good = readFolder(goodClub);
const demo = readFolder(content);

/** The result of the schema for one entry with changed text. */
function alone(entry: Entry, text: string): Diagnostic[] {
  const changed = readText(entry.path, entry.collection, entry.id, text, []);
  assert.ok(changed);
  return fieldFaults({ ...demo, club: null, entries: [changed] });
}

test('the demo club has no fault', () => {
  assert.ok(existsSync(content));
  assert.deepEqual(check(content).map(formatDiagnostic), []);
});

for (const id of readdirSync(booksFolder()))
  test(`the book ${id} has no fault by itself`, () => {
    assert.deepEqual(check(join(booksFolder(), id)).map(formatDiagnostic), []);
  });

// A CSV table has columns instead of fields, and tests/unit/checks covers those.
for (const kind of [...collectionNames.filter((name) => collections[name].ending !== '.csv'), 'club'] as const) {
  const ofGood = kind === 'club' ? good.club : good.entries.find(({ collection }) => collection === kind);
  // Kinds that a small club leaves out are tested in the demo club, entry by entry.
  const entry = ofGood ?? demo.entries.find(({ collection }) => collection === kind);
  test(`${kind}: an unknown field is refused with a similar name`, () => {
    assert.ok(entry, `a club has something in ${kind}/`);
    const field = Object.keys(entry.fields.value as object).find(
      (name) => name.length > 3 && new RegExp(`^${name}: `, 'm').test(entry.text),
    )!;
    const change = { file: entry.path, insteadOf: `${field}: `, write: `${field.slice(1)}: ` };
    const faults = ofGood ? withChanges([change], check) : alone(entry, entry.text.replace(new RegExp(`^${field}: `, 'm'), change.write));
    const message = faults.map(formatDiagnostic).find((line) => line.includes('unknown-field'));
    assert.match(
      message ?? 'nothing',
      new RegExp(
        `^${entry.path}:\\d+:1 unknown-field: ${field.slice(1)}: found a field "${field.slice(1)}" that is not one of this page's; write "${field}"$`,
      ),
    );
  });
}

test('every kind of work brings a hazard, and some work brings every hazard', () => {
  assert.deepEqual(Object.keys(HAZARDS_OF).sort(), [...WORK].sort());
  assert.deepEqual([...new Set(Object.values(HAZARDS_OF).flat())].sort(), [...HAZARDS].sort());
  assert.ok(Object.values(HAZARDS_OF).every((hazards) => hazards.length > 0));
});

test('every figure, treatment row and page states its certainty in one of the same words', () =>
  assert.deepEqual([...CERTAINTIES], ['settled', 'likely', 'contested', 'habit', 'memory']));
