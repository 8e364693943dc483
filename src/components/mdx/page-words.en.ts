export const words = {
  doNow: 'Do now',
  whatNext: 'What comes next',
  somethingWrong: 'Something wrong?',
  /** The name of a table for listeners. `heads` are those of its columns. */
  tableOf: (heads: readonly string[]): string => `Table: ${heads.join(', ')}`,
};
