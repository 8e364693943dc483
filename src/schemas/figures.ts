/* figures/: every number that an authority, a label or a paper may revise. A file a figure, a row a source. */
import { z } from 'astro/zod';
import { CERTAINTIES, day, id, idOf, list, number, oneOf, review, section, shelf, words } from './fields.ts';
import { PHASES } from './club.ts';

/** What figures are measured in: the word written in `unit:`, kept to this list so that both systems can be shown. */
export const UNITS = [
  'C', 'F', 'C-difference', 'F-difference', 'kg', 'g', 'lb', 'oz', 'L', 'mL', 'us-gal', 'us-qt', 'us-cup', 'm', 'cm', 'mm', 'ft', 'in',
  'days', 'weeks', 'months', 'years', 'hours', 'minutes', 'per-day', 'percent', 'per-100-bees', 'mites-per-day', 'bees', 'bees-per-lb',
  'mites', 'degree-days-F', 'degree-days-C', 'mg-per-m3', 'ppm', 'parts', 'g-per-cup', 'lb-per-us-gal', 'mL-per-kg', 'ratio', 'count',
] as const;

/** Under what heading a figure stands among all figures; without one it stands last. */
export const FIGURE_SUBJECTS = ['mites', 'treatments', 'diseases', 'packages', 'bees', 'feeding', 'season', 'people', 'weights', 'other'] as const;

const row = section({
  /** Names this source's line; a revision repeats it with a later `from`. */
  id: id(),
  /** The number, where it is one. */
  value: number().optional(),
  /** The two ends, where it is a range. */
  least: number().optional(),
  most: number().optional(),
  /** Who published it: a file in sources/. */
  source: idOf('sources'),
  /** Page, table or section in that source. */
  at: words('a page, table or section').optional(),
  /** The land, state or region it speaks of. */
  place: words('the land, state or region it speaks of'),
  /** How it was measured, where that matters: wash, roll, ether roll, sticky board ... */
  method: words('how it was measured').optional(),
  /** In force from this day. For a paper: the day or year it was published, as 2018-01-01. */
  from: day(),
  /** In force until this day. */
  until: day().optional(),
  certainty: oneOf(CERTAINTIES),
  /** The parts of the year it covers; leave out for all. */
  phases: list(oneOf(PHASES)).optional(),
  /** What a reader should know beside it. */
  note: words('one sentence').optional(),
});

export const figures = section({
  title: words('what the figure is, such as "Bees in a pound"'),
  /** What it is about. */
  subject: oneOf(FIGURE_SUBJECTS).optional(),
  unit: oneOf(UNITS),
  rows: list(row).min(1, { error: 'at least one row' }),
  /** The row the club follows. */
  follows: id('the id of one of the rows'),
  /** Why this club follows that row. */
  because: words('why the club follows that row').optional(),
  ...review,
  ...shelf,
});

export type Figure = z.infer<typeof figures>;
export type FigureRow = z.infer<typeof row>;
