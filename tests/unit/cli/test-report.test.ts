/* Counts of a run, from reports that Vitest 5.1.2 and Playwright Test 1.65.1 write for small files run here. */
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, test } from 'vitest';
import { projectFolder } from '../../../src/cli/paths.ts';
import { addUp, closingLine, playwrightReport, slowest, vitestReport } from '../../../src/cli/test-report.ts';

let folder: string;
beforeAll(() => {
  const around = join(projectFolder, '.almanac');
  mkdirSync(around, { recursive: true });
  folder = mkdtempSync(join(around, 'report-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const GOOD = "test('good', () => {});\n";
const MIXED = `${GOOD}test('bad', () => { throw new Error('the reason'); });\ntest.skip('later', () => {});\n`;

function run(program: string, files: Record<string, string>, parts: string[]): { json: string | null; code: number } {
  const own = mkdtempSync(join(folder, 'run-'));
  for (const [name, text] of Object.entries(files)) writeFileSync(join(own, name), text);
  const file = join(own, 'report.json');
  const { status } = spawnSync(
    process.execPath,
    [join(projectFolder, 'node_modules', program), ...parts.map((part) => part.replace('FILE', file))],
    {
      cwd: own,
      env: { ...process.env, PLAYWRIGHT_JSON_OUTPUT_FILE: file },
    },
  );
  return { json: existsSync(file) ? readFileSync(file, 'utf8') : null, code: status ?? 1 };
}

const vitest = (files: Record<string, string>) =>
  run(
    'vitest/vitest.mjs',
    Object.fromEntries(Object.entries(files).map(([name, text]) => [`${name}.test.ts`, `import { test } from 'vitest';\n${text}`])),
    ['run', '--root', '.', '--reporter=json', '--outputFile=FILE'],
  );
const playwright = (files: Record<string, string>) =>
  run(
    '@playwright/test/cli.js',
    Object.fromEntries(
      Object.entries(files).map(([name, text]) => [`${name}.spec.ts`, `import { test } from '@playwright/test';\n${text}`]),
    ),
    ['test', '--reporter=json', '--output=FILE.results'],
  );

for (const [name, start, report] of [
  ['Vitest', vitest, vitestReport],
  ['Playwright Test', playwright, playwrightReport],
] as const) {
  test(`${name}: passed, failed and skipped tests are counted`, () => {
    const { json, code } = start({ a: GOOD, b: MIXED });
    const { passed, failed, skipped, times } = report(json, code);
    assert.deepEqual([passed, failed, skipped], [2, 1, 1]);
    assert.ok(times.some((each) => each.name.endsWith('good')));
  });

  test(`${name}: a file that does not load, or that contains no test, has failed`, () => {
    const broken = start({ a: GOOD, b: 'const = 1;\n' });
    assert.ok(report(broken.json, broken.code).failed >= 1);
    const none = start({ a: '\n' });
    assert.ok(report(none.json, none.code).failed >= 1);
  });

  test(`${name}: a run without a report, or with half a report, has failed`, () => {
    assert.equal(report(null, 1).failed, 1);
    assert.equal(report('{"testRes', 1).failed, 1);
  });
}

test('Playwright Test: a test that passes on its second try has passed, and is named', () => {
  const spec = { title: 'now and then', file: 'a.spec.ts', tests: [{ status: 'flaky', results: [{ duration: 2 }, { duration: 3 }] }] };
  const { passed, failed, flaky, times } = playwrightReport(JSON.stringify({ suites: [{ specs: [spec] }] }), 0);
  const name = 'tests/e2e/a.spec.ts: now and then';
  assert.deepEqual({ passed, failed, flaky, times }, { passed: 1, failed: 0, flaky: [name], times: [{ name, ms: 5 }] });
});

test('two reports are added up, and the last line counts them', () => {
  const one = { passed: 2, failed: 0, skipped: 0, flaky: ['c'], times: [{ name: 'a', ms: 1200 }] };
  const other = { passed: 1, failed: 1, skipped: 2, flaky: [], times: [{ name: 'b', ms: 3400 }] };
  assert.equal(closingLine(addUp([one, null])), '2 passed, 0 failed');
  assert.equal(closingLine(addUp([one, other])), '3 passed, 1 failed, 2 skipped');
  assert.deepEqual(addUp([one, other]).flaky, ['c']);
  assert.deepEqual(slowest([one, other], 1), ['  3.4 s  b']);
});
