/*
 * Clubs of any size for benchmarks: the small good club of the tests with as many extra pages as needed. Each has about 450 words, a
 * table, a figure and a few links. A fixed rule picks the words from a list, so that every run has the same.
 */
import { cpSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { goodClub } from '../fixtures/invalid/cases.ts';

const WORDS =
  `hive comb queen brood frame box feeder syrup honey swarm yard smoke veil tool cluster entrance wax cell egg larva worker drone pollen nectar
bloom dearth winter frost weight count sample mite board sugar water strip label season week morning evening shade wind wall stand lid floor cloth cage`.split(
    /\s+/,
  );

/** A small generator of whole numbers below `most`, the same in each run (Park and Miller 1988). */
function numbers(seed: number): (most: number) => number {
  let state = seed * 7919 + 1;
  return (most) => {
    state = (state * 48271) % 2147483647;
    return state % most;
  };
}

function sentence(next: (most: number) => number): string {
  const words = Array.from({ length: 9 + next(7) }, () => WORDS[next(WORDS.length)]!);
  const text = words.join(' ');
  return `${text[0]!.toUpperCase()}${text.slice(1)}.`;
}

const paragraph = (next: (most: number) => number): string => Array.from({ length: 6 }, () => sentence(next)).join(' ');

/** The words of page `number`, without syntax of our own generator. */
function plainBody(number: number): string {
  const next = numbers(number);
  const table = [
    '| what | when | why |',
    '| --- | --- | --- |',
    ...Array.from({ length: 5 }, () => `| ${WORDS[next(WORDS.length)]} | ${sentence(next)} | ${WORDS[next(WORDS.length)]} |`),
  ].join('\n');
  return [
    paragraph(next),
    '## What to do',
    paragraph(next),
    table,
    '## What to look for',
    paragraph(next),
    paragraph(next),
    '## Afterwards',
    paragraph(next),
  ].join('\n\n');
}

/** The same with a figure and a link to the next page, in our syntax. */
function wholeBody(number: number, pages: number, figure: string): string {
  const next = 1 + (number % pages);
  return `${plainBody(number)}\n\nCool it for ${figure}. See [page ${next}](/know-how/${nameOf(next)}/).`;
}

const titleOf = (number: number): string => `Page ${number} on ${WORDS[number % WORDS.length]} and ${WORDS[(number * 7) % WORDS.length]}`;
const nameOf = (number: number): string => `page-${number}`;

/** A club folder with `pages` more articles. */
export function writeClub(folder: string, pages: number): void {
  cpSync(goodClub, folder, { recursive: true });
  for (let number = 1; number <= pages; number += 1) {
    const front = [
      '---',
      `title: ${titleOf(number)}`,
      'summary: A page for measuring.',
      'subject: people',
      'yard: false',
      'sources: [leaflet]',
      'certainty: likely',
      'ask: mentor',
      'checked: 2026-03-01',
      'next-check: 2027-02-01',
      'by: education officer',
      '---',
    ];
    writeFileSync(join(folder, 'articles', `${nameOf(number)}.mdx`), `${front.join('\n')}\n${wholeBody(number, pages, COOLING.mdx)}\n`);
  }
}

/** What our build is compared with: a bare project of the same pages, each with one component, and without checks, calendar or sources. */
export type Bare = 'same' | 'usual' | 'eleventy';

const COOLING: Readonly<Record<'mdx' | 'eleventy', string>> = {
  mdx: '<Figure id="cooling" />',
  eleventy: '{% figure "cooling" %}',
};

/** The file of an article in a club's folder or a bare project. */
export const articleIn = (folder: string, kind: 'ours' | Bare, number = 1): string =>
  join(folder, kind === 'ours' ? 'articles' : 'know-how', `${nameOf(number)}.${kind === 'eleventy' ? 'md' : 'mdx'}`);

/** The address of an article in each of the sites. */
export const articleAt = (number = 1): string => `know-how/${nameOf(number)}/`;

export function writeBareProject(folder: string, pages: number, kind: Bare): void {
  const write = (name: string, text: string): void => {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  };
  write('package.json', '{ "type": "module", "private": true }\n');
  for (const [name, text] of Object.entries(kind === 'eleventy' ? ELEVENTY : astroFiles(kind))) write(name, text);
  const words = COOLING[kind === 'eleventy' ? 'eleventy' : 'mdx'];
  for (let number = 1; number <= pages; number += 1) {
    mkdirSync(dirname(articleIn(folder, kind)), { recursive: true });
    writeFileSync(articleIn(folder, kind, number), `---\ntitle: ${titleOf(number)}\n---\n${wholeBody(number, pages, words)}\n`);
  }
}

/** `same`: with the Markdown processor that we use. `usual`: with the one that Astro takes by itself. */
const astroFiles = (kind: Bare): Readonly<Record<string, string>> => ({
  // Its caches are inside the project, so that a cold build is cold.
  'astro.config.mjs': `${kind === 'same' ? "import { unified } from '@astrojs/markdown-remark';\n" : ''}import mdx from '@astrojs/mdx';
export default { output: 'static', trailingSlash: 'always', cacheDir: './.kept', ${kind === 'same' ? 'markdown: { processor: unified() }, ' : ''}integrations: [mdx()], vite: { cacheDir: './.kept/vite' } };
`,
  'src/content.config.ts': `import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
export const collections = { pages: defineCollection({ loader: glob({ pattern: '*.mdx', base: './know-how' }), schema: z.object({ title: z.string() }) }) };
`,
  'src/components/Figure.astro': '---\nconst { id } = Astro.props;\n---\n<span class="figure" data-figure={id}>10 minutes</span>\n',
  'src/pages/index.astro': `---
import { getCollection } from 'astro:content';
const pages = await getCollection('pages');
---
<html lang="en"><head><title>All</title></head><body><ul>{pages.map((page) => <li><a href={\`/know-how/\${page.id}/\`}>{page.data.title}</a></li>)}</ul></body></html>
`,
  'src/pages/know-how/[id].astro': `---
import { getCollection, render } from 'astro:content';
import Figure from '../../components/Figure.astro';
export async function getStaticPaths() {
  return (await getCollection('pages')).map((page) => ({ params: { id: page.id }, props: { page } }));
}
const { page } = Astro.props;
const { Content } = await render(page);
---
<html lang="en"><head><title>{page.data.title}</title></head><body><main data-pagefind-body><h1>{page.data.title}</h1><Content components={{ Figure }} /></main></body></html>
`,
});

/** With its own Markdown processor; a shortcode is its component. */
const ELEVENTY: Readonly<Record<string, string>> = {
  'eleventy.config.js': `export default function (config) {
  config.addShortcode('figure', (id) => \`<span class="figure" data-figure="\${id}">10 minutes</span>\`);
  return { dir: { input: '.', output: 'dist', includes: 'layouts' } };
}
`,
  'know-how/know-how.json': '{ "layout": "page.liquid", "permalink": "/know-how/{{ page.fileSlug }}/", "tags": "articles" }\n',
  'layouts/page.liquid':
    '<html lang="en"><head><title>{{ title }}</title></head><body><main data-pagefind-body><h1>{{ title }}</h1>{{ content }}</main></body></html>\n',
  'index.liquid':
    '<html lang="en"><head><title>All</title></head><body><ul>{% for page in collections.articles %}<li><a href="{{ page.url }}">{{ page.data.title }}</a></li>{% endfor %}</ul></body></html>\n',
};
