/* Next steps of the syrup calculator: thin syrup for building up, thick syrup for winter, and a mix that cannot dissolve. */
const ask = ['mentor', 'extension'];

export const next = {
  thin: {
    links: [
      ['know-how/make-spring-syrup/', 'know-how/feeding-and-stores/'],
      ['know-how/feeding-and-stores/', 'know-how/which-sugar/'],
    ],
    ask,
  },
  thick: {
    links: [
      ['work-it-out/winter-stores/', 'know-how/winter-stores-needed/'],
      ['lists/fall-feeding/', 'know-how/feeding-and-stores/'],
    ],
    ask,
  },
  'cannot-dissolve': { links: [['know-how/feeding-and-stores/', 'know-how/which-sugar/'], ['lists/fall-feeding/']], ask },
} as const;

export type NextKind = keyof typeof next;
