/** The short pages: an address without a page, pages that moved or were withdrawn, notices, and the word list. */
export const noPage = {
  title: 'No page at this address',
  lead: 'It may have moved or been withdrawn. The address may also have been mistyped.',
  searchThe: 'Search the almanac',
  search: 'Search',
  goTo: '[Go to the first page](first), or [see who to call](who).',
};

export const moved = {
  title: (title: string): string => `Moved: ${title}`,
  lead: (title: string): string => `This page has another address now. [Go to “${title}”](there).`,
};

export const gone = {
  title: (title: string): string => `Withdrawn: ${title}`,
  lead: (day: string): string => `This page was taken down on ${day}. Do not follow a copy of it.`,
  why: 'Why',
  haveACopy: 'Have you a copy?',
  throwAway:
    'Throw away what you printed or saved before that day. Ask before you act on it. [Everything that was withdrawn](all) stands in one list.',
};

export const withdrawn = {
  title: 'Withdrawn',
  lead: 'What was taken down, since when, why, and who to ask. Throw away copies from before that day.',
  /** `why` is a sentence of its own. */
  line: (day: string, why: string, who: string): string => `${day}: ${why} Ask: ${who}.`,
};

export const notices = {
  title: 'Temporary notices',
  lead: 'These hold for certain days only. Each is also at the top of the pages it concerns.',
  none: 'There is no notice today, as far as this edition knows. It does not have news from after its own day.',
};

export const words = {
  title: 'Words',
  lead: 'The trade’s words in plain ones, and the ways people type them.',
  inBritain: (word: string): string => `in Britain: ${word}`,
  more: 'More',
  /** For listeners, after "More". */
  moreOn: (word: string): string => `on ${word}`,
};
