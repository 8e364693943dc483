/* Render context: what a page passes to the tags in its words. Each tag gets the values of this club. */
import type { AstroComponentFactory } from 'astro/runtime/server/index.js';
import type { Language, Tongue } from '../../shared/country/language.ts';
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

/** Days in words, with those of each district for the browser. `lang`: how they are written, where that is not the club's way. */
export type WindowShown = { words: string; windows: string; lang?: Language | undefined };

/** A caution from its file: the line for a step, the rule for a box, and what to do afterwards. */
export type CautionShown = Pick<Caution, 'line' | 'says' | 'if-it-happens'>;

/**
 * A contact on a page. `within` is the name in the middle of a sentence. Both are in the page's language where the club gives that, and
 * otherwise in the club's, which is `lang` then.
 */
export type ContactShown = { name: string; within: string; lang?: Language | undefined; hours?: string | undefined } & Reached;

/** `lines` is the SVG file. */
export type DrawingShown = { title: string; words: string; parts: readonly string[]; lines: string };

/** The published sizes of a picture below `pictures/`, widest first. */
export type PictureFiles = { files: readonly { name: string; width: number; height: number }[] };

export type RenderContext = {
  /** The folder of the published site, with both slashes. */
  base: string;
  /** The language of the club, where that of the page is another: the words that are not the page's own are in it. */
  frame?: Language | undefined;
  /** That of the page then. */
  tongue?: Tongue | undefined;
  /** False where the address is on this site but no page has it. */
  linkExists: (address: string) => boolean;
  /** The address of a page for the readers of this one: in their language where it is translated. */
  addressFor: (address: string) => string;
  /** A figure in the club's units, whose note is added to the sidebar. Null when no row is in force. */
  figure: (id: string, row?: string) => FigureShown | null;
  contact: (duty: string) => ContactShown | null;
  /** A drawing by its name, or null where the club withdrew it. */
  drawing: (name: string) => DrawingShown | null;
  /** A picture beside the page, by its written address. Null where it is not shown. */
  picture: (url: string) => PictureFiles | null;
  /** The language of the words of local/, where they are not in that of the page. */
  langOf: (name: string) => string | undefined;
  /** The words of local/ that hold here; null where nothing is written. */
  local: (id: string) => AstroComponentFactory | null;
  /** The caution of a hazard, or null where the club has none to show. */
  caution: (hazard: string) => CautionShown | null;
  /** A date of the package calendar as offsets for each way of starting: `candy drawn 4 7;...`. Null where the club lacks a figure. */
  packageDays: (name: string) => string | null;
  /** An anchor of this club in words, with its day in each district for the browser. Null where it has none. */
  dayOf: (anchor: string) => WindowShown | null;
  /** The number of the emergency line or the poison line, as words of a sentence. */
  line: (of: 'emergency' | 'poison') => string;
  /** A step's own `when:` in words, with its windows for the browser. Null for any time. */
  window: (when: string) => WindowShown | null;
};

/** A heading of the page, for its table of contents, with the number of steps below it. */
export type Part = { id: string; words: string; steps: number };

type FigureAsked = { id: string; row?: string };

/**
 * Facts about a page's words before they are rendered: its figures in reading order, those of its field test, the texts of its place
 * with the number of figures before each, and its headings.
 */
export type WordsAhead = { figures: FigureAsked[]; testFigures: FigureAsked[]; locals: { id: string; after: number }[]; parts: Part[] };
