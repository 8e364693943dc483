/* Compares the numbers of each page in a browser with those in the search index, one by one. */
import type { Browser } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { recordsIn } from './search-engine.ts';
import { desk, visit } from './visit.ts';

/** `takes`: of all pages with their own text, in the order of their addresses. Returns the differences and the number of numbers. */
export async function numbersUnlike(
  { browser, site }: { browser: Browser; site: Site },
  takes: (address: string, at: number) => boolean,
): Promise<{ found: string[]; numbers: number }> {
  const records = recordsIn(site.folder);
  // A list whose entries are separate records has its text in them.
  const whole = records.filter(({ place }) => !place.includes('#') && !records.some((other) => other.place.startsWith(`${place}#`)));
  const texts = new Map(whole.map(({ place, title, text }) => [site.base + place, `${title} ${text}`]));
  // The mark of the edition is not searched.
  const { mark } = JSON.parse(site.read('edition.json')) as { mark: string };
  let numbers = 0;
  const found = await visit(
    { browser, site, pages: [...texts.keys()].filter(takes), context: { javaScriptEnabled: false, viewport: desk } },
    async (page, address) => {
      const shown = await page.locator('main').evaluate((main) => {
        for (const fold of main.querySelectorAll('details')) fold.open = true;
        // On a screen a sheet to fill in shows its first lines.
        for (const row of main.querySelectorAll<HTMLElement>('.blank-sheet tr')) row.style.display = 'table-row';
        for (const other of main.querySelectorAll('sup.mark, [data-unfound], form, button, svg, aside, .box:not(.law), script, style'))
          other.remove();
        for (const picture of main.querySelectorAll('img')) picture.replaceWith(` ${picture.alt} `);
        const namesOthers = /^(pest|meeting)/.test(main.getAttribute('data-found-as') ?? '') && /\/[^/]+\/[^/]+\/$/.test(location.pathname);
        if (namesOthers) for (const list of main.querySelectorAll('ul.rows')) list.remove();
        return (main as HTMLElement).innerText;
      });
      const [read, kept] = [numbersOf(shown).filter((word) => word !== mark), numbersOf(texts.get(address)!)];
      numbers += read.length;
      const at = read.findIndex((word, place) => kept[place] !== word);
      // The year page contains the curve of every district at its end, of which a reader sees only her own.
      const all = address.endsWith('/year/') ? read.length <= kept.length : read.length === kept.length;
      const near = (words: readonly string[]): string => words.slice(Math.max(0, at - 1), at + 2).join(' ');
      return at < 0 && all
        ? []
        : [`${read.length} numbers on the page, ${kept.length} in the index; first other: ${near(read)} | ${near(kept)}`];
    },
  );
  return { found, numbers };
}

const numbersOf = (text: string): string[] =>
  text
    .split(/\s+/)
    .map((word) => word.replace(/^[^\p{L}\p{N}°<>≤≥~−-]+|[^\p{L}\p{N}%°]+$/gu, ''))
    .filter((word) => /\d/.test(word));
