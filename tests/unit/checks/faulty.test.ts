/* Every file of tests/fixtures/invalid/cases: check reports the mistake at its position, in exactly these words, and nothing else. So with hints. */
import assert from 'node:assert/strict';
import { fileURLToPath } from 'node:url';
import { test } from 'vitest';
import { check, checkFolder, hintsOf } from '../../../src/checks/check.ts';
import { formatDiagnostic, type Diagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { cases, goodClub, withChanges } from '../../fixtures/invalid/cases.ts';

// The books that a case may name.
process.env.ALMANAC_BOOKS = fileURLToPath(new URL('../../fixtures/books', import.meta.url));

const all = cases();
const lines = (found: readonly Diagnostic[]): string => found.map(formatDiagnostic).join('\n');

test('the corpus exists', () => assert.ok(all.length >= 120, `${all.length} cases`));

test('the good club has no fault', () => assert.deepEqual(check(goodClub).map(formatDiagnostic), []));

for (const { name, changes, found, hints } of all) {
  test(`faulty: ${name}`, () => {
    const folder = withChanges(changes, (directory) => {
      const read = readFolder(directory);
      return { faults: checkFolder(read), hints: hintsOf(read) };
    });
    assert.equal(lines(folder.faults), found);
    if (hints !== undefined || found === '') assert.equal(lines(folder.hints), hints ?? '');
  });
}

test('all mistakes of several files are reported at once, by file and line', () => {
  const clash = new Set<string>();
  const several = all.filter(({ changes, found }) => {
    const file = changes[0]!.file;
    if (
      file.startsWith('sources/') ||
      file === 'club.yaml' ||
      changes.length > 1 ||
      changes[0]!.insteadOf === undefined ||
      found.split('\n').some((line) => !line.startsWith(file) && !line.startsWith('    ')) ||
      clash.has(file)
    )
      return false;
    clash.add(file);
    return found !== '';
  });
  assert.ok(several.length >= 8, `${several.length} files`);
  const lines = withChanges(
    several.flatMap(({ changes }) => changes),
    check,
  ).map(formatDiagnostic);
  for (const { name, found } of several)
    for (const line of found.split(/\n(?! )/)) assert.ok(lines.includes(line), `${name}: ${line}\namong\n${lines.join('\n')}`);
  const order = lines.map((line) => line.split(':')).map(([path, line]) => [path!, Number(line)] as const);
  assert.deepEqual(
    order,
    [...order].sort((a, b) => (a[0] < b[0] ? -1 : a[0] > b[0] ? 1 : a[1] - b[1])),
  );
});
