import assert from 'node:assert/strict';
import { test } from 'vitest';
import { isPage } from '../../../src/checks/place.ts';
import { withIds } from '../../../src/checks/task-ids.ts';
import { readText } from '../../../src/source/folder.ts';
import type { Diagnostic } from '../../../src/source/diagnostic.ts';

const HEAD = '---\ntitle: A list\n---\n## One\n\n';

function written(body: string, ends = '\n'): string {
  const text = HEAD + body;
  const page = readText('checklists/a.mdx', 'checklists', 'a', text, [] as Diagnostic[]);
  assert.ok(page && isPage(page));
  const result = withIds(text.replaceAll('\n', ends), page).text;
  assert.ok(result.startsWith(HEAD.replaceAll('\n', ends)));
  return result.slice(HEAD.replaceAll('\n', ends).length);
}

test('an id has a few of the first words, at most 24 letters', () => {
  assert.equal(
    written('- [ ] Close the entrance to two fingers, then walk away\n'),
    '- [ ] Close the entrance to two fingers, then walk away <Task id="close-the-entrance-to" />\n',
  );
  assert.equal(written('- [ ] Überprüfe 2 l of "syrup"\n'), '- [ ] Überprüfe 2 l of "syrup" <Task id="uberprufe-2-l-of-syrup" />\n');
  assert.equal(
    written('- [ ] Antidisestablishmentarianism first\n'),
    '- [ ] Antidisestablishmentarianism first <Task id="antidisestablishmentaria" />\n',
  );
});

test('an id differs from every old or new id of the file', () => {
  assert.equal(
    written('- [ ] Wait\n- [ ] Wait\n- [ ] Go <Task id="wait" />\n- [ ] Look <Figure id="wait-3" />\n'),
    '- [ ] Wait <Task id="wait-2" />\n- [ ] Wait <Task id="wait-4" />\n- [ ] Go <Task id="wait" />\n- [ ] Look <Figure id="wait-3" /> <Task id="look" />\n',
  );
});

test('nothing else changes: reasons, spaces, line ends', () => {
  assert.equal(
    written('- [ ] Wait\n  for it  \n\n  A reason.\n\n- plain\n'),
    '- [ ] Wait\n  for it <Task id="wait-for-it" />\n\n  A reason.\n\n- plain\n',
  );
  assert.equal(written('- [ ] Wait\n\nEnd.\n', '\r\n'), '- [ ] Wait <Task id="wait" />\r\n\r\nEnd.\r\n');
  const whole = '- [ ] Wait <Task id="wait" />\n';
  assert.equal(written(whole), whole);
});
