import assert from 'node:assert/strict';
import { join, resolve } from 'node:path';
import { test } from 'vitest';
import { err, unwrap } from '../../../shared/result.ts';
import { readArguments } from '../../../src/cli/arguments.ts';
import type { CommandName } from '../../../src/cli/commands.ts';
import { projectFolder } from '../../../src/cli/paths.ts';

const home = resolve('/home/webmaster');
const environment = { INIT_CWD: home };

test('missing options have their defaults', () => {
  const read = readArguments('build', [], environment);
  assert.deepEqual(unwrap(read), {
    words: [],
    values: {
      content: join(projectFolder, 'content', 'demo-club'),
      out: undefined,
      base: undefined,
      site: undefined,
      edition: undefined,
      'last-good': false,
    },
  });
});

test("folders are relative to the person's directory", () => {
  const typed = ['--content', '../club', '--out=site', '--base', '/club/', '--edition', '2028-02-29'];
  const { values } = unwrap(readArguments('build', typed, environment));
  assert.equal(values.content, resolve('/home/club'));
  assert.equal(values.out, join(home, 'site'));
  assert.equal(values.base, '/club/');
  assert.equal(values.edition, '2028-02-29');
});

test('withdraw takes an entry, a reason, and no address of its own', () => {
  const read = readArguments('withdraw', ['articles/swarms', 'It can mislead', '--out', 'site'], environment);
  assert.deepEqual(unwrap(read), {
    words: ['articles/swarms', 'It can mislead'],
    values: {
      content: join(projectFolder, 'content', 'demo-club'),
      out: join(home, 'site'),
      base: undefined,
      site: undefined,
      on: undefined,
    },
  });
});

test('flags, choices and positional words', () => {
  const check = unwrap(readArguments('check', ['--format', 'json', '--strict', '--on', '2026-05-01'], environment));
  assert.deepEqual(
    [check.values.format, check.values.strict, check.values['write-ids'], check.values.on],
    ['json', true, false, '2026-05-01'],
  );
  const fresh = unwrap(readArguments('new', ['article', 'Swarms in May', '--content', 'club'], environment));
  assert.deepEqual(fresh.words, ['article', 'Swarms in May']);
});

const mistakes: { case: CommandName; given: string[]; expect: string }[] = [
  { case: 'build', given: ['--contnt', 'x'], expect: 'There is no option --contnt; did you mean --content?' },
  { case: 'build', given: ['--abse=/x/'], expect: 'There is no option --abse; did you mean --base?' },
  {
    case: 'review',
    given: ['--verbose'],
    expect:
      "There is no option --verbose. review takes --content my-club (the club's folder), --on 2026-05-01 (the day that counts as today), --all (the pages of the books too, which are for their editors), --reading (how hard the pages are to read, the hardest first).",
  },
  {
    case: 'bench',
    given: ['-q'],
    expect:
      'There is no option -q. bench takes --quick (the largest club left out, fewer rounds), --part builds|preview|new-club|check|pages|answers|lighthouse (one part of it), --record (a whole run, kept in tests/bench/RESULTS.md).',
  },
  {
    case: 'withdraw',
    given: ['articles/swarms', 'It', 'can', 'mislead'],
    expect: 'Put all the words of the reason in quotes: npm run withdraw -- articles/swarms "It can mislead".',
  },
  {
    case: 'withdraw',
    given: ['articles/swarms', 'It can mislead', '--on', 'today'],
    expect: '--on takes a day written as 2026-05-01, not today.',
  },
  { case: 'withdraw', given: ['--oh'], expect: 'There is no option --oh; did you mean --on?' },
  { case: 'build', given: ['--last-good=yes'], expect: '--last-good takes no value; write --last-good alone.' },
  { case: 'build', given: ['--content'], expect: '--content needs a folder after it.' },
  { case: 'build', given: ['--content', '--out', 'x'], expect: '--content needs a folder after it.' },
  { case: 'build', given: ['--out='], expect: '--out needs a folder after it.' },
  { case: 'build', given: ['--out', 'a', '--out', 'b'], expect: '--out is given twice.' },
  { case: 'build', given: ['--base', 'club'], expect: '--base takes a path that begins and ends with a slash, as in /club/, not club.' },
  {
    case: 'build',
    given: ['--base', '/a//b/'],
    expect: '--base takes a path that begins and ends with a slash, as in /club/, not /a//b/.',
  },
  {
    case: 'build',
    given: ['--site', 'club.example'],
    expect: '--site takes an address without a path, as in https://club.example, not club.example.',
  },
  {
    case: 'build',
    given: ['--site', 'https://club.example/sub/'],
    expect: '--site takes an address without a path, as in https://club.example, not https://club.example/sub/.',
  },
  { case: 'build', given: ['--edition', '2026-02-30'], expect: '--edition takes a day written as 2026-05-01, not 2026-02-30.' },
  { case: 'build', given: ['--edition', '1 May 2026'], expect: '--edition takes a day written as 2026-05-01, not 1 May 2026.' },
  { case: 'check', given: ['--format', 'xml'], expect: '--format takes text or json, not xml.' },
  { case: 'check', given: ['--strict=yes'], expect: '--strict takes no value; write --strict alone.' },
  {
    case: 'start',
    given: ['my-club'],
    expect: 'start does not know what to do with "my-club". start takes --content my-club (the club\'s folder).',
  },
];

for (const { case: name, given, expect } of mistakes) {
  test(`${name} ${given.join(' ')}`, () => {
    assert.deepEqual(readArguments(name, given, environment), err({ help: false, sentence: expect }));
  });
}

test('an option that npm took for its own is pointed out', () => {
  const read = readArguments('build', ['my-club'], { ...environment, npm_config_content: 'true' });
  const sentence = 'npm kept --content for itself. Write two dashes before the options: npm run build -- --content my-club';
  assert.deepEqual(read, err({ help: false, sentence }));
});

test('help is asked for, not a mistake', () => {
  const read = readArguments('test', ['--help'], environment);
  assert.deepEqual(read, err({ help: true, sentence: 'test takes PATTERN and --slow (the slow tests too).' }));
});
