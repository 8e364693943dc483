export const contents = 'Contents';
/** `edition`: "edition of April 18, 2026". */
export const by = (club: string, almanac: string, edition: string): string => `${club}. ${almanac}, ${edition}.`;
export const asToday = 'These pages, as they are today';
/** `{link}` is the address of the almanac. */
export const doesNotChange = 'This copy does not change. Look for a newer one at {link}.';
export const whoToCall = 'Who to call:';
export const sources = 'Sources:';
export const inFull = 'This page, with its sources in full';
