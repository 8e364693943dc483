/* The names and choices of calculator values that checks know are those of the forms. */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import { castes, sights } from '../../../src/calculators/brood-dates/model.ts';
import { methods } from '../../../src/calculators/mite-count/model.ts';
import { ruleNames } from '../../../src/calculators/weight-check/model.ts';
import { mixes } from '../../../src/calculators/winter-stores/model.ts';
import { projectFolder } from '../../../src/cli/paths.ts';
import { calculatorInputs, inputWrong } from '../../../src/schemas/calculator-inputs.ts';
import { calculators, type Calculator } from '../../../src/schemas/calculators.ts';
import { rows } from '../../rows.ts';

/** The lines of `fields: { ... }` in a form. */
const fieldsIn = (slug: string): string =>
  /^ {2}fields: \{\n([\s\S]*?)^ {2}\},$/m.exec(readFileSync(join(projectFolder, 'src/calculators', slug, 'form.ts'), 'utf8'))?.[1] ??
  assert.fail(slug);

for (const { slug } of calculators)
  test(`${slug}: the names of its values, in order`, () => {
    const names = [...fieldsIn(slug).matchAll(/^ {4}'?([a-z-]+)'?: /gm)].map(([, name]) => name);
    assert.deepEqual(Object.keys(calculatorInputs[slug]), names);
  });

test('a day is asked for as a day, and a choice as a choice', () => {
  for (const { slug } of calculators)
    for (const [name, input] of Object.entries(calculatorInputs[slug])) {
      const line = new RegExp(`^ {4}'?${name}'?: (.*)$`, 'm').exec(fieldsIn(slug))![1]!;
      assert.equal(/^(?:day|optionalDay)\(/.test(line), input === 'day', `${slug} ${name}`);
      if (typeof input === 'object') assert.match(line, /^(?:choice|optionalChoice)\(/, `${slug} ${name}`);
      for (const [, word] of /^choice\(\[(.*?)\]/.exec(line)?.[1]?.matchAll(/'([^']*)'/g) ?? [])
        assert.ok(input === 'text' || (input as readonly string[]).includes(word!), `${slug} ${name} ${word}`);
    }
});

const choicesOf = (slug: Calculator['slug'], name: string): unknown => calculatorInputs[slug][name];

test('the choices are those of the models', () => {
  assert.deepEqual(choicesOf('brood-dates', 'caste'), castes);
  assert.deepEqual(choicesOf('brood-dates', 'seen'), sights);
  assert.deepEqual(choicesOf('mite-count', 'method'), methods);
  assert.deepEqual(choicesOf('weight-check', 'rule'), ruleNames);
  assert.deepEqual(choicesOf('winter-stores', 'mix'), mixes);
});

rows(
  'a value is taken or refused',
  [
    { case: 'a number', given: ['number', '1.5'], expect: null, from: 'the forms' },
    { case: 'a number in words', given: ['number', 'two'], expect: 'a number, without its unit', from: 'the forms' },
    { case: 'half a thing that is counted', given: ['count', '1.5'], expect: 'a whole number, such as 3', from: 'the forms' },
    { case: 'a day', given: ['day', '2026-02-29'], expect: 'a day such as 2026-04-18', from: 'the calendar' },
    { case: 'another choice', given: [['on', 'off'], 'yes'], expect: 'one of: on, off', from: 'the forms' },
    { case: 'left out', given: ['day', ''], expect: null, from: 'the forms' },
  ] as { case: string; given: [Parameters<typeof inputWrong>[0], string]; expect: string | null; from: string }[],
  ([input, value], expect) => assert.equal(inputWrong(input, value), expect),
);
