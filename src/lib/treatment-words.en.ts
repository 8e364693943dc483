/* Words for what a label row needs, forbids and asks of the person. They describe the row and are never advice. */

export const noBrood = 'A hive without brood.';
export const reaches = {
  yes: 'It reaches mites under cappings.',
  no: 'It reaches mites on bees only, none under cappings.',
  'outlasts-brood': 'It stays until the brood has emerged.',
  'not-known': 'We do not know whether it reaches mites under cappings: your label says.',
};
export const poorWithBrood = 'It works poorly while there is brood: mites under cappings live on. That is no rule of a label.';

export const forbids = {
  off: 'Boxes for harvest on the hive.',
  label: 'Boxes for harvest, unless the label lets them stay.',
  on: 'Nothing about boxes for harvest in this row; read the label.',
};
export const forbidsOtherUse = 'Another amount, another time or another mix than the label says.';

/** In a cell of a table: what the row says of a hive with brood. */
export const broodCells = {
  forbidden: 'Not allowed',
  poor: 'Works poorly',
  yes: 'Reaches mites under cappings',
  no: 'Reaches mites on bees only',
  'outlasts-brood': 'Stays until the brood has emerged',
  'not-known': 'Not known: read the label',
};
/** In a cell of a table: whether boxes for harvest may be on. A row can rule them out, and never allows them. */
export const boxesCells = { off: 'Not allowed', label: 'The label decides', on: 'Not ruled out: read the label' };
export const ofForms = (words: string, forms: number, all: number): string => `${words} (${forms} of ${all} forms)`;

const KINDS = {
  forbidden: ['is not allowed by the label', 'are not allowed by the label'],
  poor: ['works poorly, because mites under cappings live on', 'work poorly, because mites under cappings live on'],
  no: ['reaches mites on bees only, none under cappings', 'reach mites on bees only, none under cappings'],
  'outlasts-brood': ['stays in the hive until the brood has emerged', 'stay in the hive until the brood has emerged'],
  yes: ['reaches mites under cappings', 'reach mites under cappings'],
  'not-known': ['may or may not reach mites under cappings', 'may or may not reach mites under cappings'],
} as const;
export type BroodKind = keyof typeof KINDS;

export const everyForm = (kind: BroodKind): string => `it ${KINDS[kind][0]}.`;
/** `form` is the name of the form, where it is one alone. */
export const someForms = (kind: BroodKind, forms: number, all: number, form: string | undefined): string =>
  `${forms} of ${all} forms ${KINDS[kind][forms === 1 ? 0 : 1]}${form ? `: ${form}` : ''}.`;
/** The answer to "in summer, with brood?". */
export const inSummer = (sentences: readonly string[]): string => `In summer, with brood, ${sentences.join(' ')}`;

export const protects = {
  vapour: 'The mask that the label names; wind at your back.',
  acid: 'Acid-proof gloves; water in reach.',
  eyes: 'Closed eye cover.',
  skin: 'Gloves that the label names; hands washed after.',
  dust: 'No dust in the air you breathe.',
};
export const protectsByLabel = 'Gloves, eye cover and mask as your label names them.';

/** What to write down after any treatment. */
export const record = [
  'Hive or yard, and who did it.',
  'The product as its label names it, with registration and lot number.',
  'The day it went on and the day it came off.',
  'The highest temperature of each of those days, and the coldest hour.',
  'Mites per hundred bees before, and again after.',
  'The first day on which boxes for harvest may go back, as the label says.',
];

/** How the label of a row was seen. */
export const notOpened = 'No label of this form was opened';
export const onPoorly = (source: string): string => `On what works poorly: ${source}`;
const dateWords = (day: string | undefined): string => (day ? `label of ${day}` : 'date of the label not seen');
export const labelOf = (place: string, number: string | undefined, day: string | undefined): string =>
  `${place}, ${number ? `registration ${number}` : 'registration number not seen'}, ${dateWords(day)}`;

/** Lines of the table of one row. */
export const row = {
  temperature: 'Temperature',
  needs: 'Needs',
  notAllowed: 'Not allowed',
  poorly: 'Works poorly',
  outside: 'Outside of {limits}.',
  gear: 'Protective gear',
  moreGear: 'If the label asks for more, follow the label.',
  days: 'Days',
  resistance: 'Resistance',
  notes: 'Notes',
  label: 'Label',
  labelSeen: (number: string | undefined, day: string | undefined): string =>
    `${number ? `Registration ${number}` : 'Registration number not seen'}; ${dateWords(day)}.`,
  quoted: 'Seen only as others repeat it.',
  superseded: 'It is no longer sold in this form.',
  checkBy: 'Check by',
};

const KINDS_OF_WARMTH = { 'daily-high': 'daily highs', mean: 'a mean of day and night', 'any-time': 'temperatures at any hour' };
/** The limits of a row. `{least}` and `{most}` are the marked numbers. */
export const limits = {
  byLabel: 'as the label on your container says',
  warmth: (of: keyof typeof KINDS_OF_WARMTH, hasLeast: boolean, hasMost: boolean, when: string | undefined): string =>
    `${KINDS_OF_WARMTH[of]} of ${hasLeast && hasMost ? '{least} to {most}' : hasLeast ? 'at least {least}' : 'at most {most}'}${when ? ` ${when}` : ''}`,
  days: (count: number): string => (count === 1 ? '1 day' : `${count} days`),
  fromTo: '{least} to {most}',
  atMost: 'at most {most}',
  orMore: '{least} or more',
  back: 'They go back {wait} after its end.',
};

/** The pages of treatments. */
export const page = {
  title: 'Treatments',
  lead: 'By active ingredient: what label rows say of honey boxes, brood, temperature and time. None is recommended.',
  decides: '**The label on your container decides.** Only a product registered for bee colonies where you are counts.',
  rowsRuleOut:
    'The label on your container decides. These rows can rule out, never rule in. Only a product registered for bee colonies where you are counts.',
  countFirst: 'Count mites first.',
  ruledOut: 'What the label rows rule out',
  table: 'Table: ingredients side by side',
  ingredient: 'Ingredient',
  boxes: 'Honey boxes',
  brood: 'With brood',
  temperature: 'Temperature',
  time: 'Time',
  readLabel: 'Read the label',
  noRow: (land: string): string => `No label row for ${land}. Read the label in your hand.`,
  noRowStrong: (land: string): string => `**No label row for ${land}.** Read the label in your hand.`,
  unread: (names: readonly string[]): string => `No label was opened of ${names.join(', ')}.`,
  forAll: 'For all of them',
  notMore: 'Do not give more, longer or more often than the label says.',
  noMix: 'Do not use wood bleach, a home mix or a product of another animal.',
  notAgain: 'Do not give the same ingredient again and again: mites outlive it.',
  noAntibiotics: 'Do not look here for antibiotics. Foulbrood is the inspector’s matter.',
  checkAgain: (day: string): string => `Row to be checked again by ${day}`,
  figures: (count: number): string => `Figures that bear on it (${count})`,
  writeDown: 'What to write down',
  whatNot: 'What not to do',
  notUncounted: 'Do not give it without a count before and a count after.',
  notOften: 'Do not give it again and again: mites outlive what they meet too often.',
  all: 'All treatments',
};
