/* Next steps by verdict of the weight check. */
const ask = ['supplier', 'mentor', 'extension'];

export const next = {
  passes: { links: [['lists/package-arrival/', 'know-how/package-bees/'], ['work-it-out/package-calendar/']], ask },
  fails: {
    links: [
      ['lists/package-arrival/', 'know-how/package-bees/'],
      ['work-it-out/package-order/', 'know-how/bees-in-a-pound/'],
    ],
    ask,
  },
  'too-few': { links: [['lists/package-arrival/', 'know-how/package-bees/'], ['know-how/bees-in-a-pound/']], ask },
  'not-judged': { links: [['lists/package-arrival/', 'know-how/package-bees/'], ['know-how/bees-in-a-pound/']], ask },
} as const;

export type NextKind = keyof typeof next;
