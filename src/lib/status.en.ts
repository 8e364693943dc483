/** One word, for a row of a list. */
export const tags = { settled: 'Fine', watch: 'Watch', act: 'Act', law: 'Report' } as const;
/** At the head of a page. */
export const words = { ...tags, settled: 'Fine: not urgent', law: 'Report by law' } as const;
