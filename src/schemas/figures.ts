/* figures/: numbers that an authority, a label or a paper may revise. One file per figure, one row per source. */
import { z } from 'astro/zod';
import { CERTAINTIES, day, id, idOf, list, number, oneOf, review, section, shelf, words } from './fields.ts';
import { phases } from '../../shared/season/phases.ts';
import { holding } from './where.ts';

/** Units of figures. `unit:` accepts only these, so that both systems can be shown. */
export const UNITS = [
  'C',
  'F',
  'C-difference',
  'F-difference',
  'kg',
  'g',
  'lb',
  'oz',
  'L',
  'mL',
  'us-gal',
  'us-qt',
  'us-cup',
  'm',
  'cm',
  'mm',
  'ft',
  'in',
  'days',
  'weeks',
  'months',
  'years',
  'hours',
  'minutes',
  'per-day',
  'percent',
  'per-100-bees',
  'mites-per-day',
  'bees',
  'bees-per-lb',
  'mites',
  'degree-days-F',
  'degree-days-C',
  'mg-per-m3',
  'ppm',
  'parts',
  'g-per-cup',
  'lb-per-us-gal',
  'mL-per-kg',
  'ratio',
  'count',
] as const;

/** The heading of a figure on the page of all figures. A figure without one comes last. */
export const FIGURE_SUBJECTS = [
  'mites',
  'treatments',
  'diseases',
  'packages',
  'bees',
  'feeding',
  'season',
  'people',
  'weights',
  'other',
] as const;

const row = section({
  id: id('lower-case words joined by hyphens, such as penn-state').describe('Names this line; a revision repeats it with a later `from`.'),
  value: number(undefined, 57).optional().describe('The number, where it is one.'),
  least: number(undefined, 50).optional().describe('The lower end, where it is a range; then without value.'),
  most: number(undefined, 60).optional().describe('The upper end.'),
  source: idOf('sources').describe('Who published it.'),
  at: words('a page, table or section', 'table 2').optional(),
  place: words('the land, state or region it speaks of', 'Ohio'),
  ...holding,
  method: words('how it was measured', 'alcohol wash').optional().describe('Where that matters: wash, roll, ether roll, sticky board ...'),
  from: day().describe('In force from this day. For a paper: the day or year it was published, as 2018-01-01.'),
  until: day().optional().describe('In force until this day.'),
  certainty: oneOf(CERTAINTIES).describe('How sure the source is.'),
  phases: list(oneOf(phases)).optional().describe('The parts of the year it covers; leave out for all.'),
  note: words('one sentence', 'It was set on bare foundation.').optional().describe('What a reader should know beside it.'),
});

export const figures = section({
  title: words('what the figure is, such as "Bees in a pound"'),
  subject: oneOf(FIGURE_SUBJECTS).optional().describe('What it is about.'),
  unit: oneOf(UNITS),
  rows: list(row).min(1, { error: 'at least one row' }),
  follows: id('the id of one of the rows', 'penn-state').describe('The row the club follows.'),
  'also-follows': list(id('the id of one of the rows', 'penn-state'))
    .optional()
    .describe('Further rows that the club follows, each in parts of the year of its own; then every followed row has `phases:`.'),
  'no-row-in': list(oneOf(phases))
    .optional()
    .describe('With `also-follows:` the parts of the year in which the club follows no row; `because:` says why.'),
  because: words('why the club follows that row', 'It was measured nearest to us.').optional(),
  ...holding,
  ...review,
  ...shelf,
});

export type Figure = z.infer<typeof figures>;
export type FigureRow = z.infer<typeof row>;

/** The ids of the rows that the club follows: one, or several that divide the phases between them. */
export const followedRows = (figure: Pick<Figure, 'follows' | 'also-follows'>): string[] => [
  figure.follows,
  ...(figure['also-follows'] ?? []),
];
