/** What other programs read and show to members: the feed, the calendars, and the name of the almanac among the apps of a phone. */
export const feedTitle = (almanac: string): string => `${almanac}: what is new`;
export const feedDescription = (club: string): string => `Bulletins, notices and changes of ${club}`;

export const changed = (title: string): string => `Changed: ${title}`;
export const notice = (title: string): string => `Notice: ${title}`;
/** Before the title of a meeting, or before the reason. */
export const calledOff = (what: string): string => `Called off: ${what}`;

export const meetingsOf = (club: string): string => `Meetings of ${club}`;
export const calledOffBy = (who: string): string => `Called off by ${who}.`;
export const bring = (things: readonly string[]): string => `Bring: ${things.join('; ')}.`;

export const seasonTitle = (club: string, district: string): string => `${club}: what to do in ${district}`;
export const daysFrom = (district: string, basis: string): string => `The days in ${district}: ${basis}`;

export const shortName: string = 'Almanac';
export const description = (club: string): string => `The almanac of ${club}`;
export const shortcuts = { now: 'Now', checklists: 'Checklists', miteCount: 'Mite count' };
