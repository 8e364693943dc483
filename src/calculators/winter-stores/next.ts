/* Next steps of the winter stores. After the last day for syrup a hive that is short needs dry food. */
const ask = ['mentor', 'extension'];

export const next = {
  short: { links: [['work-it-out/syrup/'], ['lists/fall-feeding/', 'know-how/feeding-and-stores/']], ask },
  'short-late': {
    links: [
      ['know-how/emergency-winter-food/', 'know-how/when-to-stop-syrup/'],
      ['pests/starvation/', 'lists/winter-rest/'],
    ],
    ask,
  },
  enough: {
    links: [
      ['know-how/winter-stores-needed/', 'know-how/feeding-and-stores/'],
      ['lists/winter-rest/', 'lists/fall-feeding/'],
    ],
    ask,
  },
  'no-figure': { links: [['know-how/winter-stores-needed/', 'know-how/feeding-and-stores/'], ['lists/fall-feeding/']], ask },
} as const;

export type NextKind = keyof typeof next;
