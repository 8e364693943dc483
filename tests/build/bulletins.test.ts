// Each bulletin of the demo club says a thing once: a look-alike in one table, a contact at most twice, and the law in one place.
import assert from 'node:assert/strict';
import { afterAll, beforeAll, test } from 'vitest';
import { demoSite, type Site } from '../setup/built-site.ts';
import type { Element } from 'hast';
import { elements, mainOf, text } from './handbook.ts';

let site: Site;
let pages: { place: string; main: Element }[];
beforeAll(async () => {
  site = await demoSite();
  pages = site.pages
    .filter((place) => /^\/pests\/[^/]+\/$/.test(place))
    .map((place) => ({ place, main: mainOf(site.read(`${place.slice(1)}index.html`)) }));
  assert.ok(pages.length > 15, `${pages.length} bulletins`);
});
afterAll(() => site?.close());

/** Values that occur more often than `most` times. */
function above(values: readonly string[], most: number): string[] {
  return [...new Set(values)].filter((value) => values.filter((each) => each === value).length > most);
}

const links = (tree: Element): string[] =>
  elements(tree, ({ tagName }) => tagName === 'a').map(({ properties }) => String(properties.href ?? ''));

test('a pest is named in one table', () =>
  assert.deepEqual(
    pages.flatMap(({ place, main }) => {
      const named = elements(main, ({ tagName }) => tagName === 'table').flatMap((table) => [
        ...new Set(links(table).filter((href) => /^\/pests\//.test(href))),
      ]);
      return above(named, 1).map((href) => `${place}: ${href}`);
    }),
    [],
  ));

test('a contact is called at most twice', () =>
  assert.deepEqual(
    pages.flatMap(({ place, main }) => {
      const calls = links(main).filter((href) => /^tel:(?!911)|who-to-ask\/#/.test(href));
      return above(calls, 2).map((href) => `${place}: ${href}`);
    }),
    [],
  ));

test('the law stands in one place', () =>
  assert.deepEqual(
    pages.flatMap(({ place, main }) => {
      const headings = elements(main, ({ tagName, properties }) => tagName === 'h2' && properties.id === 'law').map(text);
      const texts = elements(main, ({ properties }) => properties.dataLocal === 'reportable-diseases').length;
      // The rules of the fields stand in place of the text for all of the state.
      const own = headings.some((heading) => heading.startsWith('The law in'));
      return headings.length > 1 || texts > (own ? 0 : 1) ? [`${place}: ${headings.join(', ')}, and ${texts} texts`] : [];
    }),
    [],
  ));

test('the test sees what is said twice', () => {
  assert.deepEqual(above(['/pests/varroa/', '/pests/nosema/', '/pests/varroa/'], 1), ['/pests/varroa/']);
  assert.deepEqual(above(['tel:1', 'tel:1'], 2), []);
});
