/*
 * Text of docs/reference.md: every field of every collection, the tags, the forms of `when:`, and the commands. The lists come from the
 * schemas, the tag check and the command table, so the reference is always up to date.
 */
import { SPANISH_FORMS, spanishEvents, spanishName } from '../../../shared/season/spanish.ts';
import { z } from 'astro/zod';
import { FORMS } from '../../checks/tags.ts';
import { TAGS, type Tag } from '../../source/tag-syntax.ts';
import { club } from '../../schemas/club.ts';
import { collectionNames, collections, type Collection } from '../../schemas/collections.ts';
import { COUNT_COLUMNS } from '../../schemas/counts.ts';
import { HAZARDS_OF } from '../../schemas/hazards.ts';
import { calendarNames } from '../../../shared/packages/calendar-names.ts';
import { anchorName, anchors, ownEvents, phaseName, phases } from '../../../shared/season/when.ts';
import { commands, type Command } from '../commands.ts';
import { exampleOf, inner, type Shaped } from './field-lines.ts';
import { singular } from './kinds.ts';
import { description, hintOf } from './remarks.ts';

/** The forms that `when:` takes. A test parses each example. */
export const WHEN_FORMS: readonly [example: string, meaning: string][] = [
  ['any time', 'It is not bound to dates.'],
  ['1 October to 15 November', 'The same days in every district. The range may run over New Year.'],
  ['15 April', 'One day, the same in every district.'],
  ['in swarming', 'A part of the year. Each district has its own days for it.'],
  ['6 weeks before main flow to 2 weeks before main flow', 'Counted from the first day of a part of the year.'],
  ['2 weeks before first freeze to first freeze', 'Counted from a day of the year.'],
  ['day 3 to day 5 after installing', "Counted from the reader's own day, which is day 0."],
];

/** The output of each tag, and the meaning of each of its attributes. */
export const TAG_MEANINGS: Record<Tag, { prints: string; attributes: Readonly<Record<string, string>> }> = {
  Figure: {
    prints: 'The figure with its unit in both systems, and a reference mark for its source.',
    attributes: { id: 'The name of a file in `figures/`.', row: 'The row of another source than the one the club follows.' },
  },
  Task: {
    prints: 'Nothing. It stands at the end of a checklist step and gives the step its permanent id.',
    attributes: {
      id: "The permanent id. `npm run check -- --write-ids` writes it. Readers' ticks are stored under it, so never change it.",
      time: 'How long the step takes. It is shown behind the step.',
      when: "The days of the step, counted from the reader's own day. The list needs `starts-from:`.",
      calendar: `The event of the package calendar that gives the step its date. One of: ${calendarNames.join(', ')}.`,
      hazard: 'A hazard. The one line of its caution is shown under the step.',
      asks: 'A duty. The list pauses here until the reader says whom they asked, or that all is well.',
    },
  },
  Example: {
    prints: 'A link to a calculator with its form filled in.',
    attributes: {
      tool: 'The name of the calculator in its address.',
      with: 'The values of the form, as in the address of the calculator.',
    },
  },
  Contact: {
    prints: 'The office that has this duty in `club.yaml`, with its number.',
    attributes: { duty: 'A duty under `contacts:` in `club.yaml`.' },
  },
  Drawing: {
    prints: 'A drawing and its words. It stands on a line of its own.',
    attributes: { name: 'The name of two files in `drawings/`, without the ending.' },
  },
  Day: {
    prints: "A day of the year in the reader's district.",
    attributes: { of: 'The name of the day, as the `/about/` page lists it.' },
  },
  Line: {
    prints:
      'The number of the emergency line or the poison line of `club.yaml`. In a `summary:` and in a caution write `{emergency}` or `{poison}`.',
    attributes: { of: '`emergency` or `poison`.' },
  },
  Local: {
    prints: 'The words of `local/` that hold here, of the nearest folder that has them; else whom to ask. It stands on a line of its own.',
    attributes: {
      id: 'The name of a file in `local/`.',
      ask: 'The duty to ask while nothing is written; `inspector` where it is left out.',
    },
  },
  Caution: {
    prints: 'The text of a caution, so that no page words the rule again. It stands on a line of its own.',
    attributes: {
      id: 'The name of a file in `cautions/`.',
      part: '`if-it-happens`: what to do once it has happened, instead of what to do before.',
    },
  },
};

