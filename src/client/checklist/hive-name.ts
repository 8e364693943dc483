/* Name of a hive on the page and in every file: the reader's own, or its number in the order in which the hives were added. */
import { listOf, type ChecklistState } from './record.ts';
import * as text from './runs.en.ts';

export function hiveName(state: ChecklistState, list: string, id: string): string {
  const { runs } = listOf(state, list);
  if (Object.hasOwn(runs, id) && runs[id]!.name) return runs[id]!.name;
  const ids = Object.keys(runs);
  return text.hive((ids.includes(id) ? ids.indexOf(id) : ids.length) + 1);
}
