import assert from 'node:assert/strict';
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { test } from 'node:test';
import { closingLine } from '../../src/desk/tally.ts';
import { findTestFiles } from '../../src/desk/test-files.ts';

function project(files: Record<string, string>): string {
  const folder = mkdtempSync(join(tmpdir(), 'tally-'));
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}

test('the closing line', () => {
  assert.equal(closingLine({ passed: 3, failed: 0, skipped: 0 }), '3 passed, 0 failed');
  assert.equal(closingLine({ passed: 3, failed: 1, skipped: 2 }), '3 passed, 1 failed, 2 skipped');
});

const files = {
  'tests/shared/days.test.ts': "import { days } from '../../shared/days.ts';",
  'tests/site/now.test.ts': "import { openBrowser } from '../../src/desk/test-browser.ts';",
  'tests/site/print.test.ts': "import {\n  open,\n} from './open.ts';",
  'tests/site/open.ts': "import { openBrowser } from '../../src/desk/test-browser.ts';",
  // In two parts, so that this file is not itself taken for one that loads it.
  'tests/site/later.test.ts': `test('x', async () => {\n  const { chromium } = await ${"import('playwright-core')"};\n});`,
  'tests/desk/text.test.ts': 'const text = "import { openBrowser } from \'../../src/desk/test-browser.ts\';";',
  'tests/site/sizes.test.ts': "import type { Page } from 'playwright-core';",
  'tests/long/all.test.ts': '',
  'tests/rows.ts': '',
};

test('test files are found and told apart by whether they reach the browser', () => {
  const folder = project(files);
  assert.deepEqual(findTestFiles(folder, { long: false, pattern: undefined }), {
    plain: ['tests/desk/text.test.ts', 'tests/shared/days.test.ts', 'tests/site/sizes.test.ts'],
    browser: ['tests/site/later.test.ts', 'tests/site/now.test.ts', 'tests/site/print.test.ts'],
  });
  assert.deepEqual(findTestFiles(folder, { long: true, pattern: 'long' }), { plain: ['tests/long/all.test.ts'], browser: [] });
  assert.deepEqual(findTestFiles(folder, { long: false, pattern: 'site\\n' }), { plain: [], browser: ['tests/site/now.test.ts'] });
  assert.deepEqual(findTestFiles(join(folder, 'absent'), { long: true, pattern: undefined }), { plain: [], browser: [] });
});
