/*
 * Sentences for what a label row needs, forbids and asks of the person, made from its fields alone. They describe the row and are never
 * advice. No row is called suitable, and where a row is silent the sentence refers to the label.
 */
import type { Treatment } from '../schemas/treatments.ts';

export type LabelRowFields = Treatment['rows'][number];

const REACHES = {
  yes: 'It reaches mites under cappings.',
  no: 'It reaches mites on bees only, none under cappings.',
  'outlasts-brood': 'It stays until the brood has emerged.',
  'not-known': 'We do not know whether it reaches mites under cappings: your label says.',
} as const;

/** The requirements of a label. What trials found is separate. */
export function needsWords(row: LabelRowFields): string[] {
  return [...(row['forbids-brood'] ? ['A hive without brood.'] : []), REACHES[row['kills-under-cappings']]];
}

/** What works poorly, which is no rule of a label. */
export function poorlyWords(row: LabelRowFields): string[] {
  return row['works-poorly-with-brood']
    ? ['It works poorly while there is brood: mites under cappings live on. That is no rule of a label.']
    : [];
}

export function forbidsWords(row: LabelRowFields): string[] {
  const boxes = {
    off: 'Boxes for harvest on the hive.',
    label: 'Boxes for harvest, unless the label lets them stay.',
    on: 'Nothing about boxes for harvest in this row; read the label.',
  }[row.supers];
  return [boxes, 'Another amount, another time or another mix than the label says.'];
}

/** In a cell of a table: what the row says of a hive with brood. */
export function broodCell(row: LabelRowFields): string {
  if (row['forbids-brood']) return 'Not allowed';
  if (row['works-poorly-with-brood']) return 'Works poorly';
  return {
    yes: 'Reaches mites under cappings',
    no: 'Reaches mites on bees only',
    'outlasts-brood': 'Stays until the brood has emerged',
    'not-known': 'Not known: read the label',
  }[row['kills-under-cappings']];
}

/** In a cell of a table: whether boxes for harvest may be on. A row can rule them out, and never allows them. */
export const boxesCell = ({ supers }: LabelRowFields): string =>
  ({ off: 'Not allowed', label: 'The label decides', on: 'Not ruled out: read the label' })[supers];

/** One cell for all rows: each thing that they say, with the number of forms where they differ. */
export function cellOf(rows: readonly LabelRowFields[], cell: (row: LabelRowFields) => string): string {
  const said = [...Map.groupBy(rows, cell)].map(([words, of]) => [words, of.length] as const);
  if (said.length === 1) return said[0]![0];
  return said.map(([words, forms]) => `${words} (${forms} of ${rows.length} forms)`).join('. ');
}

/** The answer to "in summer, with brood?" from the rows of one ingredient. */
export function withBroodWords(rows: readonly LabelRowFields[]): string {
  const groups = Map.groupBy(rows, broodKind);
  const sentences = BROOD_KINDS.flatMap(([kind, one, several]) => {
    const group = groups.get(kind);
    if (!group) return [];
    if (groups.size === 1) return [`it ${one}.`];
    const named = group.length === 1 ? `: ${group[0]!.form}` : '';
    return [`${group.length} of ${rows.length} forms ${group.length === 1 ? one : several}${named}.`];
  });
  return sentences.length === 0 ? '' : `In summer, with brood, ${sentences.join(' ')}`;
}

const broodKind = (row: LabelRowFields): string =>
  row['forbids-brood'] ? 'forbidden' : row['works-poorly-with-brood'] ? 'poor' : row['kills-under-cappings'];

/** The kinds with the words for one form and for several, in the order of the answer. */
const BROOD_KINDS = [
  ['forbidden', 'is not allowed by the label', 'are not allowed by the label'],
  ['poor', 'works poorly, because mites under cappings live on', 'work poorly, because mites under cappings live on'],
  ['no', 'reaches mites on bees only, none under cappings', 'reach mites on bees only, none under cappings'],
  ['outlasts-brood', 'stays in the hive until the brood has emerged', 'stay in the hive until the brood has emerged'],
  ['yes', 'reaches mites under cappings', 'reach mites under cappings'],
  ['not-known', 'may or may not reach mites under cappings', 'may or may not reach mites under cappings'],
] as const;

const PROTECTS: Record<LabelRowFields['hazards'][number], string> = {
  vapour: 'The mask that the label names; wind at your back.',
  acid: 'Acid-proof gloves; water in reach.',
  eyes: 'Closed eye cover.',
  skin: 'Gloves that the label names; hands washed after.',
  dust: 'No dust in the air you breathe.',
};

export const protectsWords = ({ hazards }: LabelRowFields): string[] =>
  hazards.length === 0 ? ['Gloves, eye cover and mask as your label names them.'] : known(hazards);

const known = (hazards: LabelRowFields['hazards']): string[] =>
  (Object.keys(PROTECTS) as (keyof typeof PROTECTS)[])
    .filter((hazard) => hazards.includes(hazard) && !(hazard === 'skin' && hazards.includes('acid')))
    .map((hazard) => PROTECTS[hazard]);

/** What to write down after any treatment. */
export const RECORD = [
  'Hive or yard, and who did it.',
  'The product as its label names it, with registration and lot number.',
  'The day it went on and the day it came off.',
  'The highest temperature of each of those days, and the coldest hour.',
  'Mites per hundred bees before, and again after.',
  'The first day on which boxes for harvest may go back, as the label says.',
] as const;
