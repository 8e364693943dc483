/** Groups of results. */
export const groups = {
  problems: 'Problems',
  checklists: 'Checklists',
  calculators: 'Calculators',
  words: 'Words',
  meetings: 'Meetings',
  sheets: 'Sheets to fill in',
  reading: 'Books to read',
  club: 'The club',
  articles: 'Articles',
};
export const allKinds = 'All kinds';
export const bestAnswer = 'Best answer';
export const nextMeeting = (title: string): string => `Next meeting: ${title}`;
export const alsoLookedFor = (words: readonly string[]): string => `Also looked for: ${words.join(', ')}.`;
export const found = (results: number): string => (results === 0 ? 'No page found' : results === 1 ? '1 result' : `${results} results`);
/** `filters` are the chosen kind and time of year. */
export const foundIn = (results: number, filters: readonly string[]): string => `${found(results)}: ${filters.join(', ').toLowerCase()}`;
export const showAll = (results: number): string => `Show all ${results}`;
