/* The four levels of gravity, as the words on the page. */
import * as text from './status.en.ts';

/** One word, for a row of a list. */
export const STATUS_TAGS = text.tags;

/** The words at the head of a page. */
export const STATUS_WORDS = text.words;

/** The icon beside the word. */
export const STATUS_ICONS = { settled: 'check', watch: 'watch', act: 'act', law: 'report' } as const;

export type Status = keyof typeof STATUS_TAGS;
