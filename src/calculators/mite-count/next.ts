/* Next steps by verdict of the mite count: pages in order of preference, and whom to call. */
const treat = ['work-it-out/treatment-window/', 'treatments/'];
const ask = ['mentor', 'extension', 'inspector'];

export const next = {
  act: { links: [['lists/late-summer-mites/', 'pests/varroa/', 'know-how/mites-through-the-year/'], treat], ask },
  'act-early': { links: [['pests/varroa/', 'know-how/mites-through-the-year/'], treat], ask },
  'act-winter': { links: [['lists/broodless-weeks/', 'pests/varroa/'], treat], ask },
  unsure: { links: [['lists/mite-count-day/', 'know-how/sugar-roll-or-wash/'], ['work-it-out/sampling-plan/']], ask },
  below: { links: [['lists/mite-count-day/'], ['know-how/mites-through-the-year/', 'pests/varroa/']], ask },
  'no-level': {
    links: [['know-how/mites-through-the-year/', 'pests/varroa/'], ['lists/mite-count-day/']],
    ask: ['extension', 'inspector', 'mentor'],
  },
} as const;

export type NextKind = keyof typeof next;
