/* What of the typed letters and digits of a file reaches no reader. */
import type { Entry } from '../../../src/source/folder.ts';
import { isTag, walk, type TagNode } from '../../../src/source/prose.ts';

const lettersOf = (text: string): string =>
  [...text.matchAll(/[\p{L}\p{N}]/gu)]
    .map(([letter]) => letter)
    .sort()
    .join('');

/** The parts of the words that reach a reader, or that make up a tag or an address. */
function kept(entry: Entry): string {
  if (!entry.tree) return '';
  return [...walk(entry.tree)]
    .map((node) => {
      const held = node as {
        value?: unknown;
        url?: string;
        title?: string | null;
        alt?: string | null;
        lang?: string | null;
        meta?: string | null;
      };
      const words = [held.value, held.url, held.title, held.alt, held.lang, held.meta].filter((each) => typeof each === 'string');
      const tag = isTag(node)
        ? [
            (node as TagNode).name,
            (node as TagNode).children.length > 0 ? (node as TagNode).name : '',
            ...(node as TagNode).attributes.flatMap(({ name, value }) => [name, value]),
          ]
        : [];
      return [...words, ...tag, node.type === 'list' && node.ordered ? node.start : ''].join('');
    })
    .join('');
}

/** The part of a file that lost letters, or null. Remarks of their own line are meant for nobody. */
export function lostFrom(entry: Entry): string | null {
  const { text, body, tree, fields } = entry;
  const head = (tree ? text.slice(0, text.length - body.length) : text).replace(/^\s*#.*$/gm, '');
  if (lettersOf(body).length > lettersOf(kept(entry)).length) return 'lost from the words';
  return lettersOf(head).length > lettersOf(JSON.stringify(fields.value)).length ? 'lost from the fields' : null;
}
