// HTML validation of every page of every club.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { HtmlValidate, type ConfigData } from 'html-validate';
import { builtDemo, builtFixture, type Built } from '../setup/built-site.ts';
import { nothing } from '../e2e/visit.ts';

const config: ConfigData = {
  extends: ['html-validate:recommended'],
  rules: {
    // Astro's MDX closes <br/> and <hr/>, which the standard allows.
    'void-style': 'off',
    // A fragment may begin with a digit or contain accents, because it is made from the words of its heading.
    'valid-id': ['error', { relaxed: true }],
    // The style sheet keeps a telephone number on one line. The number itself stays as its office writes it.
    'tel-non-breaking': 'off',
    // The boxes of one question share a name, as a form submits them.
    'form-dup-name': ['error', { shared: ['radio', 'checkbox', 'button', 'reset', 'submit'] }],
    // A title contains the page's own name and the almanac's, and neither is ours to shorten.
    'long-title': 'off',
    // The frame round a table is a region by its role, so that styles for sections do not apply to it.
    'prefer-native-element': ['error', { exclude: ['region'] }],
  },
};
const validator = new HtmlValidate(config);

async function faultsOf(text: string): Promise<string[]> {
  const { results } = await validator.validateString(text);
  return results.flatMap(({ messages }) => messages.map(({ ruleId, message, line, column }) => `${line}:${column} ${ruleId}: ${message}`));
}

const clubs: [string, () => Promise<Built>][] = [
  ['the demo club', builtDemo],
  ...['southern', 'sub-folder', 'hostile'].map((name): [string, () => Promise<Built>] => [name, () => builtFixture(name)]),
];

for (const [name, build] of clubs) {
  test(`${name}: no fault in any page`, async () => {
    const { pages, base, read } = await build();
    const found: string[] = [];
    for (const page of pages) {
      const path = page.slice(base.length);
      for (const fault of await faultsOf(read(path === '' || path.endsWith('/') ? `${path}index.html` : path)))
        found.push(`${page}: ${fault}`);
    }
    nothing(found);
  });
}

test('every page describes itself to search engines once (HTML standard, 4.2.5.1 "Standard metadata names")', async () => {
  const { pages, base, read } = await builtDemo();
  nothing(
    pages.flatMap((page) => {
      const path = page.slice(base.length);
      const descriptions = [
        ...read(path === '' || path.endsWith('/') ? `${path}index.html` : path).matchAll(/<meta name="description" content="([^"]*)"/g),
      ];
      return descriptions.length === 1 && descriptions[0]![1]!.length > 20 ? [] : [`${page}: ${descriptions.length} descriptions`];
    }),
  );
});

test('the validator detects a fault', async () => {
  const { read } = await builtDemo();
  const page = read('index.html');
  assert.deepEqual(await faultsOf(page), []);
  for (const [broken, rule] of [
    [page.replace('</h1>', '</h2>'), 'close-order'],
    [page.replace('<h1', '<h1 id="text"'), 'no-dup-id'],
    [page.replace('<h1', '<button>x</button><h1'), 'no-implicit-button-type'],
  ] as const)
    assert.ok(
      (await faultsOf(broken)).some((fault) => fault.includes(` ${rule}: `)),
      rule,
    );
});
