/*
 * The sheets of a hand-out, for print: a title block, the contents, and each page in two columns with its last lines and the QR code of
 * its address. What could not be loaded is named in its place.
 */
import { codeOf, drawCode } from '../qr/qr.ts';
import { bind } from './bind.ts';
import type { Leaf } from './leaf.ts';
import * as text from './printed.en.ts';
import { toNodes } from './tree.ts';

/** What a hand-out says about itself. */
export type About = {
  title: string;
  club: string;
  almanac: string;
  /** The day of the edition, as `2026-04-18`, and the edition in words. */
  day: string;
  edition: string;
  base: string;
  /** The complete address of the first page of the almanac. */
  root: string;
  /** The complete address of this hand-out. */
  address: string;
};

/** A page that is in the hand-out, or why it is not. */
export type Asked = { leaf: Leaf } | { page: string; why: string };

/** The side of a code on paper, without its light margin. */
const CODE_MM = 20;

export function sheetsOf(asked: readonly Asked[], about: About): Node[] {
  const leaves = asked.flatMap((each) => ('leaf' in each ? [each.leaf] : []));
  const missing = asked.flatMap((each) => ('why' in each ? [each] : []));
  const trees = bind(leaves, about, {
    kind: 'sheets',
    href: (number, id) => (id === '' ? `#page-${number}` : `#page-${number}-${id}`),
    id: (number, id) => `page-${number}-${id}`,
    lower: 1,
  });
  return [
    make('header', 'set-head', [
      make('div', '', [
        make('h2', 'set-title', [about.title]),
        make('p', '', [text.by(about.club, about.almanac, about.edition)]),
        make('p', '', [short(about.root)]),
        make('p', '', [text.whoDecides]),
      ]),
      code(about.address, text.onPhone),
    ]),
    make(
      'ol',
      'set-contents',
      leaves.map(({ title }, at) => make('li', '', [link(`#page-${at + 1}`, title)])),
    ),
    ...missing.map(({ page, why }) => make('p', 'set-missing', [make('b', '', [text.missing(page)]), why])),
    ...leaves.map((leaf, at) => sheet(leaf, at + 1, toNodes(trees[at]!), about)),
  ];
}

function sheet({ page, title, lastFor }: Leaf, number: number, words: Node[], { root }: About): HTMLElement {
  const last = lastFor('sheets');
  const address = `${root}${page}/`;
  const article = make('article', 'set-page', [
    make('h2', '', [make('span', 'set-number', [`${number}`]), title]),
    make('div', 'set-words', words),
    make('footer', 'set-last', [
      make('div', '', [
        ...(last.call === '' ? [] : [make('p', '', [make('b', '', [text.whoToCall]), `${last.call}.`])]),
        ...(last.checked === '' ? [] : [make('p', '', [`${last.checked}.`])]),
        ...(last.sources.length > 0
          ? [make('p', 'set-sources', [make('b', '', [text.sources]), text.sourcesInFull(last.sources, `${short(address)}#sources`)])]
          : [make('p', '', [short(address)])]),
      ]),
      code(address, ''),
    ]),
  ]);
  article.id = `page-${number}`;
  return article;
}

function code(address: string, words: string): HTMLElement | string {
  const drawn = codeOf(address);
  if (!drawn) return '';
  return make('figure', 'set-code', [drawCode(drawn, address, CODE_MM), ...(words === '' ? [] : [make('figcaption', '', [words])])]);
}

/** An address as people write it. */
const short = (address: string): string => address.replace(/^https?:\/\//, '');

function make<T extends keyof HTMLElementTagNameMap>(
  name: T,
  className: string,
  children: readonly (Node | string)[],
): HTMLElementTagNameMap[T] {
  const element = document.createElement(name);
  if (className !== '') element.className = className;
  element.append(...children);
  return element;
}

const link = (href: string, words: string): HTMLAnchorElement => Object.assign(make('a', '', [words]), { href });
