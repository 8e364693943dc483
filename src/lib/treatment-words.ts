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
