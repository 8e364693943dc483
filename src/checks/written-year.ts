/* Checks the phases of the year in club.yaml: two days each, in order, once around the year. */
import { addMonthDays, dayOfCommonYear, writtenMonthDay } from '../../shared/days/month-day.ts';
import type { Correction } from '../../shared/result.ts';
import {
  daysInWindow,
  phaseName,
  phases,
  readWhen,
  resolveWhen,
  type SeasonDays,
  type When,
  type Window,
} from '../../shared/season/when.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import type { Club } from '../schemas/club.ts';
import type { ValidEntry } from './fields.ts';
import { atField } from './place.ts';

export function writtenYearFaults(entry: ValidEntry<Club>): Diagnostic[] {
  const written = entry.data.season.phases;
  if (!written) return [];
  const faults: Diagnostic[] = [];
  const windows = phases.map((phase): Window | null => {
    const read = readWhen(written[phase]);
    const window = read.ok ? daysOnly(read.value) : null;
    if (!window)
      faults.push(
        at(
          entry,
          phase,
          read.ok ? `"${written[phase]}", which is not two days` : read.reason.found,
          read.ok ? 'two days, such as "1 October to 15 November"' : read.reason.write,
        ),
      );
    return window;
  });
  if (faults.length > 0) return faults;
  for (const [index, phase] of phases.entries()) {
    const before = (index + phases.length - 1) % phases.length;
    const message = join(windows[before]!, windows[index]!, phaseName(phases[before]!));
    if (message) faults.push(at(entry, phase, message.found, message.write));
  }
  const total = windows.reduce((sum, window) => sum + daysInWindow(window!), 0);
  if (faults.length === 0 && total !== 365)
    faults.push(at(entry, phases[0], `parts of the year that add up to ${total} days`, 'parts that go round the year once'));
  return faults;
}

const at = (entry: ValidEntry, phase: string, found: string, write: string): Diagnostic =>
  atField(entry, ['season', 'phases', phase], { rule: 'season', field: `season, phases, ${phase}`, found, write });

function daysOnly(when: When): Window | null {
  if (when.kind !== 'span' || when.from.kind !== 'day' || when.to.kind !== 'day') return null;
  return resolveWhen(when, { phases: {}, anchors: {} } as unknown as SeasonDays);
}

/** Reports a gap or an overlap between two phases. */
function join(before: Window, next: Window, name: string): Correction | null {
  const start = addMonthDays(before.to, 1);
  const apart = (dayOfCommonYear(next.from) - dayOfCommonYear(start) + 365) % 365;
  if (apart === 0) return null;
  const found =
    apart <= 182
      ? `${writtenMonthDay(next.from)}, which leaves ${days(apart)} after ${name} in no part of the year`
      : `${writtenMonthDay(next.from)}, while ${name} lasts until ${writtenMonthDay(before.to)}`;
  return { found, write: `"${writtenMonthDay(start)} to ${writtenMonthDay(next.to)}", or another last day for ${name}` };
}

const days = (count: number): string => (count === 1 ? '1 day' : `${count} days`);
