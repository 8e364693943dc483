/* What a page hands to the tags in its words: each asks for what it shows, and gets it as it reads for this club. */
import type { Caution } from '../schemas/cautions.ts';
import type { Reached } from './contacts.ts';

export type FigureShown = {
  figure: string;
  row: string;
  unit: string;
  main: string;
  other: string;
  value?: number | undefined;
  least?: number | undefined;
  most?: number | undefined;
  /** The number of its source note on this page. */
  note: number;
};

/** A caution as its file has it: the line for a step, the rule for a box, and what to do once it has happened. */
export type CautionShown = Pick<Caution, 'line' | 'says' | 'if-it-happens'>;

export type ContactShown = { name: string } & Reached;

/** `lines` is the file of SVG. */
export type DrawingShown = { title: string; words: string; parts: readonly string[]; lines: string };

/** A picture's published sizes below `pictures/`, widest first. */
export type PictureFiles = { files: readonly { name: string; width: number; height: number }[] };

export type RenderContext = {
  /** The folder the site is published under, with both slashes. */
  base: string;
  /** False where no page of this almanac stands at an address of this site. */
  leads: (address: string) => boolean;
  /** A figure as it reads here, its note put in the margin; null when no row is in force. */
  figure: (id: string, row?: string) => FigureShown | null;
  contact: (duty: string) => ContactShown | null;
  /** A drawing by its name; null where the club took it down. */
  drawing: (name: string) => DrawingShown | null;
  /** A picture beside the page, by its address as written; null where it is not shown. */
  picture: (url: string) => PictureFiles | null;
  /** The caution of a hazard; null where the club has none to show. */
  caution: (hazard: string) => CautionShown | null;
  /** A date of the package calendar as offsets for each way of starting: `candy drawn 4 7;...`; null where the club lacks a figure. */
  packageDays: (name: string) => string | null;
  /** A day of the year here, such as the last syrup, in words, with its day in each district for the browser; null where there is none. */
  dayOf: (anchor: string) => { words: string; windows: string } | null;
  /** What a step's own `when:` says here, in words, with its windows for the browser; null for any time. */
  window: (when: string) => { words: string; windows: string } | null;
};

/** A heading of the page, for a list of its parts, with the number of steps under it. */
export type Part = { id: string; words: string; steps: number };

type FigureAsked = { id: string; row?: string };

/** What is known of a page's words before they are drawn: its figures in reading order, those of its field test, and its parts. */
export type WordsAhead = { figures: FigureAsked[]; testFigures: FigureAsked[]; parts: Part[] };
