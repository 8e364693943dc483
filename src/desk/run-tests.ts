// Runs the test files, each in a process of its own, two or more side by side.
import { once } from 'node:events';
import { availableParallelism } from 'node:os';
import { join, relative, sep } from 'node:path';
import { Readable } from 'node:stream';
import { run } from 'node:test';
import { spec } from 'node:test/reporters';
import type { LaunchOptions } from 'playwright-core';
import { countAndThin, emptyTally, type Tally } from './tally.ts';
import { findTestFiles } from './test-files.ts';

export interface TestRun {
  project: string;
  long: boolean;
  pattern: string | undefined;
  findBrowser: () => Promise<LaunchOptions | null>;
  launchVariable: string;
  /** Where the report goes. */
  output: NodeJS.WritableStream;
  signal?: AbortSignal;
}

export interface TestResult {
  tally: Tally;
  /** Files that could not run, since no browser was found. */
  notRun: string[];
}

export async function runTests({ project, long, pattern, findBrowser, launchVariable, output, signal }: TestRun): Promise<TestResult> {
  const { plain, browser } = findTestFiles(project, { long, pattern });
  const launch = browser.length > 0 ? await findBrowser() : null;
  if (launch) process.env[launchVariable] = JSON.stringify(launch);
  const paths = launch ? [...plain, ...browser].sort() : plain;
  const tally = emptyTally();
  if (paths.length > 0) {
    const events = run({
      files: paths.map((path) => join(project, path)),
      concurrency: Math.max(2, Math.min(4, availableParallelism())),
      // A file that hangs must not hang everything.
      timeout: (long ? 60 : 9) * 60_000,
      signal,
    });
    const report = Readable.from(countAndThin(events, tally, (file) => relative(project, file).split(sep).join('/'))).compose(new spec());
    report.pipe(output, { end: false });
    await once(report, 'end');
  }
  return { tally, notRun: launch ? [] : browser };
}
