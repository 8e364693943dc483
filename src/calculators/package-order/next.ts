/* Next steps of the package order. Where the supplier's numbers are missing, the call comes first. */
const links = [
  ['lists/package-order/', 'know-how/package-bees/'],
  ['lists/package-day-before/', 'lists/package-arrival/'],
];
const ask = ['supplier', 'mentor', 'extension'];

export const next = {
  'ask-supplier': { links, ask },
  complete: {
    links: [
      ['lists/package-day-before/', 'lists/package-arrival/'],
      ['work-it-out/syrup/', 'work-it-out/package-calendar/'],
    ],
    ask,
  },
} as const;

export type NextKind = keyof typeof next;
