// Templates of `new`: every field of the schema is in the file, and the club has no fault once the blanks are filled.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { parse } from 'yaml';
import { unwrap } from '../../../../shared/result.ts';
import { check } from '../../../../src/checks/check.ts';
import { draftOf, type File } from '../../../../src/cli/new/draft.ts';
import type { Shaped } from '../../../../src/cli/new/field-lines.ts';
import { inner } from '../../../../src/cli/new/field-lines.ts';
import { template } from '../../../../src/cli/new/template.ts';
import { formatDiagnostic } from '../../../../src/source/diagnostic.ts';
import { splitPage } from '../../../../src/source/fields.ts';
import { collectionNames, collections, type Collection } from '../../../../src/schemas/collections.ts';
import { withChanges, type Change } from '../../../fixtures/invalid/cases.ts';
import { filled } from './fill.ts';

const withFields = collectionNames.filter((name) => collections[name].ending !== '.csv');

/** The names of all fields, including those of nested sections: `rows.source`. */
function namesIn(schema: Shaped, above = ''): string[] {
  const held = inner(schema);
  if (held.element) return namesIn(held.element, above);
  return Object.entries(held.shape ?? {}).flatMap(([name, field]) => [above + name, ...namesIn(field, `${above}${name}.`)]);
}

/** The field names in the parsed YAML. */
function keysIn(value: unknown, above = ''): string[] {
  if (Array.isArray(value)) return value.flatMap((item) => keysIn(item, above));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, held]) => [above + name, ...keysIn(held, `${above}${name}.`)]);
}

