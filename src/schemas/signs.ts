/* signs/: what a member can see, smell or hear. Bulletins say how strong and how frequent each sign is. */
import { z } from 'astro/zod';
import { oneOf, review, section, shelf, words } from './fields.ts';
import { holding } from './where.ts';

/** Places of signs, in the order of an inspection. */
export const SIGN_PLACES = ['entrance', 'smell', 'brood', 'adults', 'comb', 'season'] as const;

/** How strongly a sign points at one trouble rather than another, and how often it occurs with that trouble. */
export const STRENGTHS = ['strong', 'fair', 'weak'] as const;
export const SHOWS = ['always', 'often', 'sometimes', 'seldom', 'never'] as const;

export const signs = section({
  title: words('what is seen, in a few words, such as "Caps are dark and sunken"'),
  where: oneOf(SIGN_PLACES),
  look: words('how to look for it, in one sentence', 'Hold the comb so that the sun falls into the cells.').optional(),
  usually: words('what it mostly is when nothing is wrong, in one sentence', 'Young bees that learn where they live.').optional(),
  ...holding,
  ...review,
  ...shelf,
});

export type Sign = z.infer<typeof signs>;