export function referenceText(): string {
  const parts = [
    ['# Reference', 'This file is generated. To change it, change the schemas and run `node src/cli/reference.ts`.'],
    [
      '## Collections',
      ...collectionNames.map((name) => `- [${name}](#${name})`),
      '- [club.yaml](#clubyaml)',
      '- [Tags](#tags)',
      '- [When](#when)',
      '- [Work and hazards](#work-and-hazards)',
      '- [Commands](#commands)',
    ],
    ...collectionNames.map(collectionPart),
    ['## club.yaml', 'The club itself: one file at the top of the content folder.', '', ...fieldTable(club)],
    tagsPart(),
    whenPart(),
    workPart(),
    commandsPart(),
  ];
  return `${parts.map(([heading, ...lines]) => [heading, '', ...lines].join('\n')).join('\n\n')}\n`;
}

function collectionPart(name: Collection): string[] {
  const { ending, schema, ...kind } = collections[name];
  const address = kind.path ? `Pages at \`${kind.path}\`.` : 'No page of its own.';
  const start = `Start one with \`npm run new -- ${singular(name)} "Title"\`.`;
  const body = ending === '.mdx' ? 'The fields stand between two lines of `---`; the text of the page follows.' : '';
  const intro = [`Files: \`${name}/*${ending}\` in a club's folder or a book.`, address, start, body].filter(Boolean).join(' ');
  return [`## ${name}`, intro, '', ...(name === 'counts' ? countsTable() : fieldTable(schema))];
}

/** The rows of counts are validated in a second step, so their schema is behind a pipe. */
function countsTable(): string[] {
  const { out } = collections.counts.schema.def as unknown as { out: Shaped };
  const shape = out.shape!;
  const row = inner(shape.rows!).element!.shape!;
  return [
    'The first lines may be `# title: ...` and `# withdrawn: ...`. The columns follow; no other column is allowed.',
    '',
    ...table([
      ...['title', 'withdrawn'].map((name) => fieldRow(`# ${name}:`, shape[name]!)),
      ...COUNT_COLUMNS.map((name) => fieldRow(name, row[name]!)),
    ]),
  ];
}

const fieldTable = (schema: z.ZodType): string[] => table(fieldRows(schema as Shaped, '', new Map()));
const table = (rows: string[]): string[] => ['| field | required | meaning | example |', '| --- | --- | --- | --- |', ...rows];

/** One row per field. The fields of a section follow it, with the name of the section before theirs. */
function fieldRows(section: Shaped, before: string, seen: Map<string, string>): string[] {
  return Object.entries(section.shape!).flatMap(([name, field]) => {
    const path = `${before}${name}`;
    const held = sectionIn(field);
    if (!held) return [fieldRow(path, field)];
    // Sections with the same fields are explained once.
    const key = JSON.stringify(z.toJSONSchema(held.section, { unrepresentable: 'any' }));
    const earlier = seen.get(key);
    if (earlier) return [fieldRow(path, field, `Its fields are those of \`${earlier}\`.`)];
    seen.set(key, path);
    return [
      fieldRow(path, field, held.isList ? 'A list of sections:' : 'A section:'),
      ...fieldRows(held.section, `${path}${held.isList ? '[]' : ''}.`, seen),
    ];
  });
}

function sectionIn(field: Shaped): { section: Shaped; isList: boolean } | null {
  const held = inner(field);
  const section = held.element ? inner(held.element) : held;
  return section.shape ? { section, isList: held.element !== undefined } : null;
}

