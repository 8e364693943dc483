/*
 * Worked examples of calculators, half a year on. A book of both halves of the world gives their days as they are in the north. South
 * of the equator the day in the address and the day in the words of the link fall into the same part of the year as there.
 */
import type { Nodes, Root } from 'mdast';
import { daysInMonth, partsOf, parseDay } from '../../shared/days/day.ts';
import { monthName, monthNames } from '../../shared/days/month-names.ts';
import { isTag, walk, type TagNode } from './prose.ts';

const MONTHS = monthNames.join('|');
const DAY_IN_WORDS = new RegExp(`\\b(${MONTHS}) (\\d{1,2})\\b|\\b(\\d{1,2}) (${MONTHS})\\b`, 'g');
const DAY_IN_ADDRESS = /\b\d{4}-\d{2}-\d{2}\b/g;

/** The tree with its examples turned; the same tree where no example has a day. From `before` on, a line, they stay as they are. */
export function turnedExamples(tree: Root, before = Number.POSITIVE_INFINITY): Root {
  const isTurned = (node: unknown): node is TagNode =>
    isTag(node) && node.name === 'Example' && (node.position?.start.line ?? 0) < before && turnedTag(node) !== null;
  if (![...walk(tree)].some(isTurned)) return tree;
  const copy = structuredClone(tree);
  for (const node of walk(copy)) if (isTurned(node)) Object.assign(node, turnedTag(node));
  return copy;
}

/** Null where nothing of it is a day. */
function turnedTag(node: TagNode): Pick<TagNode, 'attributes' | 'children'> | null {
  const attributes = node.attributes.map((each) =>
    'name' in each && each.name === 'with' && typeof each.value === 'string'
      ? { ...each, value: each.value.replace(DAY_IN_ADDRESS, turnedDay) }
      : each,
  ) as TagNode['attributes'];
  const children = (node.children as Nodes[]).map((child) =>
    child.type === 'text' ? { ...child, value: turnedWords(child.value) } : child,
  ) as TagNode['children'];
  const isSame = JSON.stringify([attributes, children]) === JSON.stringify([node.attributes, node.children]);
  return isSame ? null : { attributes, children };
}

const opposite = (month: number): number => ((month + 5) % 12) + 1;
/** A day that the other month has in every year. */
const inMonth = (date: number, month: number): number => Math.min(date, daysInMonth(2025, month));

function turnedDay(text: string): string {
  const day = parseDay(text);
  if (!day.ok) return text;
  const { year, month, date } = partsOf(day.value);
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${year}-${two(opposite(month))}-${two(inMonth(date, opposite(month)))}`;
}

export const turnedWords = (words: string): string =>
  words.replace(DAY_IN_WORDS, (_, month?: string, after?: string, first?: string, last?: string) => {
    const other = opposite(monthNames.indexOf((month ?? last) as (typeof monthNames)[number]) + 1);
    const date = inMonth(Number(after ?? first), other);
    return month === undefined ? `${date} ${monthName(other)}` : `${monthName(other)} ${date}`;
  });
