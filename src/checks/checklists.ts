/* Checks checklists: every step has a box and a unique name, begins with a verb, and each pause is short enough to remember. */
import { shortOf } from '../../shared/address/short.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import { calendarNames } from '../../shared/packages/calendar-names.ts';
import { attribute, type TagNode } from '../source/prose.ts';
import type { Checklist } from '../schemas/checklists.ts';
import { HAZARDS } from '../schemas/cautions.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import { nearName, nearOrAll } from '../../shared/words/near-name.ts';
import { atBody, atNode, isPage, lineAt, placeOf, type Page } from './place.ts';
import { stepsOf, type Step } from './steps.ts';

export const STEPS_A_PAUSE = 7;
export const WORDS_A_STEP = 12;

const ID = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;
const NOT_VERBS = new Set(
  'the a an you your it its there this that these those if when while once before after unless please we our they'.split(' '),
);

export function checklistFaults(club: ValidEntries): Diagnostic[] {
  const pages = club.folder.entries.filter(isPage).filter(({ collection }) => collection === 'checklists');
  return [...pages.flatMap(listFaults), ...club.of.checklists.flatMap(lengthFaults), ...pages.flatMap((page) => nameFaults(page, club))];
}

function listFaults(page: Page): Diagnostic[] {
  const steps = stepsOf(page);
  const none =
    steps.length === 0 && page.tree.children.length > 0
      ? [
          atBody(page, {
            rule: 'step',
            field: 'the page',
            found: 'a checklist without a step',
            write: 'at least one line that begins "- [ ] "',
          }),
        ]
      : [];
  const early = steps
    .filter(({ pause }) => pause === null)
    .slice(0, 1)
    .map(({ item }) =>
      atNode(page, item, {
        rule: 'step',
        field: 'a step',
        found: 'a step before the first heading',
        write: 'a line "## ..." with the name of the pause above it',
      }),
    );
  return [
    ...none,
    ...early,
    ...steps.flatMap((step) => [...boxFaults(page, step), ...verbFaults(page, step)]),
    ...idFaults(page, steps),
    ...shortFaults(page, steps),
  ];
}

function boxFaults(page: Page, { item, first, words }: Step): Diagnostic[] {
  const faults: Diagnostic[] = [];
  const line = lineAt(page, placeOf(page, item).line);
  if (item.checked)
    faults.push(
      atNode(page, item, {
        rule: 'step',
        field: 'a step',
        found: 'a box that is ticked already',
        write: '"- [ ] "',
        corrected: line.replace(/\[[xX]\]/, '[ ]'),
      }),
    );
  if (!first || words === '')
    faults.push(
      atNode(page, item, { rule: 'step', field: 'a step', found: 'a box without words', write: 'the step beside it, verb first' }),
    );
  return faults;
}

