/*
 * Clubs of any size for measuring: the small good club of the tests and as many further pages as asked for, each of about 450
 * words, a table, a figure and a few links. The words are drawn from a list by a fixed rule, so that every run has the same.
 */
import { cpSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { goodClub } from '../faulty/cases.ts';

const WORDS = `hive comb queen brood frame box feeder syrup honey swarm yard smoke veil tool cluster entrance wax cell egg larva worker drone pollen nectar
bloom dearth winter frost weight count sample mite board sugar water strip label season week morning evening shade wind wall stand lid floor cloth cage`.split(/\s+/);

/** A small generator of whole numbers below `most`, the same each time (Park and Miller 1988). */
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

/** The words of page `number`, with nothing that only our own generator knows. */
export function plainBody(number: number): string {
  const next = numbers(number);
  const table = ['| what | when | why |', '| --- | --- | --- |', ...Array.from({ length: 5 }, () => `| ${WORDS[next(WORDS.length)]} | ${sentence(next)} | ${WORDS[next(WORDS.length)]} |`)].join('\n');
  return [paragraph(next), '## What to do', paragraph(next), table, '## What to look for', paragraph(next), paragraph(next), '## Afterwards', paragraph(next)].join('\n\n');
}

export const titleOf = (number: number): string => `Page ${number} on ${WORDS[number % WORDS.length]} and ${WORDS[(number * 7) % WORDS.length]}`;
export const nameOf = (number: number): string => `page-${number}`;

/** A club folder with `pages` more articles. */
export function writeClub(folder: string, pages: number): void {
  cpSync(goodClub, folder, { recursive: true });
  for (let number = 1; number <= pages; number += 1) {
    const front = ['---', `title: ${titleOf(number)}`, 'summary: A page for measuring.', 'subject: people', 'yard: false', 'sources: [leaflet]', 'certainty: likely', 'ask: mentor', 'checked: 2026-03-01', 'next-check: 2027-02-01', 'by: education officer', '---'];
    const body = `${plainBody(number)}\n\nCool it for <Figure id="cooling" />. See [page ${1 + (number % pages)}](/know-how/${nameOf(1 + (number % pages))}/).`;
    writeFileSync(join(folder, 'articles', `${nameOf(number)}.mdx`), `${front.join('\n')}\n${body}\n`);
  }
}

/**
 * The same pages as a bare Astro project: one layout, one collection, no checks, no calendar, no figures. `.mdx` with a
 * component on each page, as ours have a tag; `.md` is the harder measure, since it needs no compiling of modules.
 */
export function writeBareProject(folder: string, pages: number, ending: '.mdx' | '.md'): void {
  const write = (name: string, text: string): void => {
    mkdirSync(join(folder, name, '..'), { recursive: true });
    writeFileSync(join(folder, name), text);
  };
  const mdx = ending === '.mdx';
  write('package.json', '{ "type": "module", "private": true }\n');
  write('astro.config.mjs', `${mdx ? "import mdx from '@astrojs/mdx';\n" : ''}export default { output: 'static', trailingSlash: 'always'${mdx ? ', integrations: [mdx()]' : ''} };\n`);
  write('src/content.config.ts', `import { defineCollection } from 'astro:content';\nimport { glob } from 'astro/loaders';\nimport { z } from 'astro/zod';\nexport const collections = { pages: defineCollection({ loader: glob({ pattern: '*${ending}', base: './pages' }), schema: z.object({ title: z.string() }) }) };\n`);
  write('src/components/Figure.astro', '<b>{Astro.props.id}: 10 minutes</b>\n');
  write('src/pages/index.astro', "---\nimport { getCollection } from 'astro:content';\nconst pages = await getCollection('pages');\n---\n<html lang=\"en\"><head><title>All</title></head><body><ul>{pages.map((page) => <li><a href={`/know-how/${page.id}/`}>{page.data.title}</a></li>)}</ul></body></html>\n");
  write('src/pages/know-how/[id].astro', "---\nimport { getCollection, render } from 'astro:content';\nimport Figure from '../../components/Figure.astro';\nexport async function getStaticPaths() {\n  return (await getCollection('pages')).map((page) => ({ params: { id: page.id }, props: { page } }));\n}\nconst { page } = Astro.props;\nconst { Content } = await render(page);\n---\n<html lang=\"en\"><head><title>{page.data.title}</title></head><body><main data-pagefind-body><h1>{page.data.title}</h1><Content components={{ Figure }} /></main></body></html>\n");
  for (let number = 1; number <= pages; number += 1) {
    const figure = mdx ? '<Figure id="cooling" />' : '10 minutes';
    write(`pages/${nameOf(number)}${ending}`, `---\ntitle: ${titleOf(number)}\n---\n${plainBody(number)}\n\nCool it for ${figure}. See [page ${1 + (number % pages)}](/know-how/${nameOf(1 + (number % pages))}/).\n`);
  }
}
