/* Drawn pages as files: each with its path below the base, its HTML, and the words of its main text. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';

export type BuiltPage = {
  /** The file inside the site, with forward slashes: `pests/varroa/index.html`. */
  file: string;
  /** The path below the base: `pests/varroa/`, or empty for the first page. */
  place: string;
  html: string;
};

/** Every page of the site, in the same order on every machine. */
export function builtPages(site: string): BuiltPage[] {
  return readdirSync(site, { recursive: true, encoding: 'utf8' })
    .map((file) => file.split(sep).join('/'))
    .filter((file) => file.endsWith('.html'))
    .sort()
    .map((file) => ({ file, place: file.replace(/(^|\/)index\.html$/, '$1'), html: readFileSync(join(site, file), 'utf8') }));
}

/** The 404 page and withdrawal notices are answers to old links. Nothing links to them. */
export const isPublished = (page: BuiltPage): boolean => page.place !== '404.html' && !/<main [^>]*data-withdrawn/.test(page.html);

/** The words of the main text, without its sidebar of notes and reviews. */
export function mainWords({ html }: BuiltPage): string {
  const main = /<main[^>]*>([\s\S]*)<\/main>/.exec(html)?.[1] ?? '';
  return plainWords(main.replace(/<aside class="sidebar"[\s\S]*<\/aside>/, ' '));
}

export const titleOf = ({ html }: BuiltPage): string => plainWords(/<h1[^>]*>([\s\S]*?)<\/h1>/.exec(html)?.[1] ?? '');

/** HTML as its visible words. A source mark is no part of the number before it. */
export function plainWords(html: string): string {
  return html
    .replace(/<(script|style|svg)\b[\s\S]*?<\/\1>/g, ' ')
    .replace(/<sup class="mark">[\s\S]*?<\/sup>/g, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/&(?:#x([0-9a-f]+)|#(\d+)|(amp|lt|gt|quot|nbsp));/gi, (_, hex?: string, number?: string, name?: string) =>
      name ? NAMED[name.toLowerCase()]! : String.fromCodePoint(hex ? Number.parseInt(hex, 16) : Number(number)),
    )
    .replace(/\s+/g, ' ')
    .trim();
}

const NAMED: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', nbsp: ' ' };
