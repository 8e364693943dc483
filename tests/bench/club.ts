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

/** The format of a bare project: MDX with a component on each page, like ours, or plain Markdown, which is less work. */
export type Written = 'mdx' | 'md';

const COOLING: Record<Written, string> = { mdx: '<Figure id="cooling" />', md: '10 minutes' };

/**
 * The same pages as a bare Astro project with the same Markdown processor: one layout, one collection, one component; no checks, no
 * calendar, no sources.
 */
export function writeBareProject(folder: string, pages: number, written: Written): void {
  const write = (name: string, text: string): void => {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  };
  write('package.json', '{ "type": "module", "private": true }\n');
  write('astro.config.mjs', bareConfig(written));
  write(
    'src/content.config.ts',
    `import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
export const collections = { pages: defineCollection({ loader: glob({ pattern: '*.${written}', base: './pages' }), schema: z.object({ title: z.string() }) }) };
`,
  );
  write('src/components/Figure.astro', '---\nconst { id } = Astro.props;\n---\n<span class="figure" data-figure={id}>10 minutes</span>\n');
  write('src/pages/index.astro', BARE_LIST);
  write('src/pages/know-how/[id].astro', BARE_PAGE);
  for (let number = 1; number <= pages; number += 1)
    write(`pages/${nameOf(number)}.${written}`, `---\ntitle: ${titleOf(number)}\n---\n${wholeBody(number, pages, COOLING[written])}\n`);
}

// Its caches are inside the project, so that a cold build is cold.
const bareConfig = (written: Written): string => `import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
export default { output: 'static', trailingSlash: 'always', cacheDir: './.kept', markdown: { processor: unified() }, integrations: [${written === 'mdx' ? 'mdx()' : ''}], vite: { cacheDir: './.kept/vite' } };
`;

const BARE_LIST = `---
import { getCollection } from 'astro:content';
const pages = await getCollection('pages');
---
<html lang="en"><head><title>All</title></head><body><ul>{pages.map((page) => <li><a href={\`/know-how/\${page.id}/\`}>{page.data.title}</a></li>)}</ul></body></html>
`;

const BARE_PAGE = `---
import { getCollection, render } from 'astro:content';
import Figure from '../../components/Figure.astro';
export async function getStaticPaths() {
  return (await getCollection('pages')).map((page) => ({ params: { id: page.id }, props: { page } }));
}
const { page } = Astro.props;
const { Content } = await render(page);
---
<html lang="en"><head><title>{page.data.title}</title></head><body><main data-pagefind-body><h1>{page.data.title}</h1><Content components={{ Figure }} /></main></body></html>
`;
