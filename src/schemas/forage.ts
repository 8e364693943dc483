/* forage/: plants that bees visit here. */
import { z } from 'astro/zod';
import { day, list, number, oneOf, review, section, shelf, words, idOf } from './fields.ts';

export const forage = section({
  title: words('the plain name'),
  /** The botanical name. */
  botanical: words('the botanical name'),
  /** What it is worth to bees, in one sentence. */
  worth: words('what it is worth to bees, in one sentence'),
  gives: list(oneOf(['pollen', 'nectar', 'honeydew'])),
  /** Degree-days at first bloom, with all that makes the number mean something. */
  bloom: section({
    'degree-days': number(),
    scale: oneOf(['F', 'C']),
    base: number(),
    /** The day the sum starts, as 01-01. */
    from: z.string({ error: 'a month and day such as "01-01", in quotes' }).regex(/^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, { error: 'a month and day such as "01-01", in quotes' }),
    /** The temperature above which a degree counts no more: for modified, allowed for sine. */
    cap: number().optional(),
    method: oneOf(['simple', 'floored', 'sine', 'modified', 'maximum', 'not stated']),
    stage: oneOf(['first bloom', 'full bloom']),
    place: words('where it was observed'),
    source: idOf('sources'),
    certainty: oneOf(['settled', 'likely', 'contested', 'habit', 'memory']),
  }).optional(),
  /** What members of the main district saw, a line a year. */
  observed: list(section({
    year: number().int({ error: 'a year such as 2024' }),
    /** The first day in bloom. */
    first: day(),
    /** The last. */
    last: day().optional(),
  })).optional(),
  ...review,
  ...shelf,
});

export type Forage = z.infer<typeof forage>;
