// Counts what node's test runner reports, test by test, and makes of its events what is worth reading:
// a line a file, and failures in full. A file in which no test ran counts as failed.
import type { TestEvent } from 'node:test/reporters';

export interface Tally {
  passed: number;
  failed: number;
  skipped: number;
}

export function emptyTally(): Tally {
  return { passed: 0, failed: 0, skipped: 0 };
}

/** The closing line, alone on its line. */
export function closingLine({ passed, failed, skipped }: Tally): string {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}

/** Passes on the events a reporter of failures needs; adds to `tally` as it goes. */
export async function* countAndThin(
  events: AsyncIterable<TestEvent>,
  tally: Tally,
  nameOf: (file: string) => string,
): AsyncGenerator<TestEvent> {
  for await (const event of events) {
    if (event.type === 'test:pass') {
      if (event.data.name === event.data.file) {
        tally.failed += 1;
        yield line(`no   ${nameOf(event.data.file)}  holds no test`);
      } else if (event.data.details.type !== 'suite') {
        tally[isSetAside(event.data) ? 'skipped' : 'passed'] += 1;
      }
    } else if (event.type === 'test:fail') {
      if (isSetAside(event.data)) {
        tally.skipped += 1;
      } else {
        if (isOwnFailure(event.data)) tally.failed += 1;
        yield event;
      }
    } else if (event.type === 'test:summary') {
      if (event.data.file) yield line(lineFor(event.data, nameOf));
    } else if (event.type === 'test:stdout' || event.type === 'test:stderr') {
      yield event;
    }
  }
}

type Outcome = Extract<TestEvent, { type: 'test:pass' | 'test:fail' }>['data'];
type Failure = Extract<TestEvent, { type: 'test:fail' }>['data'];
type Summary = Extract<TestEvent, { type: 'test:summary' }>['data'];

function isSetAside({ skip, todo }: Outcome): boolean {
  return (skip !== undefined && skip !== false) || (todo !== undefined && todo !== false);
}

// A group fails with its tests; it counts by itself only where its own preparation failed.
function isOwnFailure({ details }: Failure): boolean {
  if (details.type !== 'suite') return true;
  return (details.error as { failureType?: string }).failureType !== 'subtestsFailed';
}

function lineFor({ file, counts, duration_ms, success }: Summary, nameOf: (file: string) => string): string {
  return `${success ? 'ok  ' : 'no  '} ${nameOf(file!)}  ${counts.tests} ${counts.tests === 1 ? 'test' : 'tests'}, ${(duration_ms / 1000).toFixed(1)} s`;
}

// A line of ours travels among the events as text, so that the order stays.
function line(text: string): TestEvent {
  return { type: 'test:stdout', data: { file: '', message: `${text}\n` } } as TestEvent;
}
