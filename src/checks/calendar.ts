/* Checks that every `when:` can be parsed and counts from a day that this club can date. */
import { anchorsIn, readWhen } from '../../shared/season/when.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import { attribute, isTag, walk } from '../source/prose.ts';
import type { District } from '../schemas/as-season.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import { atField, atNode, isPage, type Message } from './place.ts';
import { districtsIn, undated } from './season.ts';

export function calendarFaults(club: ValidEntries): Diagnostic[] {
  const districts = districtsIn(club);
  const field = (entry: ValidEntry, text: string, startsFrom?: string): Diagnostic[] =>
    fieldFault(entry, text, { startsFrom, isList: entry.collection === 'checklists', districts });
  return [
    ...club.of.bulletins.flatMap((entry) => field(entry, entry.data.when)),
    ...[...club.of.articles, ...club.of.answers].flatMap((entry) => (entry.data.when === undefined ? [] : field(entry, entry.data.when))),
    ...club.of.checklists.flatMap((entry) => [
      ...field(entry, entry.data.when, entry.data['starts-from']),
      ...taskFaults(entry, { startsFrom: entry.data['starts-from'], isList: true, districts }),
    ]),
  ];
}

/** The events that a `when` may count from, by its place in the content. */
type Around = { startsFrom: string | undefined; isList: boolean; districts: readonly District[] };

function fieldFault(entry: ValidEntry, text: string, around: Around): Diagnostic[] {
  const message = wrongWhen(text, around);
  return message ? [atField(entry, ['when'], message)] : [];
}

function taskFaults(entry: ValidEntry, around: Around): Diagnostic[] {
  if (!isPage(entry)) return [];
  return [...walk(entry.tree)].flatMap((node) => {
    const when = isTag(node) && node.name === 'Task' ? attribute(node, 'when') : undefined;
    const message = when === undefined ? null : wrongWhen(when, around);
    return message ? [atNode(entry, node, { ...message, field: 'Task, when' })] : [];
  });
}

function wrongWhen(text: string, { startsFrom, isList, districts }: Around): Message | null {
  const read = readWhen(text);
  if (!read.ok) return { rule: 'when', field: 'when', ...read.reason };
  const no = undated(anchorsIn(read.value), districts);
  if (no) return { rule: 'when', field: 'when', ...no };
  if (read.value.kind !== 'own-days' || read.value.event === startsFrom) return null;
  if (!isList)
    return {
      rule: 'when',
      field: 'when',
      found: `"${text}", and only a checklist counts from a reader's own day`,
      write: 'days of the year, such as "1 April to 15 May"',
    };
  const found = startsFrom ? `"${text}" in a list that starts from ${startsFrom}` : `"${text}" in a list without starts-from`;
  return {
    rule: 'when',
    field: 'when',
    found,
    write: startsFrom ? `"after ${startsFrom}"` : `a line "starts-from: ${read.value.event}" in the fields as well`,
  };
}
