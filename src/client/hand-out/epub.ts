/* The hand-out as one EPUB 3.3, made in the browser and offline, with the writer and the styles of the book. */
import styles from '../../paper/book.css?raw';
import type { Root } from 'hast';
import { all } from '../../paper/find.ts';
import { escaped, packed, xhtml, type PackedFile } from '../../paper/epub.ts';
import { classesIn, makePlain } from '../../paper/plain.ts';
import { bind } from './bind.ts';
import * as text from './epub.en.ts';
import type { Leaf } from './leaf.ts';
import type { About } from './printed.ts';
import { toNodes } from './tree.ts';

export function epubOf(leaves: readonly Leaf[], about: About, language: string): Uint8Array<ArrayBuffer> {
  const file = (number: number): string => `page-${number}.xhtml`;
  const trees = bind(leaves, about, {
    kind: 'file',
    href: (number, id) => file(number) + (id === '' ? '' : `#${id}`),
    id: (_, id) => id,
    lower: 0,
  });
  const classes = classesIn(styles);
  const contents = leaves.map(({ title }, at) => `<li><a href="${file(at + 1)}">${escaped(title)}</a></li>`).join('\n');
  const document = (title: string, body: string): string => xhtml(language, title, body);
  const files: PackedFile[] = [
    { name: 'title.xhtml', text: document(about.title, titlePage(about)) },
    {
      name: 'nav.xhtml',
      nav: true,
      text: document(text.contents, `<nav epub:type="toc" role="doc-toc"><h1>${escaped(text.contents)}</h1>\n<ol>${contents}</ol></nav>`),
    },
    ...leaves.map((leaf, at): PackedFile => {
      makePlain(trees[at]!, classes);
      const body = document(leaf.title, `<h1>${escaped(leaf.title)}</h1>\n${markup(trees[at]!)}\n${lastLines(leaf, about)}`);
      return { name: file(at + 1), text: body, svg: all(trees[at]!, ({ tagName }) => tagName === 'svg').length > 0 };
    }),
  ];
  // The address names the pages, and the edition names their words.
  const identifier = `${about.address}#${about.day}`;
  return packed({ identifier, title: `${about.title} (${about.almanac})`, language, club: about.club, day: about.day }, files, styles);
}

const titlePage = ({ title, club, almanac, edition, root, address }: About): string =>
  [
    `<header class="title"><h1>${escaped(title)}</h1>`,
    `<p>${escaped(text.by(club, almanac, edition))}</p>`,
    `<p><a href="${escaped(address)}">${escaped(text.asToday)}</a></p>`,
    `<p>${escaped(text.doesNotChange).replace('{link}', () => `<a href="${escaped(root)}">${escaped(root)}</a>`)}</p></header>`,
  ].join('\n');

function lastLines({ page, lastFor }: Leaf, { root }: About): string {
  const last = lastFor('file');
  const address = `${root}${page}/`;
  const lines = [
    ...(last.call === '' ? [] : [`<b>${escaped(text.whoToCall)}</b> ${escaped(last.call)}.`]),
    ...(last.checked === '' ? [] : [`${escaped(last.checked)}.`]),
    ...(last.sources.length === 0 ? [] : [`<b>${escaped(text.sources)}</b> ${escaped(last.sources.join('; '))}.`]),
    `<a href="${escaped(address)}">${escaped(text.inFull)}</a>`,
  ];
  return `<div class="last-lines">${lines.map((line) => `<p>${line}</p>`).join('')}</div>`;
}

/** Elements as XML: every tag is closed, and each drawing names its name space. */
const markup = (tree: Root): string => {
  const writer = new XMLSerializer();
  return toNodes(tree)
    .map((node) => writer.serializeToString(node))
    .join('\n');
};
