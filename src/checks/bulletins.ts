/* Checks a bulletin: five parts in order, each with words; a "Do not" on every line of its don'ts; an office for the law. */
import type { Heading, List, ListItem, Nodes } from 'mdast';
import type { Diagnostic } from '../source/diagnostic.ts';
import { plainText, walk } from '../source/prose.ts';
import { BULLETIN_PARTS } from '../schemas/bulletins.ts';
import type { ValidEntries } from './fields.ts';
import { nearName } from '../../shared/words/near-name.ts';
import { atBody, atField, atNode, isPage, lineAt, placeOf, type Page } from './place.ts';

const DONTS = 'What not to do';

export function bulletinFaults(club: ValidEntries): Diagnostic[] {
  const pages = club.folder.entries.filter((entry) => entry.collection === 'bulletins' && isPage(entry)) as Page[];
  return [
    ...pages.flatMap((page) => [...partFaults(page), ...dontFaults(page)]),
    ...club.of.bulletins.flatMap((entry) => fieldFaults(entry, !club.folder.book && entry.book === undefined)),
  ];
}

type Part = { heading: Heading; name: string; content: Nodes[] };

/** The content below each `##` heading. */
export function partsOf(page: Page): Part[] {
  const parts: Part[] = [];
  for (const node of page.tree.children) {
    if (node.type === 'heading' && node.depth === 2) parts.push({ heading: node, name: plainText(node).trim(), content: [] });
    else parts.at(-1)?.content.push(node);
  }
  return parts;
}

function partFaults(page: Page): Diagnostic[] {
  const parts = partsOf(page);
  const names = parts.map(({ name }) => name);
  const lost = BULLETIN_PARTS.filter((name) => !names.includes(name));
  const misspelt = parts.flatMap(({ heading, name }): Diagnostic[] => {
    const suggestion = (BULLETIN_PARTS as readonly string[]).includes(name) ? null : nearName(name, lost);
    if (!suggestion) return [];
    lost.splice(lost.indexOf(suggestion as (typeof lost)[number]), 1);
    return [
      atNode(page, heading, {
        rule: 'bulletin',
        field: 'a heading',
        found: `"${name}"`,
        write: `"${suggestion}", as every bulletin has it`,
        corrected: `## ${suggestion}`,
      }),
    ];
  });
  const missing = lost.map((name) =>
    atBody(page, {
      rule: 'bulletin',
      field: 'the headings',
      found: `no heading "${name}"`,
      write: `the five headings: ${BULLETIN_PARTS.join('; ')}`,
      corrected: `## ${name}`,
    }),
  );
  return [
    ...misspelt,
    ...missing,
    ...(misspelt.length + missing.length === 0 ? orderFaults(page, parts) : []),
    ...emptyFaults(page, parts),
  ];
}

function orderFaults(page: Page, parts: Part[]): Diagnostic[] {
  const wrong = BULLETIN_PARTS.findIndex((name, index) => parts[index]?.name !== name);
  if (wrong < 0) return [];
  return [
    atNode(page, parts[wrong]!.heading, {
      rule: 'bulletin',
      field: 'a heading',
      found: `"${parts[wrong]!.name}" as heading ${wrong + 1}`,
      write: `"${BULLETIN_PARTS[wrong]}" here; the order is: ${BULLETIN_PARTS.join('; ')}`,
    }),
  ];
}

const emptyFaults = (page: Page, parts: Part[]): Diagnostic[] =>
  parts
    .filter(({ name, content }) => (BULLETIN_PARTS as readonly string[]).includes(name) && content.every((node) => node.type === 'heading'))
    .map(({ heading, name }) =>
      atNode(page, heading, {
        rule: 'bulletin',
        field: `the part "${name}"`,
        found: 'a heading with nothing under it',
        write: 'at least one sentence under it',
      }),
    );

function dontFaults(page: Page): Diagnostic[] {
  const content = partsOf(page)
    .filter(({ name }) => name === DONTS)
    .flatMap((part) => part.content);
  return content
    .flatMap((node) => [...walk(node)])
    .filter((node): node is List => node.type === 'list')
    .flatMap(({ children }) => children)
    .flatMap((item) => dontFault(page, item));
}

function dontFault(page: Page, item: ListItem): Diagnostic[] {
  const words = plainText(item).trim();
  if (/^Do not\s/.test(words)) return [];
  const line = lineAt(page, placeOf(page, item).line);
  const turned = line.replace(/^(\s*[-*+] )(?:do not|don['’]t|never)\b/i, '$1Do not');
  return [
    atNode(page, item, {
      rule: 'bulletin',
      field: `the part "${DONTS}"`,
      found: `a line that begins "${words.split(/\s+/).slice(0, 3).join(' ')}"`,
      write: '"Do not" at the start of every line',
      ...(turned === line ? {} : { corrected: turned }),
    }),
  ];
}

function fieldFaults(entry: ValidEntries['of']['bulletins'][number], isClubsOwn: boolean): Diagnostic[] {
  const { status, law = [], 'looks-like': alike = [] } = entry.data;
  const faults: Diagnostic[] = [];
  // A book leaves the law to the books of each land.
  if (status === 'law' && law.length === 0 && isClubsOwn) {
    faults.push(
      atField(entry, ['status'], {
        rule: 'bulletin',
        field: 'status',
        found: '"law" without a law',
        write: 'a list "law:" with place, duty, says and source, or another status',
      }),
    );
  }
  if (alike.includes(entry.id))
    faults.push(
      atField(entry, ['looks-like', alike.indexOf(entry.id)], {
        rule: 'bulletin',
        field: 'looks-like',
        found: `"${entry.id}", this page itself`,
        write: 'the other bulletins it is taken for',
      }),
    );
  return faults;
}
