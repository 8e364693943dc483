/* Drafts never stop a build. Their mistakes are listed separately, and a link from a published page to a draft is still a fault. */
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import { fileURLToPath } from 'node:url';
import { draftsLine, foundIn, type Found } from '../../../src/checks/drafts.ts';
import { formatDiagnostic, type Diagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { withChanges, type Change } from '../../fixtures/invalid/cases.ts';

const project = fileURLToPath(new URL('../../../', import.meta.url));
const found = (changes: Change[]): Found => withChanges(changes, (directory) => foundIn(readFolder(directory)));
const rules = (faults: readonly Diagnostic[]): string[] => faults.map(({ path, rule }) => `${path} ${rule}`);

const draft = (name: string, fields: string, words = 'Words.'): Change => ({
  file: `articles/${name}.mdx`,
  write: `---\ndraft: true\n${fields}\n---\n\n${words}\n`,
});
const BLANKS = draft('begun', 'title: Begun\nsummary:\nsubject:', '<Figure id="none" /> [away](/pests/none/)');
const MISTYPED: Change = { file: 'meetings/2026-06-13-yard-day.mdx', insteadOf: 'day: 2026-06-13', write: 'day: 6/13/26' };

test('blanks, unknown figures and dead links of a draft stop nothing', () => {
  const { faults, drafts } = found([BLANKS]);
  assert.deepEqual(faults, []);
  assert.deepEqual([...new Set(drafts.map(({ path }) => path))], ['articles/begun.mdx']);
  for (const rule of ['field', 'missing-field', 'reference', 'link']) assert.ok(rules(drafts).includes(`articles/begun.mdx ${rule}`), rule);
});

test('a fault in another file stops the build, beside a draft with blanks', () => {
  const { faults, drafts } = found([BLANKS, MISTYPED]);
  assert.deepEqual(rules(faults), ['meetings/2026-06-13-yard-day.mdx field']);
  assert.ok(drafts.length > 3 && drafts.every(({ path }) => path === 'articles/begun.mdx'));
});

test('a draft with unreadable fields, words, encoding or front matter stops nothing', () => {
  const unread: Change[] = [
    { file: 'articles/quote.mdx', write: '---\ntitle: "Open\ndraft: true\n---\nWords.\n' },
    { file: 'articles/tag.mdx', write: '---\ntitle: Tag\ndraft: true\n---\n<Figure id="sample">\n' },
    { file: 'articles/end.mdx', write: '---\ntitle: No end\ndraft: true\nWords.\n' },
  ];
  withChanges(unread, (directory) => {
    writeFileSync(join(directory, 'articles', 'letters.mdx'), Buffer.from('---\ntitle: Caf\xe9\ndraft: true\n---\nWords.\n', 'latin1'));
    const { faults, drafts } = foundIn(readFolder(directory));
    assert.deepEqual(faults.map(formatDiagnostic), []);
    assert.deepEqual([...new Set(drafts.map(({ path }) => path))].sort(), [
      'articles/end.mdx',
      'articles/letters.mdx',
      'articles/quote.mdx',
      'articles/tag.mdx',
    ]);
  });
});

test('"draft: true" in the words of a page, or in a comment, makes no draft', () => {
  const { faults } = found([
    { file: 'articles/words.mdx', write: '---\ntitle: "Open\n#draft: true\n---\ndraft: true\n' },
    { file: 'articles/text.mdx', write: '---\ndraft: false\n---\ndraft: true\n' },
  ]);
  assert.deepEqual([...new Set(faults.map(({ path }) => path))], ['articles/text.mdx', 'articles/words.mdx']);
});

test('a link, a figure and a reference from a published page to a draft are faults, also where the draft is unreadable', () => {
  const broken: Change = { file: 'articles/begun.mdx', write: '---\ntitle: "Begun\ndraft: true\n---\nWords.\n' };
  const link: Change = { file: 'articles/stings.mdx', insteadOf: 'Scrape it off.', write: 'See [it](/know-how/begun/). Scrape it off.' };
  for (const page of [BLANKS, broken]) assert.deepEqual(rules(found([page, link]).faults), ['articles/stings.mdx link'], page.write);
  const source: Change = { file: 'sources/leaflet.yaml', insteadOf: 'title:', write: 'draft: true\ntitle:' };
  assert.ok(found([source]).faults.some(({ rule, found: what }) => rule === 'reference' && /a draft, which is not shown$/.test(what)));
});

test('a fault that a draft alone causes in a published page belongs to the draft', () => {
  // The good club's page on stings has this old address, and the draft precedes it in the folder.
  const { faults, drafts } = found([draft('a-first', 'title: First\nformerly: [/know-how/bee-stings/]')]);
  assert.deepEqual(faults.map(formatDiagnostic), []);
  assert.ok(rules(drafts).includes('articles/stings.mdx address'));
});

test('a folder that holds only drafts is not missing', () => {
  const { faults } = found([{ file: 'reading/quiet-year.yaml', insteadOf: 'title:', write: 'draft: true\ntitle:' }]);
  assert.deepEqual(faults.map(formatDiagnostic), []);
});

test('check lists drafts separately, counts them, and exits with 0', () =>
  withChanges([BLANKS, draft('second', 'title: Second')], (directory) => {
    const run = (...typed: string[]) =>
      spawnSync(process.execPath, ['src/cli/check.ts', '--content', directory, ...typed], { cwd: project, encoding: 'utf8' });
    const { status, stdout } = run();
    assert.equal(status, 0, stdout);
    const lines = stdout.trim().split('\n');
    assert.match(lines.at(-1)!, /^No faults in \d+ files\.$/);
    assert.match(lines.at(-2)!, /^2 drafts have \d+ blanks and 2 faults; they are not published\.$/);
    assert.ok(lines.slice(0, -2).every((line) => /^draft: articles\/(?:begun|second)\.mdx:\d+:\d+ /.test(line)));
    const json = JSON.parse(run('--format', 'json').stdout) as { level: string }[];
    assert.equal(json.length, lines.length - 2);
    assert.ok(json.every(({ level }) => level === 'draft'));
  }));

test('a single draft is counted in the singular', () => {
  const fault: Diagnostic = { path: 'a', line: 1, column: 1, rule: 'field', field: 'x', found: 'a blank', write: 'y' };
  assert.equal(draftsLine([fault]), '1 draft has 1 blank; it is not published.');
  assert.equal(draftsLine([fault, { ...fault, found: '"x"' }]), '1 draft has 1 blank and 1 fault; it is not published.');
});
