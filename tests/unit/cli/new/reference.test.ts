// docs/reference.md is the current output of the generator, and the generator's own lists are complete.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import { FORMS } from '../../../../src/checks/tags.ts';
import { referenceText, TAG_MEANINGS, WHEN_FORMS } from '../../../../src/cli/new/reference.ts';
import { projectFolder } from '../../../../src/cli/paths.ts';
import { TAGS } from '../../../../src/source/tag-syntax.ts';
import { collectionNames } from '../../../../src/schemas/collections.ts';
import { readWhen } from '../../../../shared/season/when.ts';

const text = referenceText();

test('docs/reference.md is up to date', () => {
  const written = readFileSync(join(projectFolder, 'docs/reference.md'), 'utf8').replaceAll('\r\n', '\n');
  assert.equal(written, text, 'run: node src/cli/reference.ts');
});

test('every collection has a part with a table of at least one field', () => {
  for (const name of collectionNames) {
    const part = text.split(/^## /m).find((each) => each.startsWith(`${name}\n`)) ?? assert.fail(`no part ${name}`);
    assert.match(part, /^\| `[^`]+` \| (yes|no) \| .+ \|$/m, name);
  }
});

test('every field has a meaning', () => {
  assert.deepEqual(
    text.split('\n').filter((line) => /^\| `[^`]+` \| (yes|no) \|\s+\|/.test(line)),
    [],
  );
});

test('each tag explains exactly the attributes that the check allows', () => {
  for (const tag of TAGS)
    assert.deepEqual(Object.keys(TAG_MEANINGS[tag].attributes).toSorted(), [...FORMS[tag].must, ...FORMS[tag].may].toSorted(), tag);
});

test('each form of when can be parsed', () => {
  for (const [example] of WHEN_FORMS) assert.ok(readWhen(example).ok, example);
});
