/*
 * Checks for syntax of other page formats in the words. A lone "<3" or "{name}" stays as typed. Tags, comments and addresses in angle
 * brackets were meant to do something and would only be printed.
 */
import type { Nodes, Text } from 'mdast';
import { quoted, type Diagnostic } from '../source/diagnostic.ts';
import { walk } from '../source/prose.ts';
import { TAGS, type Tag } from '../source/tag-syntax.ts';
import type { ValidEntries } from './fields.ts';
import { nearName } from '../../shared/words/near-name.ts';
import { atWords, isPage, lineAt, type Page } from './place.ts';
import { FORMS } from './tags.ts';

/** Replacements for common HTML. */
const HTML: Record<string, string> = {
  br: 'an empty line between two paragraphs',
  hr: '--- on a line of its own, between empty lines',
  p: 'an empty line between two paragraphs',
  b: '**words**',
  strong: '**words**',
  i: '*words*',
  em: '*words*',
  a: '[words](/an/address/)',
  img: '![what it shows](picture.jpg)',
  h1: '## and the heading',
  h2: '## and the heading',
  h3: '### and the heading',
  h4: '#### and the heading',
  ul: 'lines that begin "- "',
  ol: 'lines that begin "1. "',
  li: '"- " at the start of the line',
  table: 'a table with | between its cells',
  tr: 'a table with | between its cells',
  td: 'a table with | between its cells',
  th: 'a table with | between its cells',
  blockquote: '"> " at the start of the line',
  code: 'the words between two `',
  pre: 'the words between lines of ```',
  sup: 'the words alone',
  sub: 'the words alone',
  u: '*words*',
  s: 'the words alone',
  small: 'the words alone',
  center: 'the words alone',
  font: 'the words alone',
  span: 'the words alone',
  div: 'the words alone',
  details: 'a heading and its words',
  summary: 'a heading and its words',
  script: 'nothing',
  style: 'nothing',
  ...Object.fromEntries(
    ['mark', 'kbd', 'big', 'strike', 'del', 'ins', 'tt', 'abbr', 'cite', 'q', 'section', 'nav', 'header', 'footer', 'aside', 'button'].map(
      (name) => [name, 'the words alone'],
    ),
  ),
  ...Object.fromEntries(['thead', 'tbody', 'caption', 'colgroup'].map((name) => [name, 'a table with | between its cells'])),
  ...Object.fromEntries(['dl', 'dt', 'dd'].map((name) => [name, 'lines that begin "- "'])),
  h5: '#### and the heading',
  h6: '#### and the heading',
  audio: 'a link: [words](https://example.org/)',
  embed: 'a link: [words](https://example.org/)',
  object: 'a link: [words](https://example.org/)',
  iframe: 'a link: [words](https://example.org/)',
  video: 'a link: [words](https://example.org/)',
  input: 'the words alone',
  form: 'the words alone',
};

const TAG_LIKE =
  /<!--[\s\S]*?(?:-->|$)|<\/?([A-Za-z][A-Za-z0-9]*)((?:\s+[^<>]*|\s*\/)?)>|<\/?([A-Z][A-Za-z]+)(?=\s+[\w-]+\s*=|\s*\/?$)[^<>\n]*/g;
const ADDRESS = /<(https?:\/\/[^\s<>]*|www\.[^\s<>]*|[^\s<>@]+@[^\s<>@]+\.[^\s<>@]+)/g;

export function wordFaults(club: ValidEntries): Diagnostic[] {
  return club.folder.entries.filter(isPage).flatMap((page) => {
    const opened = new Set<string>();
    return [...walk(page.tree)]
      .flatMap((node) => (node.type === 'text' ? [...tagLike(page, node, opened), ...addressLike(page, node)] : []))
      .concat(splitAddresses(page));
  });
}

