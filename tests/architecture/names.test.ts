// Names of files and exports describe what they do, and no file mentions machine paths or how it was made.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { files, isCode, isText, read } from './tree.ts';

const all = files();

/** Words that do not describe what a file or an export does. */
const banned = ['util', 'utils', 'helper', 'helpers', 'misc', 'manager', 'managers'];

const wordsIn = (name: string): string[] => name.split(/[-_.]|(?<=[a-z])(?=[A-Z])/).map((word) => word.toLowerCase());
const saysNothing = (name: string): boolean => wordsIn(name).some((word) => banned.includes(word));

test('no file or folder has a name without meaning', () => {
  const named = all.filter((path) => /^(src|shared|tests|docs|scripts)\//.test(path) && !path.startsWith('tests/fixtures/'));
  assert.ok(named.length > 300, `${named.length} files`);
  assert.deepEqual(
    named.filter((path) => path.split('/').some(saysNothing)),
    [],
  );
  for (const name of ['utils.ts', 'helper', 'FormManager.ts', 'misc-notes.md']) assert.ok(saysNothing(name), name);
  for (const name of ['service-worker', 'base.css', 'data.ts', 'handler.ts', 'information.ts']) assert.ok(!saysNothing(name), name);
});

test('no export has a name without meaning', () => {
  const exported = (path: string): string[] =>
    [...read(path).matchAll(/^export (?:async )?(?:function|const|class|interface|type) (\w+)/gm)].map((match) => match[1]!);
  assert.deepEqual(
    all
      .filter((path) => isCode(path) && /^(src|shared)\//.test(path))
      .flatMap((path) =>
        exported(path)
          .filter(saysNothing)
          .map((name) => `${path}: ${name}`),
      ),
    [],
  );
  assert.ok(saysNothing('formHelper') && !saysNothing('handled'));
});

// In pieces, so that this file does not contain the words itself.
const mentions: RegExp[] = [
  new RegExp(['(^|[\\s"\'`(])/', '(work|root|tmp)', '/[a-z]'].join('')),
  new RegExp(['\\.\\./\\.?\\.?/?', 'shared/', '(design|cases|reference|hooks)'].join('')),
  new RegExp(
    `\\b(${['HOUSE', 'BUDGETS', 'LOOK', 'STACK', 'CALCULATORS', 'PUBLISHED-VALUES', 'SEASON-VALUES', 'CASES', 'COURSE', 'QUESTIONS', 'STYLE-ANCHORS'].join('|')})\\.md\\b`,
  ),
  new RegExp(['\\b', 'issue', ' #?\\d'].join('')),
  new RegExp(`\\b(${['sub-?ag(?:ent)', 'language mod(?:el)', 'chat ?b(?:ot)', 'as an a(?:i)', 'l(?:lm)'].join('|')})\\b`, 'i'),
  new RegExp(
    `\\b(${['this', 'my', 'another', 'a later', 'the next', 'an earlier'].join('|')}) (${['session', 'helper'].join('|')})\\b`,
    'i',
  ),
];

function mentionIn(line: string): boolean {
  return mentions.some((pattern) => pattern.test(line));
}

test('no file mentions how, where or by whom it was made', () => {
  const found = all
    .filter((path) => isText(path) && !path.endsWith('package-lock.json'))
    .flatMap((path) =>
      read(path)
        .split('\n')
        .flatMap((line, index) => (mentionIn(line) ? [`${path}:${index + 1}: ${line.trim().slice(0, 120)}`] : [])),
    );
  assert.deepEqual(found, []);
  for (const line of [
    ['see /wo', 'rk/main'],
    ['as HOU', 'SE.md says'],
    ['../sha', 'red/design/x'],
    ['iss', 'ue 12'],
    ['in this ses', 'sion'],
    ['a sub', 'agent did it'],
  ])
    assert.ok(mentionIn(line.join('')), line.join(''));
});
