/*
 * npm test [-- PATTERN] and npm run test:slow: checks types, lints, then runs Vitest and Playwright Test, and ends with one line that
 * counts both. The exit code is not zero where a check finds something, a test fails, no test runs, or no browser is found.
 */
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { argumentsOf } from './arguments.ts';
import { findBrowser, launchVariable } from './browser.ts';
import { projectFolder } from './paths.ts';
import { runChild } from '../../scripts/run-child.mjs';
import { addUp, closingLine, playwrightReport, slowest, vitestReport, type Report } from './test-report.ts';

const { values, words } = argumentsOf('test');
const pattern = words[0];

// Tests start commands of their own, which must not inherit npm's variables.
for (const key of Object.keys(process.env)) if (key === 'INIT_CWD' || /^npm_/i.test(key)) delete process.env[key];
process.env.ASTRO_TELEMETRY_DISABLED = '1';

/** Static checks, each with its settings file. They run where no pattern was given. */
const READERS = [
  { name: 'types', settings: 'tsconfig.json', words: ['typescript/bin/tsc', '--noEmit', '-p', '.'], slow: false },
  { name: 'linter', settings: 'eslint.config.js', words: ['eslint/bin/eslint.js', '.'], slow: false },
  { name: 'types of pages', settings: 'astro.config.mjs', words: ['astro/bin/astro.mjs', 'check'], slow: true },
  {
    name: 'formatting',
    settings: '.prettierrc.json',
    words: ['prettier/bin/prettier.cjs', '--check', '--log-level', 'warn', '.'],
    slow: true,
  },
  { name: 'nothing unused', settings: 'knip.json', words: ['knip/bin/knip.js'], slow: true },
].filter(({ settings, slow }) => !pattern && (values.slow || !slow) && existsSync(join(projectFolder, settings)));

const runPackage = (file: string, parts: string[], stdio: 'inherit' | 'ignore' = 'inherit') =>
  runChild(process.execPath, [join(projectFolder, 'node_modules', file), ...parts], { cwd: projectFolder, stdio });

// Astro generates the types of its virtual modules. A fresh checkout has none.
if (READERS.length > 0 && !existsSync(join(projectFolder, '.astro', 'types.d.ts')))
  await runPackage('astro/bin/astro.mjs', ['sync'], 'ignore');

const codeReads = await Promise.all(
  READERS.map(async ({ name, words: [file, ...rest] }) => {
    const { code } = await runPackage(file!, rest);
    console.log(`${code === 0 ? 'ok  ' : 'no  '} ${name}`);
    return code === 0;
  }),
);

const reports = join(projectFolder, '.almanac', 'test-reports');
rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });

const unit = await runVitest();
const launch = await findBrowser();
const browser = launch ? await runPlaywright(JSON.stringify(launch)) : null;
if (!launch)
  console.log('\nNo browser was found, so the tests in tests/e2e did not run. Set ALMANAC_BROWSER to a browser, or install Chromium.');

const total = addUp([unit, browser]);
const ran = total.passed + total.failed > 0;
if (ran && !pattern) console.log(`\nThe ten slowest:\n${slowest([unit, browser], 10).join('\n')}`);
if (!ran) console.log(pattern ? `\nNo test file has ${pattern} in its path.` : '\nNo test ran.');
if (total.flaky.length > 0) console.log(`\nPassed on the second try only:\n${total.flaky.map((name) => `  ${name}`).join('\n')}`);
console.log(`\n${closingLine(total)}`);
if (!ran || total.failed > 0 || !launch || codeReads.includes(false)) process.exitCode = 1;

async function runVitest(): Promise<Report> {
  const file = join(reports, 'vitest.json');
  const own = pattern ? [pattern, '--passWithNoTests'] : [];
  const tags = values.slow ? [] : ['--tagsFilter', '!slow'];
  const { code } = await runPackage('vitest/vitest.mjs', [
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
    ...tags,
    ...own,
  ]);
  return vitestReport(readReport(file), code);
}

async function runPlaywright(launchOptions: string): Promise<Report> {
  const file = join(reports, 'playwright.json');
  process.env[launchVariable] = launchOptions;
  process.env.PLAYWRIGHT_JSON_OUTPUT_FILE = file;
  const own = pattern ? [pattern, '--pass-with-no-tests'] : [];
  const tags = values.slow ? [] : ['--grep-invert', '@slow'];
  const { code } = await runPackage('@playwright/test/cli.js', ['test', '--reporter=dot,json', ...tags, ...own]);
  return playwrightReport(readReport(file), code);
}

function readReport(file: string): string | null {
  return existsSync(file) ? readFileSync(file, 'utf8') : null;
}
