/* treatments/: what labels of one active ingredient say, a row a formulation. Never a recommendation. */
import { z } from 'astro/zod';
import { day, id, list, number, oneOf, review, section, shelf, sources, words, yesNo, idOf } from './fields.ts';

const row = section({
  id: id(),
  /** The form in plain words: strips, gel, trickled, vapour ... Never a trade name. */
  form: words('the form in plain words, never a trade name'),
  place: words('the land or state whose label it is'),
  year: number('the year of the label').int({ error: 'the year of the label' }),
  source: idOf('sources'),
  /** Air temperature of every day of the treatment, in C. */
  'low-c': number().optional(),
  'high-c': number().optional(),
  /** May honey boxes for harvest be on? `label`: the label decides, ask. */
  supers: oneOf(['on', 'off', 'label']),
  /** Days after the end before supers go back. */
  'supers-back-days': number().optional(),
  /** Does it reach mites under cappings? */
  'kills-under-cappings': oneOf(['yes', 'no', 'outlasts-brood']),
  /** Works only, or mainly, without brood. */
  'needs-broodless': yesNo(),
  'days-least': number().optional(),
  'days-most': number().optional(),
  /** What it can do to the person who handles it. */
  hazards: list(oneOf(['acid', 'vapour', 'skin', 'eyes', 'dust'])),
  resistance: words('what is known of resistance').optional(),
  certainty: oneOf(['settled', 'likely', 'contested', 'habit', 'memory']),
  note: words('one sentence').optional(),
  /** After this day the row says only: ask. */
  'check-by': day(),
});

export const treatments = section({
  title: words('the active ingredient'),
  summary: words('what it is, in one sentence'),
  rows: list(row).min(1, { error: 'at least one row' }),
  /** Figures that bear on it, shown with their sources. */
  figures: list(idOf('figures')).optional(),
  sources: sources(),
  ...review,
  ...shelf,
});

export type Treatment = z.infer<typeof treatments>;