function fieldRow(path: string, field: Shaped, more = ''): string {
  const example = sectionIn(field) ? undefined : exampleOf(field);
  const meaning = [description(field), more || sentence(hintBeside(field, example))].filter(Boolean).join(' ');
  const cells = [`\`${path}\``, field.isOptional() ? 'no' : 'yes', meaning, example === undefined ? '' : `\`${exampleText(example)}\``];
  return `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
}

/** Omits a hint that would only add "a day" to the description. */
function hintBeside(field: Shaped, example: unknown): string {
  const hint = hintWithoutExample(field, example);
  return hint === 'a day' && description(field) ? '' : hint;
}

/** The hint that check prints after "write", without an example that has its own column. */
function hintWithoutExample(field: Shaped, example: unknown): string {
  const held = inner(field);
  if (held.element) {
    const item = hintWithoutExample(held.element, Array.isArray(example) ? example[0] : undefined);
    return item.startsWith('one of: ') ? `a list, each ${item}` : `a list of: ${item}`;
  }
  const shown =
    example === undefined
      ? []
      : [`, such as "${String(example)}"`, ` such as "${String(example)}"`, `, such as ${String(example)}`, ` such as ${String(example)}`];
  const found = shown.find((ending) => hintOf(held).endsWith(ending));
  return found ? hintOf(held).slice(0, -found.length) : hintOf(held);
}

const sentence = (text: string): string =>
  text === '' ? '' : `${text[0]!.toUpperCase()}${text.slice(1)}${/[.!?]"?$/.test(text) ? '' : '.'}`;
const exampleText = (value: unknown): string => (Array.isArray(value) ? `[${value.map(String).join(', ')}]` : String(value));

function tagsPart(): string[] {
  const lines = TAGS.flatMap((tag) => {
    const { must, example } = FORMS[tag];
    const { prints, attributes } = TAG_MEANINGS[tag];
    return [
      `### ${tag}`,
      '',
      `\`${example}\``,
      '',
      prints,
      '',
      '| attribute | required | meaning |',
      '| --- | --- | --- |',
      ...Object.entries(attributes).map(([name, meaning]) => `| \`${name}\` | ${must.includes(name) ? 'yes' : 'no'} | ${meaning} |`),
      '',
    ];
  });
  return [
    '## Tags',
    'A page (`.mdx`) may use these tags. Everything else that looks like code is shown as typed.',
    '',
    ...lines.slice(0, -1),
  ];
}

function whenPart(): string[] {
  const names = anchors.filter((id) => !(phases as readonly string[]).includes(id)).map(anchorName);
  return [
    '## When',
    '`when:` takes exactly these forms:',
    '',
    '| write | meaning |',
    '| --- | --- |',
    ...WHEN_FORMS.map(([example, meaning]) => `| \`${example}\` | ${meaning} |`),
    '',
    `- Parts of the year: ${phases.map(phaseName).join(', ')}.`,
    `- Days of the year: ${names.join(', ')}.`,
    `- The reader's own days: ${ownEvents.join(', ')}.`,
    `- In Spanish: ${SPANISH_FORMS.replace(/"/g, '`').replace(' or ', ', ')}. The names are ${[...phases, ...anchors.filter((id) => !(phases as readonly string[]).includes(id))].map(spanishName).join(', ')}; the reader's own days are ${Object.values(spanishEvents).join(', ')}.`,
  ];
}

function workPart(): string[] {
  return [
    '## Work and hazards',
    '`work:` says what the hands do on a page. The cautions of these hazards are then placed on the page by rule.',
    '',
    '| work | hazards |',
    '| --- | --- |',
    ...Object.entries(HAZARDS_OF).map(([work, hazards]) => `| \`${work}\` | ${hazards.join(', ')} |`),
  ];
}

function commandsPart(): string[] {
  const rows = Object.entries(commands).flatMap(([name, { words, options }]: [string, Command]) => {
    const line = `\`npm ${name === 'start' || name === 'test' ? '' : 'run '}${name}${words.length > 0 ? ` -- ${words.join(' ')}` : ''}\``;
    const settings = Object.entries(options).map(([key, { takes, what, otherwise }]) => {
      const value =
        typeof takes === 'object'
          ? ` ${takes.join(' or ')}`
          : takes === 'flag'
            ? ''
            : ` ${takes === 'output' ? 'FOLDER' : takes.toUpperCase()}`;
      return `\`--${key}${value}\` (${what}${otherwise ? `; otherwise \`${otherwise}\`` : ''})`;
    });
    return [`| ${line} | ${settings.join('<br>') || 'none'} |`];
  });
  return [
    '## Commands',
    'Options stand after two dashes: `npm run build -- --out ../site`.',
    '',
    '| command | options |',
    '| --- | --- |',
    ...rows,
  ];
}
