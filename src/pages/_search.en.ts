export const title = 'Search';
export const lead = 'Every page of the almanac, found by the words on it.';
export const label = 'Search the almanac';
export const placeholder = 'What are you looking for?';
export const search = 'Search';
export const noScript = 'This page cannot search without its script. The questions below and the lists lead to every page.';
export const bestAnswer = 'Best answer';
export const kindOfPage = 'Kind of page';
export const timeOfYear = 'Time of year';
export const allYear = 'All the year';
export const theseWeeks = 'These weeks';
export const result = 'Result';
/** `word` is searched. */
export const tryOneWord = {
  word: 'mites',
  says: 'Try one plain word for what you see, such as [mites](search). The [word list](words) has other names for things.',
};
export const nameOnBox = 'A name from a box? [Find the active ingredient on your label](label).';
export const common = 'Common questions';
export const askMember = "Can't find it? Ask a member";
export const howToReach = 'How to reach them';
export const everyone = 'Everyone, by duty';
export const rooms = {
  'lists/': 'Checklists',
  'pests/': 'Problems',
  'know-how/': 'Articles',
  'work-it-out/': 'Calculators',
  'meetings/': 'Meetings',
  'words/': 'Word list',
};
export const allPages = 'All pages, A to Z';