/** Removes every number sign before a field, like a person who uses all of them. */
function allInUse(fields: string): string {
  let [before, text] = ['', fields];
  while (text !== before)
    [before, text] = [text, text.replace(/^( *)#((?:  )*(?:- )?[a-z][a-z0-9-]*:(?: .*)?|(?:  )+-(?: .*)?|(?:  )+#.*)$/gm, '$1$2')];
  return text;
}

for (const collection of withFields) {
  const fieldsOf = (text: string): string => splitPage(text)?.fields ?? text;
  test(`${collection}: the template has every field of the schema, and no other`, () => {
    const fields = allInUse(fieldsOf(template(collection, {})));
    const names = namesIn(collections[collection].schema as unknown as Shaped);
    assert.ok(names.length > 1);
    assert.deepEqual(keysIn(parse(fields)), names, fields);
  });

  test(`${collection}: a remark above each field says what to write`, () => {
    const lines = fieldsOf(template(collection, {})).split('\n');
    const bare = lines.filter(
      (line, index) => /^[ #]*(?:- )?[a-z][a-z0-9-]*:( |$)/.test(line) && !/^[ #]*# \S/.test(lines[index - 1] ?? ''),
    );
    assert.deepEqual(bare, []);
  });
}

test('the remark comes from the schema', () =>
  assert.match(template('meetings', {}), /\n# The day it is held\. Write a day such as 2026-04-18\.\nday:\n/));

const changesFor = (made: readonly File[]): Change[] => made.map(({ path, text }) => ({ file: path, write: text.replace(/\n$/, '') }));

/** Values for the blanks of each kind, besides the usual ones. `beside` are the files that the author brings. */
const kinds: Record<
  Collection,
  { title: string; values?: Record<string, string>; change?: [string, string][]; beside?: Record<string, string> }
> = {
  checklists: {
    title: 'The day before',
    values: { mode: 'read-do' },
    change: [['## \n\n- [ ] \n', '## At home\n\n- [ ] Read the thermometer <Task id="thermometer" />\n']],
  },
  bulletins: {
    title: 'Wax moth',
    values: { kind: 'insect', status: 'watch' },
    change: [
      ['\n## ', '\nSee the words above.\n\n## '],
      ['What not to do\n', 'What not to do\n\n- Do not wait.\n'],
    ],
  },
  articles: { title: 'Spring', values: { subject: 'flow' }, change: [['---\n$', '---\nBees fly.\n']] },
  meetings: { title: '2026-09-12 Honey evening', values: { kind: 'meeting' } },
  reading: {
    title: 'A "quoted": title #1',
    values: { author: 'A member', year: '2019', kind: 'starter', level: 'any', worth: 'A start.' },
  },
  treatments: {
    title: 'Thymol',
    values: {
      id: 'gel',
      form: 'gel',
      supers: 'label',
      'kills-under-cappings': 'no',
      'works-poorly-with-brood': 'false',
      hazards: 'skin',
      'check-by': '2026-12-01',
    },
  },
  forage: { title: 'White clover', values: { botanical: 'Trifolium repens', worth: 'Nectar.', gives: 'nectar' } },
  answers: {
    title: 'Where is she',
    values: { asks: 'queen out of sight', page: '/know-how/stings/', answer: 'Look for eggs.' },
  },
  words: { title: 'Drone', values: { meaning: 'A male bee.' } },
  figures: {
    title: 'Bees in a cup',
    values: { unit: 'bees', id: 'one', from: '2020-01-01', follows: 'one' },
    change: [['    #value: 57', '    value: 300']],
  },
  sources: { title: 'A leaflet', values: { who: 'A body', kind: 'extension', seen: 'itself' } },
  cautions: {
    title: 'climbing',
    values: {
      heading: 'Ask first before you climb',
      calls: 'Ask first',
      line: 'Leave high bees alone.',
      says: 'Stay down.',
      defers: 'extension',
      gravity: '8',
    },
    change: [['  - Stay down.', '  - Stay down.\n  - Ask someone equipped.']],
  },
  signs: { title: 'Caps are sunken', values: { where: 'brood' } },
  notices: {
    title: 'Foulbrood near by',
    values: { kind: 'disease', says: 'Look at all brood.', from: '2026-05-01', until: '2026-06-01', concerns: 'every page' },
  },
  counts: { title: '2026', change: [['method\n', 'method\n2026-06-13,brook,3,300,wash\n']] },
  drawings: { title: 'A queen cell', values: { words: 'It hangs from the comb.' } },
  files: { title: 'Joining form', beside: { 'files/joining-form.pdf': '%PDF-1.4\n%%EOF' } },
  sheets: { title: 'Loan slip', values: { summary: 'Who has which book.', name: 'Book', rows: '8' } },
  local: { title: 'Registering hives', values: {} },
};

for (const collection of collectionNames) {
  const { title, values, change = [], beside = {} } = kinds[collection];
  const files = unwrap(draftOf(collection, title));
  const [file, lines] = files;

  test(`${collection}: check reports the blanks of a new file, and nothing else`, () =>
    withChanges(changesFor(files), (directory) => {
      const faults = check(directory);
      assert.ok(faults.length > 0);
      for (const fault of faults)
        assert.match(
          formatDiagnostic(fault),
          new RegExp(
            `^(?:${file.path}|${lines?.path ?? 'nothing'}):\\d+:\\d+ .*: found (?:a blank|1 sentence|no lines|an empty list|a box without words|a heading without words|a checklist without a step|fields and no words after them|a heading with nothing under it|a row without a number|"[a-z-]+", a sign that|no "joining-form.pdf" beside it|.*and no bulletin)`,
          ),
        );
    }));

  test(`${collection}: check is clean once the blanks are filled`, () => {
    const whole = change.reduce(
      (text, [from, to]) => text.replace(new RegExp(from.replace(/[[\]()]/g, '\\$&'), 'g'), to),
      filled(file.text, values),
    );
    const drawn = lines ? [{ ...lines, text: lines.text.replace('>\n', '>\n<path d="M10 20h40" stroke="black"/>\n') }] : [];
    const brought = Object.entries(beside).map(([path, text]) => ({ path, text }));
    withChanges(changesFor([{ ...file, text: whole }, ...drawn, ...brought]), (directory) =>
      assert.deepEqual(check(directory).map(formatDiagnostic), [], whole),
    );
  });
}
