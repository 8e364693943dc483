/* Counts of a test run, from the JSON reports of Vitest and Playwright Test. A run that broke off counts as one failure. */

export interface Report {
  passed: number;
  failed: number;
  skipped: number;
  /** Tests that passed on their second try only, by name. */
  flaky: string[];
  /** Each test with its duration in milliseconds. */
  times: { name: string; ms: number }[];
}

interface VitestJson {
  testResults: {
    name: string;
    status: string;
    assertionResults: { status: string; fullName: string; duration?: number | null }[];
  }[];
}

interface PlaywrightSuite {
  file?: string;
  suites?: PlaywrightSuite[];
  specs?: { title: string; file: string; tests: { status: string; results: { duration: number }[] }[] }[];
}

interface PlaywrightJson {
  suites: PlaywrightSuite[];
  errors?: unknown[];
}

/** `exitCode` is the program's own. A file that does not load counts as one failed test. */
export function vitestReport(json: string | null, exitCode: number): Report {
  const report = empty();
  for (const { name, status, assertionResults } of (parsed(json) as VitestJson | null)?.testResults ?? []) {
    if (status === 'failed' && !assertionResults.some((each) => each.status === 'failed')) report.failed += 1;
    for (const { status: result, fullName, duration } of assertionResults) {
      if (result === 'passed') report.passed += 1;
      else if (result === 'failed') report.failed += 1;
      else report.skipped += 1;
      report.times.push({ name: `${afterFolder(name)}: ${fullName}`, ms: duration ?? 0 });
    }
  }
  return brokenOff(report, exitCode);
}

/** The same for Playwright Test. A test that passed only on a second try counts as passed, and is named as flaky. */
export function playwrightReport(json: string | null, exitCode: number): Report {
  const report = empty();
  const read = parsed(json) as PlaywrightJson | null;
  report.failed += read?.errors?.length ?? 0;
  const walk = ({ suites = [], specs = [] }: PlaywrightSuite): void => {
    for (const { title, file, tests } of specs)
      for (const { status, results } of tests) {
        const name = `tests/e2e/${file}: ${title}`;
        if (status === 'expected' || status === 'flaky') report.passed += 1;
        else if (status === 'skipped') report.skipped += 1;
        else report.failed += 1;
        if (status === 'flaky') report.flaky.push(name);
        report.times.push({ name, ms: results.reduce((sum, { duration }) => sum + duration, 0) });
      }
    suites.forEach(walk);
  };
  read?.suites.forEach(walk);
  return brokenOff(report, exitCode);
}

export function addUp(reports: readonly (Report | null)[]): Report {
  const total = empty();
  for (const report of reports) {
    if (!report) continue;
    total.passed += report.passed;
    total.failed += report.failed;
    total.skipped += report.skipped;
    total.flaky.push(...report.flaky);
  }
  return total;
}

/** The last line of a run, on a line of its own. */
export function closingLine({ passed, failed, skipped }: Report): string {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}

/** The slowest tests, slowest first, as lines to print. */
export function slowest(reports: readonly (Report | null)[], count: number): string[] {
  return reports
    .flatMap((report) => report?.times ?? [])
    .sort((a, b) => b.ms - a.ms)
    .slice(0, count)
    .map(({ name, ms }) => `  ${(ms / 1000).toFixed(1)} s  ${name}`);
}

const empty = (): Report => ({ passed: 0, failed: 0, skipped: 0, flaky: [], times: [] });

function parsed(json: string | null): unknown {
  if (json === null) return null;
  try {
    return JSON.parse(json);
  } catch {
    return null;
  }
}

// The program failed and no test did: a file does not load, a set-up failed, or a crash.
function brokenOff(report: Report, exitCode: number): Report {
  if (exitCode !== 0 && report.failed === 0) report.failed = 1;
  return report;
}

function afterFolder(path: string): string {
  return path.slice(Math.max(0, path.replaceAll('\\', '/').lastIndexOf('/tests/') + 1));
}
