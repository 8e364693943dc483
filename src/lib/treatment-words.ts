/*
 * Sentences for what a label row needs, forbids and asks of the person, made from its fields alone. They describe the row and are never
 * advice. No row is called suitable, and where a row is silent the sentence refers to the label.
 */
import type { Treatment } from '../schemas/treatments.ts';
import * as text from './treatment-words.en.ts';

export type LabelRowFields = Treatment['rows'][number];

/** The requirements of a label. What trials found is separate. */
export const needsWords = (row: LabelRowFields): string[] => [
  ...(row['forbids-brood'] ? [text.noBrood] : []),
  text.reaches[row['kills-under-cappings']],
];

/** What works poorly, which is no rule of a label. */
export const poorlyWords = (row: LabelRowFields): string[] => (row['works-poorly-with-brood'] ? [text.poorWithBrood] : []);

export const forbidsWords = (row: LabelRowFields): string[] => [text.forbids[row.supers], text.forbidsOtherUse];

const broodKind = (row: LabelRowFields): text.BroodKind =>
  row['forbids-brood'] ? 'forbidden' : row['works-poorly-with-brood'] ? 'poor' : row['kills-under-cappings'];

export const broodCell = (row: LabelRowFields): string => text.broodCells[broodKind(row)];
export const boxesCell = ({ supers }: LabelRowFields): string => text.boxesCells[supers];

/** One cell for all rows: each thing that they say, with the number of forms where they differ. */
export function cellOf(rows: readonly LabelRowFields[], cell: (row: LabelRowFields) => string): string {
  const said = [...Map.groupBy(rows, cell)].map(([words, of]) => [words, of.length] as const);
  if (said.length === 1) return said[0]![0];
  return said.map(([words, forms]) => text.ofForms(words, forms, rows.length)).join('. ');
}

/** In the order of the answer. */
const BROOD_KINDS: readonly text.BroodKind[] = ['forbidden', 'poor', 'no', 'outlasts-brood', 'yes', 'not-known'];

/** The answer to "in summer, with brood?" from the rows of one ingredient. */
export function withBroodWords(rows: readonly LabelRowFields[]): string {
  const groups = Map.groupBy(rows, broodKind);
  const sentences = BROOD_KINDS.flatMap((kind) => {
    const group = groups.get(kind);
    if (!group) return [];
    if (groups.size === 1) return [text.everyForm(kind)];
    return [text.someForms(kind, group.length, rows.length, group.length === 1 ? group[0]!.form : undefined)];
  });
  return sentences.length === 0 ? '' : text.inSummer(sentences);
}

export const protectsWords = ({ hazards }: LabelRowFields): string[] => (hazards.length === 0 ? [text.protectsByLabel] : known(hazards));

const known = (hazards: LabelRowFields['hazards']): string[] =>
  (Object.keys(text.protects) as (keyof typeof text.protects)[])
    .filter((hazard) => hazards.includes(hazard) && !(hazard === 'skin' && hazards.includes('acid')))
    .map((hazard) => text.protects[hazard]);
