/*
 * The search index over the drawn pages, as static files that the browser reads in pieces. What is put into a page here
 * only the index sees: the names under which people look for it, and its ratios in a form that keeps both numbers.
 */
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { mainWords, plainWords, type BuiltPage } from './built-pages.ts';
import type { Word } from './handed-over.ts';

/** Written by the engine for its own ways of showing results, which the almanac does not use. */
const UNUSED = ['pagefind-component-ui.css', 'pagefind-component-ui.js', 'pagefind-highlight.js', 'pagefind-modular-ui.css', 'pagefind-modular-ui.js', 'pagefind-ui.css', 'pagefind-ui.js', 'pagefind-worker.js', 'wasm.unknown.pagefind'];

/** The mark of a source is no part of the number before it; what is hidden, pressed or filled in is no text; cautions and pages named at the foot stand on many pages and answer for none. */
const NOT_READ = ['sup.mark', '[hidden]', 'form', 'button', 'svg', '.box:not(.law)', '[data-pagefind-filter="kind:pest or disease"] ul.rows', '[data-pagefind-filter="kind:meeting"] ul.rows'];

/** Where two words may touch in a file and stand apart on the page. */
const APART = /<\/(?:td|th|caption|dt|dd|legend|summary)>|<br>/g;

/** Pages that gather others would answer every question: their words count little beside their names. */
const GATHERS: Record<string, string[]> = {
  'year/': ['what to do this month', 'January February March April May June July August September October November December'],
  'meetings/': ['next meeting', 'when and where we meet', 'meeting dates', 'calendar'],
  'signs/': ['start from the signs', 'what is wrong with my bees', 'symptoms', 'which disease', 'sick brood'],
  'about/': [],
  'words/': [],
};

/** Pages handed over at once: few enough to keep little in memory. */
const ON_THE_WAY = 50;

/** Indexes every page that asks for it; returns how many. */
export async function indexPages(site: string, pages: readonly BuiltPage[], words: readonly Word[]): Promise<number> {
  const pagefind = await import('pagefind');
  const { index, errors } = await pagefind.createIndex({ forceLanguage: 'en', excludeSelectors: NOT_READ });
  if (!index) throw new Error(`the search index could not be made (${errors.join('; ')})`);
  const asked = pages.filter((page) => page.html.includes('data-pagefind-body') || page.place in GATHERS);
  const faults: string[] = [];
  // The engine numbers pages in the order in which it is handed them. Some are on their way while it reads, so that neither waits for the other.
  for (let first = 0; first < asked.length; first += ON_THE_WAY) {
    const some = asked.slice(first, first + ON_THE_WAY).map((page) => index.addHTMLFile({ sourcePath: page.file, content: forIndex(page, words) }));
    for (const { errors: told } of await Promise.all(some)) faults.push(...told);
  }
  const out = join(site, 'pagefind');
  faults.push(...(await index.writeFiles({ outputPath: out })).errors);
  await pagefind.close();
  if (faults.length > 0) throw new Error(`the search index could not be made (${faults.join('; ')})`);
  for (const name of UNUSED) rmSync(join(out, name), { force: true });
  return asked.length;
}

/** The page with what only the index reads. */
export function forIndex(page: BuiltPage, words: readonly Word[]): string {
  const gathers = GATHERS[page.place];
  const names = words.filter(({ more }) => more?.slice(1).replace(/#.*/, '') === page.place).flatMap((word) => word.names);
  const when = /data-pagefind-filter="kind:meeting"/.test(page.html) ? plainWords(/<main[\s\S]*?<time[^>]*>([\s\S]*?)<\/time>/.exec(page.html)?.[1] ?? '') : '';
  const also = [...names, ...(gathers ?? []), ...ratiosOf(mainWords(page))].join('; ');
  const sought = Object.entries({ also, when }).filter(([, words]) => words !== '');
  const attributes = [
    ...(gathers ? ['data-pagefind-weight="0.2"'] : []),
    ...(page.place === 'meetings/' ? ['data-pagefind-body', 'data-kind="meeting"', 'data-pagefind-filter="kind[data-kind]"'] : []),
    ...sought.map(([name, words]) => `data-${name}-sought="${words.replaceAll('&', '&amp;').replaceAll('"', '&quot;')}"`),
    ...(sought.length > 0 ? [`data-pagefind-meta="${sought.map(([name]) => `${name}[data-${name}-sought]`).join(', ')}"`] : []),
  ];
  // Letters in a drawing, and what only paper shows, are no answer on a screen; what a picture shows is. The engine reads no label, and the words of a step stand in one.
  return page.html.replace(/<img\b/g, '<img data-pagefind-index-attrs="alt"').replace(/<svg\b/g, '<svg data-pagefind-ignore').replace(/class="(?=only-paper\b)/g, 'data-pagefind-ignore class="').replace(/<(\/?)label\b/g, '<$1div').replace(APART, ' $&').replace('<main ', `<main ${attributes.map((each) => `${each} `).join('')}`);
}

/** "2:1" as 2to1: the engine drops the sign between, and twenty-one is another number. */
export const ratiosOf = (text: string): string[] => [...new Set([...text.matchAll(/(?<![\d:])(\d{1,2}):(\d)(?![\d:])/g)].map(([, a, b]) => `${a}to${b}`))];
