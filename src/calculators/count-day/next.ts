/* Next steps of the count day. */
const ask = ['mentor', 'extension', 'inspector'];

export const next = {
  over: { links: [['work-it-out/mite-count/'], ['lists/late-summer-mites/', 'pests/varroa/']], ask },
  under: { links: [['work-it-out/mite-count/'], ['lists/mite-count-day/', 'know-how/mites-through-the-year/']], ask },
  'no-level': {
    links: [['know-how/mites-through-the-year/', 'pests/varroa/'], ['work-it-out/mite-count/']],
    ask: ['extension', 'inspector', 'mentor'],
  },
} as const;

export type NextKind = keyof typeof next;
