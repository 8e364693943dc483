/*
 * Hints at bare seasons in prose ("in early spring"), which fall on other days in every district. They are no faults. A phase of the
 * hive's year, or days, mean the same to every reader.
 */
import type { Nodes } from 'mdast';
import { phaseName, phases } from '../../shared/season/phases.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import { isTag } from '../source/prose.ts';
import type { ValidEntries } from './fields.ts';
import { atWords, isPage, type Page } from './place.ts';

/** Matches a season as a time, after a word of time. Winter rest, fall flow and fall preparation are names. */
const BARE =
  /\b(?:in|by|until|till|from|since|before|after|during|through) (?:the )?(?:(?:very )?(?:early|late|mid)[ -])?(?:spring|summer|autumn|fall|winter)\b(?! (?:rest|flow|preparation)\b)/gi;

export const seasonWordHints = (club: ValidEntries): Diagnostic[] =>
  [...club.of.checklists, ...club.of.bulletins, ...club.of.articles].flatMap((entry) => (isPage(entry) ? inWords(entry, entry.tree) : []));

/** A quotation has the words of somebody else. */
function inWords(page: Page, node: Nodes): Diagnostic[] {
  if (node.type === 'blockquote' || node.type === 'code' || node.type === 'inlineCode' || isTag(node)) return [];
  if (node.type === 'text')
    return [...node.value.matchAll(BARE)].map(([words]) =>
      atWords(page, node, words, { rule: 'season-word', field: 'the words', found: `"${words}"`, write: WRITE }),
    );
  return 'children' in node ? (node.children as Nodes[]).flatMap((child) => inWords(page, child)) : [];
}

const WRITE = `days, or a part of the hive's year: ${phases.map(phaseName).join(', ')}`;
