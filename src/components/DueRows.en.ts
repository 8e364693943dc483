export const sections = {
  begun: { heading: 'Your checklists', all: '' },
  due: { heading: 'Do this week', all: 'All checklists' },
  out: { heading: 'Watch for', all: 'All problems' },
  read: { heading: 'Questions this week', all: 'All articles' },
};
