// Editor support: a schema of each kind of YAML file that the demo club matches, and settings that are never overwritten.
import assert from 'node:assert/strict';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import { check } from '../../../../src/checks/check.ts';
import { editorFiles, writeEditorFiles } from '../../../../src/cli/new/editor.ts';
import { projectFolder } from '../../../../src/cli/paths.ts';
import { readFolder } from '../../../../src/source/folder.ts';
import { collections } from '../../../../src/schemas/collections.ts';
import { goodClub } from '../../../fixtures/invalid/cases.ts';
import { wrong } from '../../schemas/json-schema.ts';

const demo = readFolder(join(projectFolder, 'content', 'demo-club'));
const files = new Map(editorFiles().map(({ path, text }) => [path, JSON.parse(text)]));
const settings = files.get('.vscode/settings.json');

test('the settings name a schema for every kind of YAML file, and each exists', () => {
  const globs = Object.entries(settings['yaml.schemas'] as Record<string, string>);
  assert.deepEqual(
    globs.map(([, glob]) => glob),
    [
      'club.yaml',
      ...Object.entries(collections)
        .filter(([, { ending }]) => ending === '.yaml')
        .map(([name]) => `${name}/*.yaml`),
    ],
  );
  for (const [path] of globs) assert.ok(files.has(path.slice(2)), path);
});

for (const kind of ['club', 'words', 'figures', 'sources', 'cautions', 'treatments', 'forage', 'reading', 'signs', 'notices', 'drawings']) {
  const schema = files.get(`.schemas/${kind}.json`);
  const entries = kind === 'club' ? [demo.club!] : demo.entries.filter(({ collection }) => collection === kind);
  test(`${kind}: every file of the demo club matches its schema, and a wrong field does not`, () => {
    assert.ok(entries.length > 0);
    assert.deepEqual(
      entries.flatMap(({ path, fields }) => wrong(schema, fields.value, path)),
      [],
    );
    const value = entries[0]!.fields.value as Record<string, unknown>;
    const [first, ...rest] = schema.required as string[];
    assert.deepEqual(
      new Set(wrong(schema, { ...value, [first!]: undefined, strange: 1 }, 'x')),
      new Set([`x.${first} is undefined, not string`, 'x.strange is not in the schema']),
    );
    assert.match(
      wrong(schema, Object.fromEntries(rest.map((name) => [name, value[name]])), 'x').join(),
      new RegExp(`x\\.${first} is missing`),
    );
  });

  test(`${kind}: every field has an explanation in the editor`, () => {
    for (const [name, field] of Object.entries(schema.properties as Record<string, { description?: string }>))
      assert.match(field.description ?? '', /\.["`]?$/, name);
  });
}

test('schemas are rewritten, changed settings stay, and the club stays valid', () => {
  const folder = mkdtempSync(join(tmpdir(), 'editor-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  cpSync(goodClub, folder, { recursive: true });
  assert.deepEqual(writeEditorFiles(folder), { written: files.size, unchanged: [] });
  writeFileSync(join(folder, '.vscode', 'settings.json'), '{}\n');
  writeFileSync(join(folder, '.schemas', 'words.json'), '{}\n');
  assert.deepEqual(writeEditorFiles(folder), { written: files.size - 1, unchanged: ['.vscode/settings.json'] });
  assert.equal(readFileSync(join(folder, '.vscode', 'settings.json'), 'utf8'), '{}\n');
  assert.deepEqual(JSON.parse(readFileSync(join(folder, '.schemas', 'words.json'), 'utf8')), files.get('.schemas/words.json'));
  assert.deepEqual(check(folder), []);
});
