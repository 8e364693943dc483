// Line of a withdrawal: it parses to what was written, and every other byte of the file stays.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { withdrawnLine, withdrawnLineIn, withWithdrawnLine } from '../../../src/cli/withdrawn-line.ts';
import { readText } from '../../../src/source/folder.ts';
import type { Diagnostic } from '../../../src/source/diagnostic.ts';

const DAY = '2026-05-14';
const reasons = [
  'the field test on this page can mislead',
  'see the label: #3, not "#2"',
  "it's wrong # really",
  'a colon at the end:',
  'back\\slash and {brace} [list]',
  '“curly” words, an é and a bee 🐝',
  '- a dash',
];

const files: [path: string, text: string][] = [
  ['articles/swarms.mdx', '---\ntitle: Swarms # a remark\n---\n\nWords: - [ ] {x}\n'],
  ['articles/marked.mdx', '\uFEFF---\r\n# a remark\r\ntitle: Swarms\r\n---\r\nWords\r\n'],
  ['words/brood.yaml', '# a remark\nword: brood'],
  ['words/parted.yaml', '---\nword: brood\n'],
  ['counts/2026.csv', '# title: Counts\ndate;district;mites;bees;method\n2026-05-01;valley;3;300;wash\n'],
];

for (const [path, text] of files)
  for (const why of reasons)
    test(`${path}: ${why}`, () => {
      const bytes = Buffer.from(text);
      const line = withdrawnLine(path, DAY, why);
      const made = withWithdrawnLine(path, bytes, line);
      const end = text.includes('\r\n') ? '\r\n' : '\n';
      assert.equal(made.toString().replace(`${line}${end}`, ''), text, 'nothing else changed');
      assert.equal(withdrawnLineIn(path, bytes), null);
      assert.equal(withdrawnLineIn(path, made), line.trimEnd());
      const faults: Diagnostic[] = [];
      const [collection, file] = path.split('/') as [string, string];
      const plain = made
        .toString()
        .replace(/^\uFEFF/, '')
        .replace(/\r\n/g, '\n');
      const entry = readText(path, collection, file.replace(/\..*/, ''), plain, faults);
      assert.deepEqual(faults, []);
      assert.equal((entry!.fields.value as { withdrawn: string }).withdrawn, `${DAY}, ${why}`);
    });

test('bytes that are no UTF-8 stay as they are', () => {
  const bytes = Buffer.from('---\ntitle: Caf\xe9\n---\n', 'latin1');
  const made = withWithdrawnLine('articles/cafe.mdx', bytes, 'withdrawn: 2026-05-14, é');
  assert.ok(made.includes(bytes.subarray(4)));
  assert.ok(made.includes(Buffer.from('withdrawn: 2026-05-14, é\n')));
});

test('a page without its first line gets it', () =>
  assert.equal(
    withWithdrawnLine('articles/x.mdx', Buffer.from('title: X\n---\nWords\n'), 'withdrawn: 2026-05-14, why').toString(),
    '---\nwithdrawn: 2026-05-14, why\ntitle: X\n---\nWords\n',
  ));

test('the word in the text of a page, or in a nested field, is no withdrawal', () => {
  assert.equal(withdrawnLineIn('articles/x.mdx', Buffer.from('---\ntitle: X\nlaw:\n  withdrawn: no\n---\nwithdrawn: yes\n')), null);
});
