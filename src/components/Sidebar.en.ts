export const label = 'Who to call, sources and review';
export const whoToCall = 'Who to call';
/** `by`: "mite table editors". */
export const checked = (day: string, by?: string): string => `Checked ${day}${by ? `, by the ${by}` : ''}.`;
/** `{day}` shows the day, and below it that it is past. */
export const nextCheck = 'Next check {day}';
export const nextCheckTerm = 'Next check';
/** The fold of the sources, and of the review where it has one. */
export const fold = (sources: number, hasReview: boolean): string =>
  sources === 0 ? 'Review' : `Sources (${sources})${hasReview ? ' and review' : ''}`;
export const sourcesByNumber = 'Sources by number';
export const allSources = 'See all sources for this figure';
export const alsoRead = 'Also read';
export const sources = 'Sources';
export const sourcesAt = (address: string): string => `Sources: ${address}`;
export const review = 'Review';
export const publishedBy = 'Published by';
export const lastChecked = 'Last checked';
export const dayBy = (day: string, by?: string): string => `${day}${by ? `, by the ${by}` : ''}`;
export const comparedBy = (club: string): string => `Compared by ${club}`;
export const notYet = 'Not yet';
export const changed = 'What changed';
