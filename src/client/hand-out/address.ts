/*
 * Address of a hand-out: `?of=know-how/stings,lists/package-arrival`, with its title and whether each page starts a new sheet. The whole
 * choice is in it, so a link carries it and a reload keeps it.
 */
export type Choice = {
  /** Paths of pages below the base, without a slash at either end, in order. */
  pages: readonly string[];
  /** Empty for the usual one. */
  title: string;
  apart: boolean;
};

const PATH = /^[a-z0-9][\w-]*(?:\/[a-z0-9][\w-]*)*$/i;
const LONGEST_TITLE = 120;

/** `refused` has what is in the address and is no path of a page. */
export function choiceIn(search: string): Choice & { refused: string[] } {
  const asked = new URLSearchParams(search);
  const named = asked
    .getAll('of')
    .flatMap((each) => each.split(','))
    .map((each) => each.trim().replace(/^\/+|\/+$/g, ''))
    .filter((each) => each !== '');
  const pages = [...new Set(named.filter((each) => PATH.test(each)))];
  const title = (asked.get('title') ?? '').trim().slice(0, LONGEST_TITLE);
  return { pages, title, apart: asked.get('apart') === '1', refused: named.filter((each) => !PATH.test(each)) };
}

/** Commas and slashes stay readable. Empty where nothing is chosen. */
export function addressOf({ pages, title, apart }: Choice): string {
  const asked = [
    ...(pages.length > 0 ? [`of=${pages.join(',')}`] : []),
    ...(title === '' ? [] : [`title=${encodeURIComponent(title)}`]),
    ...(apart ? ['apart=1'] : []),
  ];
  return asked.length > 0 ? `?${asked.join('&')}` : '';
}

/** The pages with one of them moved by a place. A move past an end changes nothing. */
export function moved(pages: readonly string[], page: string, by: 1 | -1): string[] {
  const [from, to] = [pages.indexOf(page), pages.indexOf(page) + by];
  const other = pages[to];
  if (from < 0 || other === undefined) return [...pages];
  return pages.map((each, at) => (at === from ? other : at === to ? page : each));
}
