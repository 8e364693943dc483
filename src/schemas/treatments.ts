/* treatments/: what labels of one active ingredient say, a row a formulation. Never a recommendation. */
import { z } from 'astro/zod';
import { day, id, list, number, oneOf, review, section, shelf, sources, words, yesNo, idOf } from './fields.ts';

const row = section({
  id: id('lower-case words joined by hyphens, such as strips'),
  form: words('the form in plain words, never a trade name', 'strips between the frames').describe('Strips, gel, trickled, vapour ...'),
  place: words('the land or state whose label it is', 'United States'),
  year: number('the year of the label', 2024).int({ error: 'the year of the label' }),
  source: idOf('sources'),
  'low-c': number().optional().describe('Air temperature of every day of the treatment, at least, in C.'),
  'high-c': number().optional().describe('The same, at most, in C.'),
  supers: oneOf(['on', 'off', 'label']).describe('May honey boxes for harvest be on? `label`: the label decides, ask.'),
  'supers-back-days': number().optional().describe('Days after the end before supers go back.'),
  'kills-under-cappings': oneOf(['yes', 'no', 'outlasts-brood']).describe('Does it reach mites under cappings?'),
  'needs-broodless': yesNo().describe('Works only, or mainly, without brood.'),
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
  ...review,
  ...shelf,
});

export type Treatment = z.infer<typeof treatments>;
