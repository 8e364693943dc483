/* Every `when:` can be read, and the parts of the club's year follow one another round it. */
import { addMonthDays, dayOfCommonYear, formatMonthDay, type MonthDay } from '../../shared/days/month-day.ts';
import { daysInWindow, phaseName, phases, readWhen, resolveWhen, type SeasonDays, type When, type Window } from '../../shared/season/when.ts';
import type { Fault } from '../reader/fault.ts';
import { attribute, isTag, walk } from '../reader/prose.ts';
import type { Sound, SoundEntry } from './fields.ts';
import { atField, atNode, isPage, type Said } from './place.ts';

export function calendarFaults(club: Sound): Fault[] {
  return [
    ...(club.club ? seasonFaults(club.club) : []),
    ...club.of.bulletins.flatMap((entry) => fieldFault(entry, entry.data.when, undefined)),
    ...club.of.articles.flatMap((entry) => (entry.data.when === undefined ? [] : fieldFault(entry, entry.data.when, undefined))),
    ...club.of.checklists.flatMap((entry) => [...fieldFault(entry, entry.data.when, entry.data['starts-from']), ...taskFaults(entry, entry.data['starts-from'])]),
  ];
}

function fieldFault(entry: SoundEntry, text: string, startsFrom: string | undefined): Fault[] {
  const said = wrongWhen(text, startsFrom, entry.collection === 'checklists');
  return said ? [atField(entry, ['when'], said)] : [];
}

function taskFaults(entry: SoundEntry, startsFrom: string | undefined): Fault[] {
  if (!isPage(entry)) return [];
  return [...walk(entry.tree)].flatMap((node) => {
    const when = isTag(node) && node.name === 'Task' ? attribute(node, 'when') : undefined;
    const said = when === undefined ? null : wrongWhen(when, startsFrom, true);
    return said ? [atNode(entry, node, { ...said, field: 'Task, when' })] : [];
  });
}

function wrongWhen(text: string, startsFrom: string | undefined, isList: boolean): Said | null {
  const read = readWhen(text);
  if (!read.ok) return { rule: 'when', field: 'when', found: read.found, write: read.write };
  if (read.when.kind !== 'own-days' || read.when.event === startsFrom) return null;
  if (!isList) return { rule: 'when', field: 'when', found: `"${text}", and only a checklist counts from a reader's own day`, write: 'days of the year, such as "1 April to 15 May"' };
  const found = startsFrom ? `"${text}" in a list that starts from ${startsFrom}` : `"${text}" in a list without starts-from`;
  return { rule: 'when', field: 'when', found, write: startsFrom ? `"after ${startsFrom}"` : `a line "starts-from: ${read.when.event}" in the fields as well` };
}

function seasonFaults(entry: NonNullable<Sound['club']>): Fault[] {
  const faults: Fault[] = [];
  const windows = phases.map((phase): Window | null => {
    const read = readWhen(entry.data.season.phases[phase]);
    const window = read.ok ? daysOnly(read.when) : null;
    if (!window) faults.push(at(entry, phase, read.ok ? `"${entry.data.season.phases[phase]}", which is not two days` : read.found, read.ok ? 'two days, such as "1 October to 15 November"' : read.write));
    return window;
  });
  if (faults.length > 0) return faults;
  for (const [index, phase] of phases.entries()) {
    const before = (index + phases.length - 1) % phases.length;
    const said = join(windows[before]!, windows[index]!, phaseName(phases[before]!));
    if (said) faults.push(at(entry, phase, said.found, said.write));
  }
  const total = windows.reduce((sum, window) => sum + daysInWindow(window!), 0);
  if (faults.length === 0 && total !== 365) faults.push(at(entry, phases[0], `parts of the year that add up to ${total} days`, 'parts that go round the year once'));
  return faults;
}

const at = (entry: SoundEntry, phase: string, found: string, write: string): Fault =>
  atField(entry, ['season', 'phases', phase], { rule: 'season', field: `season, phases, ${phase}`, found, write });

function daysOnly(when: When): Window | null {
  if (when.kind !== 'span' || when.from.kind !== 'day' || when.to.kind !== 'day') return null;
  return resolveWhen(when, { phases: {}, anchors: {} } as unknown as SeasonDays);
}

/** What is wrong where one part of the year meets the next. */
function join(before: Window, next: Window, name: string): { found: string; write: string } | null {
  const start = addMonthDays(before.to as MonthDay, 1);
  const apart = (dayOfCommonYear(next.from as MonthDay) - dayOfCommonYear(start) + 365) % 365;
  if (apart === 0) return null;
  const found = apart <= 182
    ? `${formatMonthDay(next.from as MonthDay)}, which leaves ${days(apart)} after ${name} in no part of the year`
    : `${formatMonthDay(next.from as MonthDay)}, while ${name} lasts until ${formatMonthDay(before.to as MonthDay)}`;
  return { found, write: `"${formatMonthDay(start)} to ${formatMonthDay(next.to as MonthDay)}", or another last day for ${name}` };
}

const days = (count: number): string => (count === 1 ? '1 day' : `${count} days`);
