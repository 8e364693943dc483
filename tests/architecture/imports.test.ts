// Import directions: from the pages down to shared/, never back.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { files, importsOf, isCode, read, type Import } from './tree.ts';

/**
 * A room's name is the folder of its files. Each calculator and each part of client/ is a room of its own, and so are the mdx components.
 * The components of a calculator run at build, and its other files in the browser: they are two rooms.
 */
export function roomOf(path: string): string {
  const [first = '', second = '', third = ''] = path.split('/');
  if (first === 'shared') return 'shared';
  if (first !== 'src') return first;
  if (second === 'components' && third === 'mdx') return 'components/mdx';
  if (second === 'calculators' && path.endsWith('.astro')) return 'calculators/astro';
  if (second === 'calculators' || second === 'client') return `${second}/${third}`;
  return second;
}

/** The rooms that each room may import, besides itself. `types` are rooms for type imports only. */
const may: Record<string, { values: string[]; types?: string[]; packages?: RegExp }> = {
  shared: { values: [] },
  schemas: { values: ['shared'], packages: /^astro\/zod$/ },
  source: {
    values: ['schemas', 'shared'],
    packages:
      /^(node:.+|yaml|csv-parse\/sync|hast|mdast|astro\/loaders|unified|remark-(gfm|parse)|mdast-util-mdx-jsx|micromark-(extension-mdx-jsx|util-types))$/,
  },
  checks: { values: ['source', 'schemas', 'shared'], packages: /^(node:(fs|path)|hast|mdast|astro\/zod|flesch-kincaid|syllable)$/ },
  pictures: { values: ['source', 'shared'], packages: /^(node:.+|astro\/loaders|sharp)$/ },
  lib: {
    values: ['schemas', 'shared'],
    packages: /^(astro:content|astro\/runtime\/server\/index\.js|node:(path|crypto)|feed|ical-generator|timezones-ical-library)$/,
  },
  'calculators/form': { values: ['shared'] },
  'calculators/astro': { values: ['calculators', 'components', 'lib', 'shared'], types: ['schemas'] },
  calculators: { values: ['calculators/form', 'shared'], packages: /^ical-generator$/ },
  paper: { values: ['shared'], packages: /^(fflate|hast|unist-util-visit)$/ },
  client: { values: ['calculators/form', 'client/qr', 'client/awake', 'shared'], packages: /^ical-generator$/ },
  'client/awake': { values: [] },
  'client/layout': { values: ['calculators/form', 'client/hall', 'shared'] },
  'client/hand-out': { values: ['calculators/form', 'client/layout', 'client/qr', 'paper', 'shared'], packages: /^hast$/ },
  'client/qr': { values: [], packages: /^lean-qr$/ },
  components: { values: ['lib', 'shared'], types: ['schemas', 'calculators/form'] },
  'components/mdx': {
    values: ['components', 'lib', 'source', 'shared'],
    packages: /^(@astrojs\/markdown-remark|hast|mdast|unist-util-visit|vfile)$/,
  },
  layouts: { values: ['components', 'lib', 'shared', 'styles', 'client/layout'], types: ['schemas'] },
  pages: {
    values: ['layouts', 'components', 'components/mdx', 'calculators', 'client', 'calculators/form', 'lib', 'schemas', 'shared'],
    types: [],
    packages: /^astro$/,
  },
  'service-worker': { values: ['shared'], packages: /^workbox-(precaching|routing)\// },
  integration: {
    values: ['source', 'pictures', 'checks', 'lib', 'paper', 'shared'],
    packages: /^(node:.+|astro|hast|hast-util-from-html|hast-util-to-html|hastscript|pagefind|rolldown|unist-util-visit)$/,
  },
  cli: {
    values: ['scripts', 'checks', 'pictures', 'integration', 'source', 'schemas', 'shared'],
    packages: /^(node:.+|astro|astro\/zod|diff|yaml|@playwright\/test|sharp|vite)$/,
  },
  'env.d.ts': { values: [], types: ['lib'], packages: /^astro\/runtime\/server\/index\.js$/ },
  'middleware.ts': { values: ['lib'], packages: /^astro:middleware$/ },
  'content.config.ts': { values: ['lib', 'pictures', 'source', 'schemas'], packages: /^astro:content$/ },
};

function faultsIn(path: string, imports: Import[]): string[] {
  const room = roomOf(path);
  const rule = may[room] ?? may[room.split('/')[0]!];
  if (!rule) return [`${path}: in no room that is known`];
  return imports.flatMap(({ from, to, typeOnly }) => {
    if (!from.startsWith('.')) return rule.packages?.test(from) ? [] : [`${path} imports ${from}`];
    const other = roomOf(to);
    if (other === room) return [];
    const names = [...rule.values, ...(typeOnly ? (rule.types ?? []) : [])];
    const fits = names.includes(other) || names.includes(other.split('/')[0]!);
    return fits ? [] : [`${path} imports ${to}${typeOnly ? ' (a type)' : ''}: ${room} may not use ${other}`];
  });
}

const ours = files().filter((path) => isCode(path) && /^(src|shared)\//.test(path));

test('every import follows the import directions', () => {
  assert.ok(ours.length > 100, `${ours.length} files`);
  const all = ours.map((path) => ({ path, imports: importsOf(path) }));
  assert.ok(all.reduce((sum, { imports }) => sum + imports.length, 0) > 200);
  assert.deepEqual(
    all.flatMap(({ path, imports }) => faultsIn(path, imports)),
    [],
  );
});

test('every imported file exists', () => {
  const there = new Set(files());
  const lost = [...ours, ...files('tests').filter(isCode)].flatMap((path) =>
    importsOf(path)
      .filter(({ from, to }) => from.startsWith('.') && !there.has(to))
      .map(({ to }) => `${path} imports ${to}`),
  );
  assert.deepEqual(lost, []);
});

test('only two files of lib import from Astro: one for entries, one for their words', () => {
  assert.deepEqual(
    ours.filter((path) => importsOf(path).some(({ from }) => from === 'astro:content')),
    ['src/content.config.ts', 'src/lib/content.ts', 'src/lib/render-words.ts'],
  );
});

test('every imported package is listed in package.json, and every listed package is used', () => {
  const listedIn = (path: string): Record<string, string> => {
    const { dependencies, devDependencies } = JSON.parse(read(path)) as Record<string, Record<string, string>>;
    return { ...dependencies, ...devDependencies };
  };
  const listed = listedIn('package.json');
  const nameOf = (from: string): string =>
    from
      .split('/')
      .slice(0, from.startsWith('@') ? 2 : 1)
      .join('/');
  // Packages for the bench alone have a list of their own.
  const apart = 'tests/bench/lighthouse/';
  const usedApart = files()
    .filter((path) => isCode(path) && path.startsWith(apart))
    .flatMap((path) => importsOf(path).map(({ from }) => nameOf(from)));
  assert.deepEqual(usedApart.sort(), Object.keys(listedIn(`${apart}package.json`)));
  const code = files().filter((path) => isCode(path) && !path.startsWith(apart));
  const used = new Map<string, string>();
  for (const path of code)
    for (const { from } of importsOf(path)) if (!/^(\.|node:|astro:|virtual:)/.test(from)) used.set(nameOf(from), path);
  // Packages without ES modules are required by name.
  for (const path of code)
    for (const [, name] of read(path).matchAll(/(?:[rR]equire\b|import\.meta\.resolve)[^\n]*?\('([a-z@][\w@/-]*)'\)/g))
      used.set(nameOf(name!), path);
  const asTypes = (name: string): boolean => `@types/${name}` in listed;
  assert.deepEqual(
    [...used].filter(([name]) => !(name in listed) && !asTypes(name)).map(([name, path]) => `${path} imports ${name}`),
    [],
  );
  // Named in a setting, used by a command, or required by another package here.
  const otherwise = [
    '@types/node',
    '@astrojs/check',
    'prettier',
    'prettier-plugin-astro',
    'zod',
    'eslint',
    'eslint-plugin-astro',
    'typescript-eslint',
    'knip',
  ];
  assert.deepEqual(
    Object.keys(listed).filter((name) => !used.has(name) && !otherwise.includes(name) && !used.has(name.replace('@types/', ''))),
    [],
  );
});

for (const [path, code, fault] of [
  [
    'shared/mites/rate.ts',
    "import { a } from '../../src/lib/page-context.ts';",
    'shared/mites/rate.ts imports src/lib/page-context.ts: shared may not use lib',
  ],
  ['shared/mites/rate.ts', "import { readFileSync } from 'node:fs';", 'shared/mites/rate.ts imports node:fs'],
  [
    'src/calculators/syrup/form.ts',
    "export * from '../mite-count/text.en.ts';",
    'src/calculators/syrup/form.ts imports src/calculators/mite-count/text.en.ts: calculators/syrup may not use calculators/mite-count',
  ],
  [
    'src/calculators/syrup/form.ts',
    "const later = import('../../schemas/fields.ts');",
    'src/calculators/syrup/form.ts imports src/schemas/fields.ts: calculators/syrup may not use schemas',
  ],
  [
    'src/components/Footer.astro',
    "---\nimport type { Club } from '../schemas/club.ts';\nimport { club } from '../schemas/club.ts';\n---\n",
    'src/components/Footer.astro imports src/schemas/club.ts: components may not use schemas',
  ],
  [
    'src/pages/year.astro',
    "<p></p><script>\n  import '../checks/check.ts';\n</script>",
    'src/pages/year.astro imports src/checks/check.ts: pages may not use checks',
  ],
  [
    'src/checks/check.ts',
    "import { writeOutputs } from '../integration/outputs.ts';",
    'src/checks/check.ts imports src/integration/outputs.ts: checks may not use integration',
  ],
  ['src/integration/outputs.ts', "import { getCollection } from 'astro:content';", 'src/integration/outputs.ts imports astro:content'],
] as const) {
  test(`seen: ${fault}`, () => assert.deepEqual(faultsIn(path, importsOf(path, code)), [fault]));
}
