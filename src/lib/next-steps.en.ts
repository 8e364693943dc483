/* Lists that a result leads to where the club has no nearer page, and what kind of page a link is. */
export const rooms: Readonly<Record<string, readonly [title: string, words: string]>> = {
  'know-how/': ['Articles', 'All of them, by subject.'],
  'pests/': ['Problems', 'Pests, diseases and treatments.'],
  'lists/': ['Checklists', 'All of them, by time of year.'],
  'work-it-out/': ['Calculators', 'All of them.'],
  'who-to-ask/': ['Who to call', 'Names, hours and numbers.'],
  'treatments/': ['Compare treatments', 'For your weather and your honey boxes.'],
  'year/bloom/': ['What is in bloom', 'The plants of this club, by date.'],
};
export const kinds = { checklist: 'Checklist', problem: 'Problem', article: 'Article' };
