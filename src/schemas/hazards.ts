/* Work and the hazards that it brings: the rule that places cautions on pages. */
import type { WORK } from './fields.ts';
import type { HAZARDS } from './cautions.ts';

export type Work = (typeof WORK)[number];
export type Hazard = (typeof HAZARDS)[number];

export const HAZARDS_OF: Record<Work, readonly Hazard[]> = {
  'open-hive': ['allergy', 'stings', 'lifting', 'disease-spread'],
  smoke: ['smoke', 'fire'],
  lift: ['lifting'],
  acid: ['acids'],
  vapour: ['fumes', 'acids'],
  alcohol: ['alcohol-fire'],
  'carbon-dioxide': ['carbon-dioxide'],
  fire: ['fire'],
  'drive-bees': ['driving', 'allergy', 'stings'],
  climb: ['climbing', 'allergy', 'stings'],
  'diseased-comb': ['disease-spread'],
  'honey-as-food': ['infants-honey'],
  'feed-honey': ['honey-as-feed', 'disease-spread'],
  'hot-wax': ['hot-wax'],
};

/** Work of the almanac's own pages in every club: the mite count with its sampling methods. */
export const OWN_WORK = ['open-hive', 'alcohol', 'carbon-dioxide'] as const satisfies readonly Work[];

/** Work with a treatment, by the hazards that its rows list. Gloves and eye cover are on the page itself. */
export const TREATMENT_WORK: Record<'acid' | 'vapour' | 'skin' | 'eyes' | 'dust', readonly Work[]> = {
  acid: ['acid'],
  vapour: ['vapour'],
  skin: [],
  eyes: [],
  dust: [],
};
