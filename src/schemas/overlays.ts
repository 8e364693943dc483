/* What a higher layer may lay over an entry of a book without writing it again: words below it, another choice of rows, or a withdrawal. */
import { list, oneOf, review, section, sources, withdrawn, words, WORK, yesNo } from './fields.ts';
import { bulletins } from './bulletins.ts';
import { figures } from './figures.ts';

/** `articles/swarms.add.mdx`: words that stand below those of the book. */
export const addition = section({
  heading: words('the heading above the words, such as "In our club"').optional().describe('"In our club" where it is left out.'),
  law: bulletins.shape.law,
  sources: sources().optional(),
  yard: yesNo().optional().describe('What it tells to do means opening a hive.'),
  work: list(oneOf(WORK)).optional().describe('What the hands do: the cautions follow from it.'),
  ...review,
  draft: yesNo().optional().describe('Not ready: the words appear nowhere.'),
});

/** A file of figures/ without title and unit: which row the club follows, and rows of its own beside those of the book. */
export const choice = section({
  ...figures.pick({ follows: true, 'also-follows': true, 'no-row-in': true, because: true, rows: true }).partial().shape,
  checked: review.checked.optional(),
  'next-check': review['next-check'].optional(),
  by: review.by.optional(),
  history: review.history,
  draft: yesNo().optional().describe('Not ready: the choice appears nowhere.'),
});

/** A file with one line: the book's entry is taken down. */
export const withdrawal = section({ withdrawn: withdrawn() });

/** Fields by which a file is known to be no whole entry. */
export const CHOICE_FIELDS: readonly string[] = Object.keys(choice.shape);
