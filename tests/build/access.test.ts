// Accessibility of every built page: titles, landmarks, order, names, status messages. The numbers are criteria of WCAG 2.2.
import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, test } from 'vitest';
import type { Element, Root } from 'hast';
import { fromHtml } from 'hast-util-from-html';
import { EXIT, visit as walk } from 'unist-util-visit';
import { builtDemo, type Built } from '../setup/built-site.ts';
import { recordsIn } from '../e2e/search-engine.ts';
import { nothing } from '../e2e/visit.ts';

let site: Built;
const trees = new Map<string, Root>();
beforeAll(async () => {
  site = await builtDemo();
  for (const page of site.pages) trees.set(page, fromHtml(site.read(page.endsWith('/') ? `${page.slice(1)}index.html` : page.slice(1))));
});

const all = (tree: Root | Element, fits: (element: Element) => boolean): Element[] => {
  const found: Element[] = [];
  walk(tree, 'element', (element) => void (fits(element) && found.push(element)));
  return found;
};
const is =
  (...names: string[]) =>
  (element: Element): boolean =>
    names.includes(element.tagName);
const has =
  (name: string, value?: string) =>
  (element: Element): boolean =>
    value === undefined ? element.properties[name] !== undefined : element.properties[name] === value;
const hasClass =
  (name: string) =>
  (element: Element): boolean =>
    Array.isArray(element.properties.className) && element.properties.className.includes(name);
const words = (element: Element | Root): string => {
  let text = '';
  walk(element, 'text', ({ value }) => void (text += value));
  return text.replace(/\s+/g, ' ').trim();
};
const each = (look: (tree: Root, page: string) => string[]): string[] =>
  [...trees].flatMap(([page, tree]) => look(tree, page).map((fault) => `${page}: ${fault}`));
const links = (tree: Root | Element): string[] => all(tree, is('a')).map((link) => `${words(link)} ${link.properties.href as string}`);

test('each page has its own title and states its language (2.4.2, 3.1.1)', () => {
  const titles = new Map<string, string>();
  nothing(
    each((tree, page) => {
      const [title] = all(tree, is('title'));
      const [html] = all(tree, is('html'));
      const other = titles.get(words(title!));
      titles.set(words(title!), page);
      return [
        ...(other ? [`the title of ${other}`] : []),
        ...(/^[a-z]{2}/.test((html!.properties.lang as string | undefined) ?? '') ? [] : ['no language']),
      ];
    }),
  );
});

test('navigation, footer and emergency line are the same on every page, in one order and with the same names (3.2.3, 3.2.4, 3.2.6)', () => {
  const first = trees.get('/')!;
  const places: [string, (element: Element) => boolean][] = [
    ['the parts', hasClass('bottom-nav')],
    ['the foot', hasClass('foot')],
    ['the head', hasClass('masthead')],
    ['the line for someone unwell', hasClass('emergency')],
  ];
  for (const [name, fits] of places) {
    const expected = links(all(first, fits)[0]!);
    assert.ok(expected.length > 1, name);
    nothing(
      each((tree) =>
        all(tree, fits).flatMap((place) =>
          JSON.stringify(links(place)) === JSON.stringify(expected) ? [] : [`${name}: ${links(place).join(', ')}`],
        ),
      ),
    );
    nothing(each((tree) => (all(tree, fits).length === 1 ? [] : [`${name} stands ${all(tree, fits).length} times`])));
  }
});

test('the navigation marks the current part once (2.4.8)', () => {
  nothing(
    each((tree) => {
      const here = all(all(tree, hasClass('bottom-nav'))[0]!, has('ariaCurrent'));
      return here.length === 1 ? [] : [`${here.length} parts are said to be here`];
    }),
  );
});

test("links from the first page reach every page, and search finds every entry's page too (2.4.5)", () => {
  const reached = new Set(['/']);
  for (const page of reached) {
    for (const link of trees.has(page) ? all(trees.get(page)!, is('a')) : []) {
      const { pathname, origin } = new URL(link.properties.href as string, `https://club.example${page}`);
      if (origin === 'https://club.example' && trees.has(pathname)) reached.add(pathname);
    }
  }
  const led = (page: string): boolean =>
    !all(trees.get(page)!, (element) => element.tagName === 'main' && 'dataWithdrawn' in element.properties).length && page !== '/404.html';
  const pages = site.pages.filter(led);
  // Nothing is withdrawn in the demo club, so it has no list of withdrawn pages.
  assert.ok(!site.pages.includes('/withdrawn/'));
  nothing(pages.filter((page) => !reached.has(page)));
  const found = new Set(recordsIn(site.folder).map(({ place }) => `/${place}`));
  nothing(pages.filter((page) => /^\/(lists|pests|know-how|meetings)\/./.test(page) && !found.has(page)));
});

test("no form asks for the reader's name, address, password or number (1.3.5, 3.3.7, 3.3.8, 3.3.9)", () => {
  let fields = 0;
  nothing(
    each((tree) =>
      all(tree, is('input')).flatMap(({ properties }) => {
        fields += 1;
        const { type, autoComplete } = properties;
        return [
          ...(['text', 'search', 'checkbox', 'radio', 'file', 'date'].includes(type as string)
            ? []
            : [`a field of the type ${type as string}`]),
          ...(autoComplete === undefined || String(autoComplete) === 'off' ? [] : [`a field that is filled with ${String(autoComplete)}`]),
          ...(/^(name|email|tel|phone|user|address)/.test(String(properties.name ?? '')) ? [`a field for ${String(properties.name)}`] : []),
        ];
      }),
    ),
  );
  assert.ok(fields > 300, `${fields} fields`);
});

