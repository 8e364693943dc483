/*
 * cautions/: one entry for each thing that can hurt a person or spread disease. Rules place the boxes on pages, never authors. A page may
 * quote one.
 */
import { z } from 'astro/zod';
import { duty, list, number, oneOf, review, section, sources, words, withdrawn } from './fields.ts';
import { holding } from './where.ts';

export const HAZARDS = [
  'stings',
  'allergy',
  'smoke',
  'lifting',
  'acids',
  'fumes',
  'alcohol-fire',
  'carbon-dioxide',
  'driving',
  'climbing',
  'disease-spread',
  'infants-honey',
  'fire',
  'honey-as-feed',
  'hot-wax',
] as const;

export const cautions = section({
  heading: words('a heading that begins Stop, Take care or Ask first', 'Take care when you lift'),
  calls: oneOf(['Stop', 'Take care', 'Ask first']),
  line: words('one line, under 16 words', 'Lift a full box with two people, or frame by frame.'),
  says: list(words('one short sentence', 'Bend your knees and keep the box close.')).describe(
    'What to do, for the first box: two to five short sentences.',
  ),
  'if-it-happens': list(words('one short sentence', 'In the eye: hold it open and rinse for 15 to 20 minutes.'))
    .optional()
    .describe('What to do once it has happened, in order: two to five short sentences. A page quotes them with the tag Caution.'),
  defers: list(oneOf(['label', 'extension', 'regulator', 'doctor'])).describe('Who decides in the end.'),
  gravity: number('a whole number, 1 for the gravest', 5)
    .int({ error: 'a whole number, 1 for the gravest' })
    .describe('The gravest caution of a page takes its first box.'),
  more: words('an address such as /know-how/stings/').optional().describe('The page that says more.'),
  ask: duty().optional(),
  sources: sources(),
  ...review,
  ...holding,
  withdrawn: withdrawn().optional().describe('Taken down; a page whose work calls for it must then be mended or withdrawn as well.'),
});

export type Caution = z.infer<typeof cautions>;