function verbFaults(page: Page, { first, words }: Step): Diagnostic[] {
  const word = /^[\p{L}'’]+/u.exec(words)?.[0] ?? '';
  if (!first || !NOT_VERBS.has(word.toLowerCase())) return [];
  return [
    atNode(page, first, {
      rule: 'step',
      field: 'a step',
      found: `"${word}" as its first word`,
      write: 'the verb first, such as "Read", "Close" or "Weigh"',
    }),
  ];
}

function idFaults(page: Page, steps: Step[]): Diagnostic[] {
  const seen = new Map<string, number>();
  return steps.flatMap(({ item, tags, first }): Diagnostic[] => {
    const [tag, second] = tags;
    if (!tag)
      return first
        ? [
            atNode(page, item, {
              rule: 'step-id',
              field: 'a step',
              found: 'a step without a Task id',
              write: '<Task id="..." /> at its end; npm run check -- --write-ids does it for you',
            }),
          ]
        : [];
    if (second) return [atNode(page, second, { rule: 'step-id', field: 'Task', found: 'a second Task in one step', write: 'one' })];
    const id = attribute(tag, 'id');
    if (id === undefined) return [];
    if (!ID.test(id))
      return [
        atNode(page, tag, {
          rule: 'step-id',
          field: 'Task, id',
          found: `"${id}"`,
          write: 'lower-case words joined by hyphens, such as close-entrance',
        }),
      ];
    const before = seen.get(id);
    const { line } = placeOf(page, tag);
    seen.set(id, before ?? line);
    return before === undefined
      ? []
      : [
          atNode(page, tag, {
            rule: 'step-id',
            field: 'Task, id',
            found: `"${id}" again, as in line ${before}`,
            write: 'an id that no other step of this list has',
          }),
        ];
  });
}

/** In an address, three letters of its id's hash stand for a step. Two steps with the same letters could not be told apart. */
function shortFaults(page: Page, steps: Step[]): Diagnostic[] {
  const seen = new Map<string, string>();
  return steps.flatMap(({ tags: [tag] }): Diagnostic[] => {
    const id = tag && attribute(tag, 'id');
    if (!tag || !id || !ID.test(id)) return [];
    const other = seen.get(shortOf(id));
    seen.set(shortOf(id), other ?? id);
    if (other === undefined || other === id) return [];
    return [
      atNode(page, tag, {
        rule: 'step-id',
        field: 'Task, id',
        found: `"${id}", whose short form in shared addresses is that of "${other}"`,
        write: `another id for the newer of the two, such as "${id}-step"`,
      }),
    ];
  });
}

function lengthFaults(entry: ValidEntry<Checklist>): Diagnostic[] {
  if (!isPage(entry) || entry.data.exception !== undefined) return [];
  return stepsOf(entry).flatMap(({ item, words, pause, place }): Diagnostic[] => {
    const count = words.split(' ').filter(Boolean).length;
    const faults: Diagnostic[] = [];
    if (place === STEPS_A_PAUSE + 1)
      faults.push(
        atNode(entry, item, {
          rule: 'length',
          field: `the pause "${pause ?? ''}"`,
          found: `more than ${STEPS_A_PAUSE} steps`,
          write: 'another heading "## ..." above this step, or "exception:" with why',
        }),
      );
    if (count > WORDS_A_STEP)
      faults.push(
        atNode(entry, item, {
          rule: 'length',
          field: 'a step',
          found: `${count} words`,
          write: `at most ${WORDS_A_STEP}, with the reason in a paragraph below, or "exception:" with why`,
        }),
      );
    return faults;
  });
}

/** Everything that a step names must exist: a hazard with its caution, a duty with its contact, a valid time. */
function nameFaults(page: Page, club: ValidEntries): Diagnostic[] {
  const duties = club.club?.data.contacts.map(({ duty }) => duty);
  return stepsOf(page)
    .flatMap(({ tags }) => tags)
    .flatMap((tag): Diagnostic[] => {
      const [hazard, asks, time] = [attribute(tag, 'hazard'), attribute(tag, 'asks'), attribute(tag, 'time')];
      const faults: Diagnostic[] = calendarFaults(page, tag);
      if (hazard !== undefined && !club.ids.cautions.has(hazard)) {
        const near = nearName(hazard, new Set([...HAZARDS, ...club.ids.cautions]));
        faults.push(
          atNode(page, tag, {
            rule: 'reference',
            field: 'Task, hazard',
            found: `"${hazard}", which is not in cautions/`,
            write: near === hazard ? `a file cautions/${hazard}.yaml` : near ? `"${near}"` : 'the name of a file in cautions/',
          }),
        );
      }
      if (asks !== undefined && duties && !duties.includes(asks))
        faults.push(
          atNode(page, tag, {
            rule: 'contact',
            field: 'Task, asks',
            found: `"${asks}", a duty that no contact in club.yaml has`,
            write: nearOrAll(asks, duties),
          }),
        );
      if (time !== undefined && !/^(?:[1-9]\d* to )?[1-9]\d* (?:minute|hour|day)s?$/.test(time))
        faults.push(
          atNode(page, tag, {
            rule: 'step',
            field: 'Task, time',
            found: `"${time}"`,
            write: 'a time such as "5 minutes" or "1 to 2 hours"',
          }),
        );
      return faults;
    });
}

/** `calendar` names a date of the package calendar. The list then counts from installing, and the step has no other date. */
function calendarFaults(page: Page, tag: TagNode): Diagnostic[] {
  const name = attribute(tag, 'calendar');
  if (name === undefined) return [];
  const fault = (found: string, write: string): Diagnostic[] => [
    atNode(page, tag, { rule: 'when', field: 'Task, calendar', found, write }),
  ];
  if (!(calendarNames as readonly string[]).includes(name)) return fault(`"${name}"`, nearOrAll(name, calendarNames));
  if (attribute(tag, 'when') !== undefined) return fault('a calendar and a when in one step', 'one of them');
  const startsFrom = (page.fields.value as { 'starts-from'?: unknown } | undefined)?.['starts-from'];
  return startsFrom === 'installing'
    ? []
    : fault(
        'a date of the package calendar in a list that does not count from installing',
        'a line "starts-from: installing" in the fields as well',
      );
}
