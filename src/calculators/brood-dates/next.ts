/* Next steps of the brood dates: queen cells, a young queen, other brood, and a hive without laying. */
const ask = ['mentor', 'extension'];

export const next = {
  'queen-cells': {
    links: [
      ['lists/swarm-season/', 'know-how/queen-cells/'],
      ['know-how/swarm-or-supersedure/', 'know-how/queen-cells/'],
    ],
    ask,
  },
  'young-queen': {
    links: [
      ['know-how/queens/', 'know-how/brood-and-time/'],
      ['pests/queenless/', 'know-how/is-this-normal/'],
    ],
    ask,
  },
  brood: {
    links: [
      ['know-how/brood-and-time/', 'know-how/is-this-normal/'],
      ['know-how/is-this-normal/', 'lists/build-up-inspection/'],
    ],
    ask,
  },
  'no-laying': {
    links: [
      ['lists/broodless-weeks/', 'know-how/mites-through-the-year/'],
      ['work-it-out/treatment-window/', 'treatments/'],
    ],
    ask,
  },
} as const;

export type NextKind = keyof typeof next;
