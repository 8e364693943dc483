/* The four steps of gravity, as the word that stands on the page. */
export const STATUS_WORDS = {
  settled: 'Settled: no haste',
  watch: 'Watch',
  act: 'Act',
  law: 'Law: report it',
} as const;
