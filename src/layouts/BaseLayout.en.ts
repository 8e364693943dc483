export const parts = { now: 'Now', lists: 'Checklists', pests: 'Problems', 'work-out': 'Calculators', club: 'More' };
/** "More pages", for readers who hear the link. */
export const furtherPages = ' pages';
/** For search engines, of a page that does not say what it is about. */
export const about = (club: string, place: string): string =>
  `Bees in ${place}: what is due, checklists, problems and calculators, reviewed and dated, by ${club}.`;
export const partsOfAlmanac = 'Parts of the almanac';
export const skip = 'Skip to main content';
export const demo = 'Demo';
export const search = 'Search';
export const searchAlmanac = 'Search the almanac';
export const whatIsNew = 'What is new';
export const emergency = 'Emergency';
export const emergencyNumber = 'Emergency:';
export const stingFirstAid = 'Sting first aid';
export const allNotices = 'Notices, and the days they hold for';
export const draft = 'Draft: not published';
/** In the margin of every printed sheet. */
export const onPaper = (almanac: string, isDemo: boolean, address: string, edition: string): string =>
  `${almanac}${isDemo ? ' (demo)' : ''} · ${address} · Edition of ${edition}`;
