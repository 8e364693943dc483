/* Next steps by the states of the label rows. No step is a recommendation: the label on the container decides. */
const ask = ['extension', 'pesticide-office', 'inspector', 'mentor'];
const compare = ['treatments/', 'pests/varroa/'];

export const next = {
  'nothing-found': {
    links: [
      ['know-how/find-the-active-ingredient/', 'treatments/'],
      ['lists/late-summer-mites/', 'lists/mite-count-day/'],
    ],
    ask,
  },
  'works-poorly': { links: [compare, ['know-how/too-hot-to-treat/', 'lists/mite-count-day/']], ask },
  ask: { links: [['know-how/find-the-active-ingredient/', 'treatments/'], ['lists/mite-count-day/']], ask },
  'ruled-out': { links: [compare, ['know-how/too-hot-to-treat/', 'lists/mite-count-day/']], ask },
  'no-rows': { links: [compare, ['lists/mite-count-day/']], ask },
} as const;

export type NextKind = keyof typeof next;
