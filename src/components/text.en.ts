/** Words of the small components, by the component that says them. */
export const anchorTable = {
  label: 'The days of the year in each district',
  day: 'Day of the year',
  basis: 'Where it comes from',
  likely: (days: string): string => `likely ${days}`,
  noDate: 'no date',
};

export const bookFiles = {
  epub: 'The book for an e-reader',
  /** `{size}` is written once the files are made. */
  epubIs: (edition: string): string => `EPUB, {size}, edition of ${edition}.`,
  html: 'The book as one page',
  htmlIs: (edition: string): string =>
    `For a memory stick or a printer, {size}, edition of ${edition}. It opens in any browser, with no network.`,
};

export const cited = {
  noAddress: '(no open address found)',
  opened: (day: string): string => `(opened ${day})`,
};

export const anyTime = 'any time';
export const noFigure = 'no figure for this club';
/** "Pettis and others", where a paper has three authors or more. */
export const andOthers = (first: string): string => `${first} and others`;
export const mistake = 'report a mistake';

export const meetings = {
  calledOff: 'Called off.',
  bring: (things: readonly string[]): string => `Bring: ${things.join('; ')}.`,
};

export const miniRing = { year: 'Year', seeWholeYear: 'See the whole year' };

export const nextSteps = {
  title: 'What to do next',
  takeCare: (line: string): string => `**Take care:** ${line}`,
  more: 'More',
  /** For listeners, after "More". `hazard` is an English id, such as open-hive. */
  moreOn: (hazard: string): string => `on ${hazard.replaceAll('-', ' ')}`,
  notSure: (name: string): string => `**Not sure? Call** ${name}`,
};

export const origins = {
  label: 'Table: pages by who wrote and checked them',
  from: 'From',
  pages: 'Pages',
  compared: 'Compared by us',
};

/** `{district}` and `{days}` are drawn by the component. */
export const pageDays = { inDistrict: 'In {district}: {days}.', everywhere: '{days}.' };

export const phasesTable = { label: 'Table: the parts of the year in each district', part: 'Part of the year' };

export const sideBySide = {
  title: 'Side by side with its look-alikes',
  label: 'Table: the signs, and those of its look-alikes',
  sign: 'Sign',
  key: '**Bold** points to it strongly. A dash: this is not a sign of it.',
};

export const yearSheet = {
  key: { list: 'a list begins', pest: 'look out for it', bloom: 'a plant comes into flower', meeting: 'a meeting' },
  begin: (count: number): string => `${count} begin`,
  calledOff: 'Called off.',
};

export const formsTable = {
  label: 'Table: the forms side by side',
  brood: 'With brood',
  boxes: 'Honey boxes',
  warmth: 'Temperature',
  noLongerSold: (form: string): string => `${form} (no longer sold)`,
  readLabel: 'Read the label',
  /** Null for all forms of the page, of which there is one or more. */
  notOpened: (forms: readonly string[] | null, all: number): string =>
    `No label of ${formsIn(forms, all)} was opened, so this page has no limits for it.`,
  fromMemory: (forms: readonly string[] | null, all: number): string => `The row of ${formsIn(forms, all)} is from memory.`,
  /** `{day}` is drawn by the component. */
  checkBy: 'Check these rows again by {day}.',
};

const formsIn = (forms: readonly string[] | null, all: number): string =>
  forms === null ? (all === 1 ? 'this form' : 'any of these forms') : forms.map((form) => `“${form}”`).join(' or ');