test('no link opens another window, and no page but an old address redirects by itself (3.2.5, 2.2.1)', () => {
  nothing(
    each((tree) => [
      ...all(tree, has('target')).map((link) => `<${link.tagName}> "${words(link)}" opens another window`),
      ...all(tree, has('httpEquiv'))
        .filter(({ properties }) => String(properties.httpEquiv) === 'refresh' && !/^0; url=\//.test(String(properties.content)))
        .map(() => 'it goes on by itself'),
      ...all(tree, is('audio', 'video', 'iframe', 'object', 'embed', 'marquee', 'canvas')).map(({ tagName }) => `<${tagName}>`),
    ]),
  );
});

test('screen readers announce every status message (4.1.3)', () => {
  const announced = ['dataProgress', 'dataStatus', 'dataOffline', 'dataSearchStatus'];
  const seen = new Set<string>();
  nothing(
    each((tree) =>
      all(tree, (element) => element.properties.dataPart === 'status' || announced.some((name) => name in element.properties)).flatMap(
        ({ properties }) => {
          seen.add(properties.dataPart === 'status' ? 'said' : announced.find((name) => name in properties)!);
          return String(properties.role) === 'status' ? [] : [`${Object.keys(properties).join(' ')} is no status`];
        },
      ),
    ),
  );
  assert.deepEqual([...seen].sort(), [...announced, 'said'].sort());
});

test('the accessible name of a control contains its visible text (2.5.3)', () => {
  nothing(
    each((tree) =>
      all(tree, is('a', 'button', 'summary')).flatMap((element) => {
        const label = element.properties.ariaLabel as string | undefined;
        return label === undefined || !/\p{L}/u.test(words(element)) || label.toLowerCase().includes(words(element).toLowerCase())
          ? []
          : [`"${words(element)}" is called "${label}"`];
      }),
    ),
  );
});

test('only a line or an edge changes under the pointer, and no text appears (1.4.13)', () => {
  const styles = readdirSync(join(site.folder, 'assets'))
    .filter((name) => name.endsWith('.css'))
    .map((name) => site.read(`assets/${name}`))
    .join('');
  const rules = [...styles.matchAll(/([^{}]*:hover[^{}]*)\{([^}]*)\}/g)];
  assert.ok(rules.length > 0);
  nothing(
    rules
      .filter(([, , body]) => body!.split(';').some((line) => !/^\s*(text-decoration[a-z-]*|stroke[a-z-]*)\s*:/.test(line)))
      .map(([rule]) => rule),
  );
  nothing(each((tree) => all(tree, (element) => 'title' in element.properties).map((element) => `words wait under <${element.tagName}>`)));
  nothing(
    [...styles.matchAll(/@media[^{]*orientation[^{]*/g)].map(([rule]) => `a window held upright or across gets another page: ${rule}`),
  );
  assert.doesNotMatch(site.read('manifest.webmanifest'), /"orientation"/, 'the window may be held either way (1.3.4)');
});

test('no script listens for single keys, drags, gestures, device motion, or the start of a press (2.1.4, 2.5.1, 2.5.2, 2.5.4, 2.5.7)', () => {
  const scripts = [
    ...readdirSync(join(site.folder, 'assets'))
      .filter((name) => name.endsWith('.js'))
      .map((name) => `assets/${name}`),
    'worker.js',
  ];
  assert.ok(scripts.length > 30);
  const listened =
    /["'`](key(down|up|press)|drag\w*|drop|touch\w+|mouse(down|move|over|enter)|pointer(move|over|enter)|device(motion|orientation)|wheel|contextmenu)["'`]/g;
  // The note of a source hears the Tab key alone, to give the focus back when the reader leaves it.
  // The hall screen hears the keys of a clicker, which are no characters.
  const leaving = (file: string, name: string | undefined): boolean =>
    (name === 'keydown' && /\/hall\./.test(file) && /ArrowRight/.test(site.read(file))) ||
    (name === 'keydown' && /\/source-note\./.test(file) && /!==["'`]Tab["'`]|["'`]Tab["'`]!==/.test(site.read(file)));
  nothing(
    scripts.flatMap((file) =>
      [...site.read(file).matchAll(listened)].filter(([, name]) => !leaving(file, name)).map(([, name]) => `${file} hears ${name}`),
    ),
  );
  // The one listener for the start of a press only fetches the calculator's script.
  assert.deepEqual(
    scripts.filter((file) => /["'`]pointerdown["'`]/.test(site.read(file))).map((file) => file.replace(/\..*/, '')),
    ['assets/wake-on-touch'],
  );
  nothing(
    each((tree) =>
      all(
        tree,
        (element) =>
          'accessKey' in element.properties ||
          'draggable' in element.properties ||
          Object.keys(element.properties).some((name) => /^on[A-Z]/.test(name)),
      ).map((element) => `<${element.tagName}> has keys, drags or handlers`),
    ),
  );
});

test('the test detects a planted fault', () => {
  const tree = fromHtml(
    '<nav class="bottom-nav"><a href="/a" target="_blank" aria-label="Other" title="x">Now</a></nav><input type="email" autocomplete="name">',
  );
  assert.equal(all(tree, has('target')).length, 1);
  assert.deepEqual(links(all(tree, hasClass('bottom-nav'))[0]!), ['Now /a']);
  let type = '';
  walk(tree, 'element', (element) => {
    if (element.tagName !== 'input') return;
    type = String(element.properties.type);
    return EXIT;
  });
  assert.equal(type, 'email');
});
