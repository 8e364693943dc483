const count = (days: number): string => (days === 1 ? '1 day' : `${days} days`);

export const late = (days: number): string => `${count(days)} late`;
/** One day is "tomorrow" or "in 3 days"; several days start then. */
export const ahead = (days: number, isSpan: boolean): string => (isSpan ? 'starts ' : '') + (days === 1 ? 'tomorrow' : `in ${count(days)}`);
export const today = (isSpan: boolean): string => (isSpan ? 'due today' : 'today');
export const dueNow = 'due now';
