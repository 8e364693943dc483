/* sheets/: blank sheets to print, one sheet of paper each, and to fill in by hand. Nothing that is written on them is stored. */
import { z } from 'astro/zod';
import { duty, idOf, list, number, oneOf, review, section, shelf, sources, words, WORK } from './fields.ts';
import { holding } from './where.ts';

/** Lines of 8 mm that fit on Letter paper below a title, some sentences and a caution. */
const MOST_LINES = 22;

const part = number('a whole number from 1 to 12, such as 3').int().min(1).max(12);

const column = section({
  name: words('what is written in the column, such as "Day"'),
  width: part.optional().describe('Its part of the width, beside the parts of the other columns. Without it, 1.'),
});

export const sheets = section({
  title: words('what the sheet is called', 'Sting log'),
  summary: words('what it is for, in a sentence or two', 'Write down each sting at a meeting: the time, where, and what was done.'),
  before: list(words('one thing to say or do before it is filled in', 'Say that bees can sting, also through clothes.')).optional(),
  fields: list(words('a line at the head, such as "Day"')).optional().describe('Lines to fill in above the table.'),
  columns: list(column).min(1, { error: 'at least one column' }).describe('The columns of the table.'),
  lines: list(words('what is printed in the first column', '1 Site and law')).optional().describe('Lines whose first column is printed.'),
  rows: number('a whole number of empty lines, such as 12', 12).int().min(0).max(MOST_LINES).describe('Empty lines below them.'),
  cards: number('1 or 2', 2).int().min(1).max(2).optional().describe('Two small sheets on one, to cut apart. Without it, one.'),
  after: list(words('one sentence below the table', 'The paper is yours.')).optional(),
  reads: list(idOf('articles')).optional().describe('Articles that say more.'),
  lists: list(idOf('checklists')).optional().describe('Checklists that go with it.'),
  work: list(oneOf(WORK)).optional().describe('What the hands do meanwhile: the cautions follow from it, and are printed.'),
  sources: sources().optional(),
  ask: duty().describe('Whom to ask.'),
  ...holding,
  ...review,
  ...shelf,
}).refine(({ lines = [], rows, cards = 1 }) => (lines.length + rows) * cards <= MOST_LINES && lines.length + rows > 0, {
  error: `1 to ${MOST_LINES} lines on the whole sheet, so that each is high enough for handwriting`,
  path: ['rows'],
});

export type Sheet = z.infer<typeof sheets>;
