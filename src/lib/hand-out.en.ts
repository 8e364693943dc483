/** The kinds of pages that a hand-out may be made of. */
export const kinds = {
  lists: 'Checklists',
  pests: 'Problems',
  treatments: 'Treatments',
  articles: 'Articles',
  meetings: 'Meetings',
  calculators: 'Calculators: examples and tables',
};
