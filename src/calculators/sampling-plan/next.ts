/* Next steps of the sampling plan. */
const ask = ['mentor', 'extension', 'inspector'];

export const next = {
  sample: { links: [['lists/mite-count-day/', 'know-how/sugar-roll-or-wash/'], ['work-it-out/mite-count/']], ask },
  'too-many': { links: [['lists/mite-count-day/', 'know-how/sugar-roll-or-wash/'], ['work-it-out/mite-count/']], ask },
} as const;

export type NextKind = keyof typeof next;
