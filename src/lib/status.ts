/* The four levels of gravity, as the words on the page. */
export const STATUS_WORDS = {
  settled: 'Fine: not urgent',
  watch: 'Watch',
  act: 'Act',
  law: 'Report: the law asks for it',
} as const;
