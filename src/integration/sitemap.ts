/* Sitemap for web search engines. */
import type { BuiltPage } from './built-pages.ts';

/** Every published page by its complete address. `root` is the address of the first page. */
export function sitemap(root: string, pages: readonly BuiltPage[]): string {
  const lines = pages.map(({ place }) => `  <url><loc>${escaped(new URL(place, root).href)}</loc></url>`);
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
    ...lines,
    '</urlset>',
    '',
  ].join('\n');
}

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;').replaceAll("'", '&apos;');
