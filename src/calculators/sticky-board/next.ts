/* Next steps of the sticky board. A board gives no rate, so a count of mites per bees comes next. */
export const next = {
  counted: {
    links: [['work-it-out/mite-count/'], ['lists/mite-count-day/', 'pests/varroa/']],
    ask: ['mentor', 'extension', 'inspector'],
  },
} as const;

export type NextKind = keyof typeof next;
