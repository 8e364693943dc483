/* The four levels of gravity, as the words on the page. */
export const STATUS_WORDS = {
  settled: 'Settled: no haste',
  watch: 'Watch',
  act: 'Act',
  law: 'Law: report it',
} as const;
