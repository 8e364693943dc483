// Where files may lie and what they may be called; and what the project's words never mention.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { basename } from 'node:path';
import { files, isCode, isText, read } from './tree.ts';

const all = files();
const collections =
  'checklists bulletins articles reading meetings treatments forage words figures sources cautions signs notices counts drawings';

/** Every file lies in one of these rooms. */
const rooms: RegExp[] = [
  /^(README|DEVELOPERS|LICENSE|CHANGELOG)\.md$|^LICENSE$/,
  /^(package|package-lock|tsconfig)\.json$|^(knip\.json|eslint\.config\.js)$|^\.github\/workflows\/publish\.yml$|^astro\.config\.mjs$|^\.(gitignore|npmrc|gitattributes|editorconfig|prettierrc|prettierignore)(\.json)?$/,
  /^\.ci\/run$/,
  new RegExp(`^content/(club\\.yaml|README\\.md|(${collections.replaceAll(' ', '|')})/[^/]+)$`),
  /^shared\/([a-z-]+\/)?[a-z0-9-]+\.ts$/,
  /^src\/(content\.config|env\.d)\.ts$/,
  /^src\/components\/mdx\/([A-Z][A-Za-z]+\.astro|[a-z-]+\.ts)$/,
  /^src\/(schemas|reader|pictures|library|publish|checks|worker)\/[a-z0-9-]+\.ts$/,
  /^src\/publish\/book\/[a-z0-9-]+\.(ts|css)$/,
  /^src\/desk\/(new\/)?[a-z0-9.-]+\.(ts|mjs)$|^src\/desk\/newer-node\/(package|package-lock)\.json$|^src\/desk\/newer-node\/\.npmrc$/,
  /^src\/islands\/[a-z-]+\/[a-z0-9-]+\.ts$/,
  /^src\/(components|layouts)\/[A-Z][A-Za-z]+\.astro$/,
  /^src\/pages\/([a-z-]+\/)?(\[[a-z.]+\]|[a-z0-9-]+)\.(astro|ts|[a-z]+\.ts)$/,
  /^src\/styles\/([a-z-]+\.css|fonts\/[A-Za-z0-9-]+\.(woff2|txt))$/,
  /^public\/[a-z0-9./_-]+$/,
  /^tests\/((rows|coverage)\.ts|CONFORMANCE\.md)$/,
  /^tests\/(shared|schemas|reader|pictures|checks|library|components|islands|publish|desk|site|house|build|long|bench)\//,
  /^tests\/(tables|fixtures|faulty)\//,
];

test('every file lies in a room of the house', () => {
  assert.ok(all.length > 300, `${all.length} files`);
  assert.deepEqual(
    all.filter((path) => !rooms.some((room) => room.test(path))),
    [],
  );
});

const banned = 'util helper common misc manager handler data info service base'.split(' ');

const bannedName = (path: string): boolean =>
  path.split('/').some((part) =>
    part
      .replace(/\.[a-z.]+$/i, '')
      .split(/[-_.]|(?<=[a-z])(?=[A-Z])/)
      .some((word) => banned.includes(word.toLowerCase().replace(/s$/, '')) || banned.includes(word.toLowerCase())),
  );

test('no file or folder has a name that says nothing', () => {
  const code = all.filter(
    (path) => /^(src|shared|tests)\//.test(path) && !path.startsWith('tests/fixtures/') && !path.startsWith('tests/fixtures/invalid/'),
  );
  assert.deepEqual(code.filter(bannedName), []);
  for (const path of [
    'src/library/utils.ts',
    'src/islands/helper/a.ts',
    'src/library/FormHandler.ts',
    'shared/data.ts',
    'shared/mites/base-info.ts',
  ])
    assert.ok(bannedName(path), path);
});

test('nothing exported has such a name', () => {
  const exported = (path: string): string[] =>
    [...read(path).matchAll(/^export (?:async )?(?:function|const|class|interface|type) (\w+)/gm)].map((match) => match[1]!);
  const code = all.filter((path) => isCode(path) && /^(src|shared)\//.test(path));
  const words = (name: string): string[] => name.split(/_|(?<=[a-z])(?=[A-Z])/).map((word) => word.toLowerCase());
  const wrong = (name: string): boolean =>
    words(name).some((word) => ['util', 'utils', 'helper', 'helpers', 'misc', 'manager', 'handler', 'service'].includes(word));
  assert.deepEqual(
    code.flatMap((path) =>
      exported(path)
        .filter(wrong)
        .map((name) => `${path}: ${name}`),
    ),
    [],
  );
  assert.ok(wrong('formHelper') && wrong('ClickHandler') && !wrong('handled'));
});

// Written in pieces, so that this file does not mention them itself.
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

test('sizes, longest first, to be looked at and never failed on', (t) => {
  const limits: [RegExp, number][] = [
    [/^shared\//, 60],
    [/^src\/schemas\//, 60],
    [/^src\/pages\//, 40],
    [/^src\/components\//, 60],
    [/^src\/islands\//, 100],
    [/^src\/checks\//, 60],
    [/^tests\/.*\.test\.ts$/, 80],
  ];
  const sizes = all
    .filter(isCode)
    .map((path) => ({ path, lines: read(path).split('\n').length }))
    .sort((a, b) => b.lines - a.lines);
  assert.ok(sizes.length > 0);
  for (const { path, lines } of sizes.slice(0, 20)) {
    const aim = limits.find(([room]) => room.test(path))?.[1];
    void t.annotate(`${lines} lines  ${basename(path)}  ${path}${aim ? `  (aim ${aim})` : ''}`);
  }
});
