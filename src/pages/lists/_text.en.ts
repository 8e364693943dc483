export const title = 'Checklists';
export const lead = 'Steps to follow in the yard and at the bench, in the order of the year.';

export const when = 'When:';
/** Before the days that count from the reader's own day. `days`: "day 3 to day 5 after installing". */
export const ownDays = (days: string): string => `your own days, ${days}`;
export const anyTime = 'any time';
/** How to work with the list. */
export const modes = { 'read-do': 'Read each step, then do it.', 'do-confirm': 'Do the jobs, then check them off.' };
export const beforeYouStart = 'Before you start';
export const cautions = (number: number): string => (number === 1 ? '1 caution' : `${number} cautions`);