/** `opened`: the tags found so far, whose closing tags are not reported again. */
function tagLike(page: Page, node: Text, opened: Set<string>): Diagnostic[] {
  return [...node.value.matchAll(TAG_LIKE)].flatMap((match): Diagnostic[] => {
    const typed = match[0];
    const name = match[1] ?? match[3] ?? '';
    if (typed.startsWith('</') && opened.has(name)) return [];
    opened.add(name);
    if (typed.startsWith('<!--'))
      return [fault(page, node, typed, 'a comment, which readers would see', 'nothing; a note for yourself has no place in a page')];
    if (name === 'Warning' || name === 'Danger')
      return [fault(page, node, typed, `a tag ${quoted(typed)}`, 'what the hands do in the list "work:"; the caution follows from it')];
    const known = TAGS.find((each) => each.toLowerCase() === name.toLowerCase());
    const asTag = /^[A-Z]/.test(name) || /[=/]/.test(typed.slice(1));
    if (known) return [ours(page, node, typed, known)];
    const html = HTML[name.toLowerCase()];
    if (html) return [fault(page, node, typed, `${quoted(typed)}, which is HTML`, html)];
    const suggestion = asTag ? (nearName(name, TAGS) as Tag | null) : null;
    if (suggestion) return [ours(page, node, typed, suggestion)];
    return asTag ? [fault(page, node, typed, `a tag ${quoted(typed)} that the almanac does not know`, `one of: ${TAGS.join(', ')}`)] : [];
  });
}

function ours(page: Page, node: Text, typed: string, suggestion: Tag): Diagnostic {
  const mended = mend(typed, suggestion);
  const found = /[“”„‘’«»]/.test(typed) ? `${quoted(typed)} with curly quotes` : quoted(typed);
  const at = fault(page, node, typed, found, mended ?? FORMS[suggestion].example);
  const line = lineAt(page, at.line);
  return mended && line.includes(typed) ? { ...at, corrected: line.replace(typed, mended).trim() } : at;
}

/** The correct spelling of the tag, where its parts can still be recognised. */
function mend(typed: string, name: Tag): string | null {
  if (typed.startsWith('</')) return `</${name}>`;
  const parts = [...typed.matchAll(/([A-Za-z-]+)\s*=\s*(?:["'“”„‘’«»{]+([^"'“”„‘’«»{}<>]*)["'“”„‘’«»}]+|([^\s"'“”„‘’«»{}<>/]+))/g)];
  if (parts.length === 0 || !typed.endsWith('>')) return null;
  const written = parts.map(([, key, inQuotes, bare]) => `${key!.toLowerCase()}="${(inQuotes ?? bare ?? '').trim()}"`).join(' ');
  return `<${name} ${written}${FORMS[name].holdsWords ? '>' : ' />'}`;
}

/** `<bees@example.org` remains when the parser has made a link of the address. */
function addressLike(page: Page, node: Text): Diagnostic[] {
  return [...node.value.matchAll(ADDRESS)].map((match) => {
    const address = match[1]!;
    return fault(
      page,
      node,
      match[0],
      `an address in angle brackets`,
      `[words](${address.includes('@') && !address.includes('/') ? `mailto:${address}` : address.replace(/^www/, 'https://www')})`,
    );
  });
}

/** An angle bracket at the end of the words, followed by a bare address. */
function splitAddresses(page: Page): Diagnostic[] {
  return [...walk(page.tree)].flatMap((parent) => {
    const children = 'children' in parent ? (parent.children as Nodes[]) : [];
    return children.flatMap((node, index): Diagnostic[] => {
      const next = children[index + 1];
      if (node.type !== 'text' || !node.value.endsWith('<') || next?.type !== 'link') return [];
      return [fault(page, node, '<', 'an address in angle brackets', `[words](${next.url.replace(/[>|].*$/, '')})`)];
    });
  });
}

const fault = (page: Page, node: Text, typed: string, found: string, write: string): Diagnostic =>
  atWords(page, node, typed, { rule: 'words', field: 'the words', found, write });
