/* The four levels of gravity, as the words on the page. */

/** One word, for a row of a list. */
export const STATUS_TAGS = { settled: 'Fine', watch: 'Watch', act: 'Act', law: 'Report' } as const;

/** The words at the head of a page. */
export const STATUS_WORDS = { ...STATUS_TAGS, settled: 'Fine: not urgent', law: 'Report by law' } as const;

/** The icon beside the word. */
export const STATUS_ICONS = { settled: 'check', watch: 'watch', act: 'act', law: 'report' } as const;

export type Status = keyof typeof STATUS_TAGS;
