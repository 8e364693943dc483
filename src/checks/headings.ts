/*
 * Checks headings: they begin at `##`, skip no level, have words, and occur once. The words that the law reserves for pesticide labels
 * are not allowed in headings.
 */
import type { Heading, Nodes } from 'mdast';
import { quoted, type Diagnostic } from '../source/diagnostic.ts';
import { plainText, walk } from '../source/prose.ts';
import type { ValidEntries } from './fields.ts';
import { atField, atBody, atNode, isPage, sourceOf, type Page } from './place.ts';

const SIGNAL = /\b(danger|warning|caution)s?\b/i;
const SHOUTED = /\b(?:DANGER|WARNING|CAUTION)\b|^\s*(?:[Dd]anger|[Ww]arning|[Cc]aution)\s*[:!]/;
const OURS = '"Stop", "Take care" or "Ask first", or what can happen';

/** Collections whose pages are checked for their words. */
const NEEDS_WORDS = new Set(['checklists', 'bulletins', 'articles']);

export function headingFaults(club: ValidEntries): Diagnostic[] {
  return [
    ...club.folder.entries.filter(isPage).flatMap((page) => [...levelFaults(page), ...wordFaults(page), ...emptyPage(page)]),
    ...titleFaults(club),
  ];
}

const headingsOf = (page: Page): Heading[] => [...walk(page.tree)].filter((node) => node.type === 'heading');

function levelFaults(page: Page): Diagnostic[] {
  let above = 1;
  return headingsOf(page).flatMap((heading): Diagnostic[] => {
    const words = plainText(heading).trim();
    const source = sourceOf(page, heading);
    const level = heading.depth;
    const right = Math.min(Math.max(level, 2), above + 1);
    if (!/^#/.test(source)) {
      return [
        atNode(page, heading, {
          rule: 'heading',
          field: 'a heading',
          found: `${quoted(words)} with a line of ${source.trimEnd().at(-1)} below it, which makes it a heading`,
          write: '"## " before it if it is a heading, or an empty line between the two',
          corrected: `## ${words.split('\n').at(-1)}`,
        }),
      ];
    }
    if (words === '' && heading.children.length === 0)
      return [
        atNode(page, heading, { rule: 'heading', field: 'a heading', found: 'a heading without words', write: 'its words, or nothing' }),
      ];
    above = right;
    if (level === right) return [];
    const found =
      level === 1
        ? `${quoted(words)} with one #, which is for the page's own title`
        : `${quoted(words)} with ${'#'.repeat(level)}, which skips a level`;
    return [
      atNode(page, heading, {
        rule: 'heading',
        field: 'a heading',
        found,
        write: `"${'#'.repeat(right)} " before it`,
        corrected: source.replace(/^#+/, '#'.repeat(right)),
      }),
    ];
  });
}

function wordFaults(page: Page): Diagnostic[] {
  const seen = new Set<string>();
  const headings = headingsOf(page).flatMap((heading): Diagnostic[] => {
    const words = plainText(heading).trim();
    const key = words.toLowerCase();
    const faults: Diagnostic[] = [];
    if (SIGNAL.test(words)) faults.push(atNode(page, heading, signal(words, 'a heading')));
    if (key && seen.has(key))
      faults.push(
        atNode(page, heading, { rule: 'heading', field: 'a heading', found: `"${words}" a second time`, write: 'a heading of its own' }),
      );
    seen.add(key);
    if (/\{#/.test(words))
      faults.push(
        atNode(page, heading, {
          rule: 'heading',
          field: 'a heading',
          found: `"${words}", with a name in braces`,
          write: 'the words alone; their address follows from them',
        }),
      );
    return faults;
  });
  const shouted = [...outsideQuotations(page.tree)]
    .filter((node) => node.type === 'text' || node.type === 'strong')
    .flatMap((node): Diagnostic[] => {
      const found =
        node.type === 'strong' ? /^\s*(?:danger|warning|caution)\s*[:!]?\s*$/i.exec(plainText(node)) : SHOUTED.exec(plainText(node));
      return found ? [atNode(page, node, signal(found[0].trim(), 'the words'))] : [];
    });
  return [
    ...headings,
    ...shouted
      .filter((fault) => !headings.some(({ line }) => line === fault.line))
      .filter((fault, index, all) => all.findIndex(({ line }) => line === fault.line) === index),
  ];
}

/** The text of a label is allowed in a marked quotation, and nowhere else. */
function* outsideQuotations(node: Nodes): Generator<Nodes> {
  if (node.type === 'blockquote') return;
  yield node;
  if ('children' in node) for (const child of node.children) yield* outsideQuotations(child as Nodes);
}

const signal = (found: string, field: string) => ({
  rule: 'signal-word',
  field,
  found: `"${found}", a word that the law keeps for pesticide labels`,
  write: OURS,
});

function titleFaults(club: ValidEntries): Diagnostic[] {
  const titled = [
    ...club.of.checklists,
    ...club.of.bulletins,
    ...club.of.articles,
    ...club.of.meetings,
    ...club.of.treatments,
    ...club.of.signs,
    ...club.of.notices,
  ].filter(({ data }) => SIGNAL.test(data.title));
  const shouted = club.of.notices.flatMap((entry) =>
    entry.data.says.flatMap((sentence, index) => {
      const found = SHOUTED.exec(sentence);
      return found ? [atField(entry, ['says', index], signal(found[0].trim(), `says ${index + 1}`))] : [];
    }),
  );
  return [...titled.map((entry) => atField(entry, ['title'], signal(entry.data.title, 'title'))), ...shouted];
}

const emptyPage = (page: Page): Diagnostic[] =>
  NEEDS_WORDS.has(page.collection) && page.tree.children.length === 0
    ? [
        atBody(page, {
          rule: 'words',
          field: 'the page',
          found: 'fields and no words after them',
          write: 'the words of the page below the second "---"',
        }),
      ]
    : [];
