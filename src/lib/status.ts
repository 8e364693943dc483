/* The four levels of gravity, as the words on the page. */

/** One word, for a row of a list. */
export const STATUS_TAGS = { settled: 'Fine', watch: 'Watch', act: 'Act', law: 'Report' } as const;

/** The words at the head of a page. */
export const STATUS_WORDS = { ...STATUS_TAGS, settled: 'Fine: not urgent', law: 'Report: the law asks for it' } as const;

export type Status = keyof typeof STATUS_TAGS;
