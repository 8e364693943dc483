/* cautions/: what can hurt a person or spread disease, once each; placed on pages by rule, never by hand. */
import { z } from 'astro/zod';
import { duty, list, number, oneOf, review, section, sources, words, withdrawn } from './fields.ts';

export const HAZARDS = [
  'stings', 'allergy', 'smoke', 'lifting', 'acids', 'fumes', 'alcohol-fire', 'carbon-dioxide', 'driving', 'climbing', 'disease-spread', 'infants-honey', 'fire',
  'honey-as-feed',
] as const;

export const cautions = section({
  /** The box's own heading: it begins with one of our three words. */
  heading: words('a heading that begins Stop, Take care or Ask first'),
  calls: oneOf(['Stop', 'Take care', 'Ask first']),
  /** One line for the second box, under 16 words. */
  line: words('one line, under 16 words'),
  /** What to do, for the first box: two to five short sentences. */
  says: list(words('one short sentence')),
  /** Who decides in the end. */
  defers: list(oneOf(['label', 'extension', 'regulator', 'doctor'])),
  /** 1 is the gravest: it takes the first box. */
  gravity: number().int({ error: 'a whole number, 1 for the gravest' }),
  /** The page that says more. */
  more: words('an address such as /know-how/stings/').optional(),
  ask: duty().optional(),
  sources: sources(),
  ...review,
  /** Taken down; a page whose work calls for it must then be mended or withdrawn as well. */
  withdrawn: withdrawn().optional(),
});

export type Caution = z.infer<typeof cautions>;
