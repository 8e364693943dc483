/* Next steps by verdict of the mite count: pages in order of preference, whom to call, and the next count. */
import type { Counted, Judgement, MiteFigures } from './model.ts';

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

export function nextKind({ count, level }: Judgement, { phase }: Counted): NextKind {
  if (!level) return 'no-level';
  if (count.verdict !== 'act') return count.verdict!;
  if (phase === 'winter-rest') return 'act-winter';
  return phase === 'build-up' || phase === 'swarming' || phase === 'main-flow' ? 'act-early' : 'act';
}

/** Days until the next count. Undefined where the label of a treatment decides. */
export function daysToNextCount({ count, level }: Judgement, { growth }: MiteFigures): number | undefined {
  // Within a month, as the checklist of a count says.
  if (!level) return 28;
  if (count.verdict === 'act') return undefined;
  if (count.verdict === 'unsure') return 14;
  const soonest = growth && 'soonestWeeks' in count.weeks ? count.weeks.soonestWeeks : 4;
  return 7 * Math.min(4, Math.max(2, soonest));
}
