export const newWords = 'These words are new since you ticked.';
/** A hive in the list of hives. `day` is when its checklist was saved to the history. */
export const filed = (hive: string, day: string): string => `${hive}, saved ${day}`;
export const isFor = (hive: string): string => `This checklist is for ${hive}.`;
/** `since`: "installed April 18, 2026". */
export const start = (since?: string): string => (since ? `Start, ${since}` : 'Start');
