/*
 * treatments/: labels of one active ingredient, one row per form and place. Never a recommendation. What a label forbids and what works
 * poorly are separate fields. A row without a source is one whose label could not be opened, and it has no numbers.
 */
import { z } from 'astro/zod';
import { day, id, list, number, oneOf, review, section, shelf, sources, words, yesNo, idOf } from './fields.ts';
import { holding } from './where.ts';

/** The temperature that a limit means: the highest of each day, the mean of day and night, or any hour. */
export const WARMTH_KINDS = ['daily-high', 'mean', 'any-time'] as const;

const limit = section({
  of: oneOf(WARMTH_KINDS).describe(
    'Which temperature the limit speaks of: the high of each day, the mean of day and night, or any hour at all.',
  ),
  'least-c': number().optional().describe('At least, in C.'),
  'most-c': number().optional().describe('At most, in C.'),
  when: words('the days that it speaks of, such as "on the day it goes in"').optional().describe('Leave out where it holds for all days.'),
});

const row = section({
  id: id('lower-case words joined by hyphens, such as strips'),
  form: words('the form in plain words, never a trade name', 'strips between the frames').describe('Strips, gel, trickled, vapour ...'),
  place: words('the land or state whose label it is', 'United States'),
  ...holding,
  source: idOf('sources')
    .optional()
    .describe('The label. Leave it out where no label could be opened: such a row holds no numbers, and says only: ask.'),
  registration: words('the registration number that the label prints, such as "12345-6"').optional(),
  'label-date': day().optional().describe('The day of the label. A row of the United States needs it, with the registration number.'),
  superseded: yesNo().optional().describe('No longer sold or registered in this form: the row says only: ask.'),
  limits: list(limit).optional().describe('Warmth outside of which the label forbids it.'),
  'forbids-brood': yesNo().optional().describe('True only where the label forbids it while there is brood.'),
  supers: oneOf(['on', 'off', 'label']).describe('May honey boxes for harvest be on? `label`: the label decides, ask.'),
  'supers-back-days': number().optional().describe('Days after the end before supers go back.'),
  'works-poorly-with-brood': yesNo().describe('True where trials found that it works poorly while there is brood. It forbids nothing.'),
  'works-poorly-outside': list(limit).optional().describe('Warmth outside of which it works poorly. It forbids nothing.'),
  'efficacy-source': idOf('sources').optional().describe('Who found that it works poorly.'),
  'kills-under-cappings': oneOf(['yes', 'no', 'outlasts-brood', 'not-known']).describe('Does it reach mites under cappings?'),
  'days-least': number().optional().describe('How long it stays in the hive, at least.'),
  'days-most': number().optional().describe('At most.'),
  hazards: list(oneOf(['acid', 'vapour', 'skin', 'eyes', 'dust'])).describe('What it can do to the person who handles it.'),
  resistance: words('what is known of resistance', 'Found in several states.').optional(),
  certainty: oneOf(['settled', 'likely', 'contested', 'habit', 'memory']),
  note: words('one sentence', 'It hardly reaches mites under cappings.').optional(),
  'check-by': day().describe('After this day the row says only: ask.'),
});

export const treatments = section({
  title: words('the active ingredient', 'Thymol'),
  summary: words('what it is, in one sentence', 'An oil of thyme that works as a vapour.'),
  rows: list(row).min(1, { error: 'at least one row' }),
  figures: list(idOf('figures')).optional().describe('Figures that bear on it, shown with their sources.'),
  sources: sources(),
  ...holding,
  ...review,
  ...shelf,
});

export type Treatment = z.infer<typeof treatments>;
export type TreatmentRow = z.infer<typeof row>;
