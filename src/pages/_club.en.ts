export const nextMeeting = 'Next meeting';
export const allMeetings = (count: number): string => `All ${count} meetings`;
export const whoToCall = 'Who to call';
export const howToReach = 'How to reach them';
export const everyone = 'Everyone, by role';
export const files = 'Forms and files';
export const fileKind = (size: string): string => `PDF, ${size}.`;
export const howFilesOpen = 'A file opens in a program of your own device. After you opened it once with signal, it opens without.';
export const readAndLookUp = 'Read and look up';
export const settingsAndAbout = 'Settings and about';

type Counts = { articles: number; words: number; figures: number };
/** Pages to read, by address: the name and a line below it. */
export const reading = ({ articles, words, figures }: Counts): Record<string, readonly [title: string, words: string]> => ({
  'know-how/': ['Know-how', `${articles} articles: short answers first, then the reasons.`],
  'year/': ['The year', 'What begins in each month.'],
  'words/': ['Words', `${words} words of the trade in plain ones.`],
  'reading/': ['Reading list', 'What is worth reading, and which library lends it.'],
  'figures/': ['Figures', `${figures} figures, each with its sources side by side.`],
  'counts/': ['Local mite counts', 'What members counted, beside the level.'],
  'notices/': ['Temporary notices', 'These hold for certain days only.'],
  'about/#book': ['The book', 'Every page of this edition in one file, for an e-reader, a memory stick or paper.'],
  'sheets/': ['Sheets to fill in', 'Sign-off sheet, sting log, visitors, counts, hive card: blanks to print.'],
  'card/': ['Pocket card', 'Who to call, levels, syrup and look-alikes on one folded sheet.'],
  'hall/': ['Hall screen', 'For a projector: now, a checklist step by step, look-alikes side by side, a code for phones.'],
  'hand-out/': ['Hand-out', 'Your choice of pages as one set of sheets, or as one file for a phone.'],
  'open/': ['Downloads', 'The figures as a file for other programs.'],
});

export const about = {
  'about/access/': ['Display settings', 'Bright sun, night, large print, gloves, your district, and the home screen.'],
  'about/': ['How pages are reviewed', 'Who checks them, and how sure a figure is.'],
  'search/': ['Search', 'Find a page by the words in it.'],
  'withdrawn/': ['Withdrawn pages', 'What was taken down, and why.'],
} as const;
