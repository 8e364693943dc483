/* What a club may say of its climate, of what its members saw, and of the days of its year. */
import { z } from 'astro/zod';
import { anchorIds, type AnchorId } from '../../shared/season/anchors.ts';
import { degreeDayMethods } from '../../shared/season/degree-day.ts';
import { day, idOf, list, number, oneOf, review, section, when, words } from './fields.ts';

const twelve = () => list(number(), 'twelve numbers in brackets, from January to December').length(12, { error: 'twelve numbers, from January to December' });
const dayOfYear = () => words('a day such as 10 May');

export const SCALES = ['F', 'C'] as const;

export const climate = section({
  /** Of every temperature and degree-day below. */
  scale: oneOf(SCALES),
  /** Normals of the daily low, twelve months. */
  minima: twelve(),
  /** Normals of the daily high, twelve months. */
  maxima: twelve(),
  /** Degrees, south of the equator with a minus. */
  latitude: number().min(-66, { error: 'degrees from -66 to 66' }).max(66, { error: 'degrees from -66 to 66' }),
  /** The years the normals are of, such as 1991-2020. */
  period: words('the years of the normals, such as 1991-2020'),
  source: idOf('sources'),
  /** One published sum of a whole year for this place: from it follows how much days differ from year to year. */
  'degree-days': section({
    sum: number().positive({ error: 'a sum over 0' }),
    base: number(),
    method: oneOf(degreeDayMethods),
    /** For modified; allowed for sine. */
    cap: number().optional(),
    period: words('the years of the sum, such as 1991-2020'),
    source: idOf('sources'),
  }).optional(),
  /** Where no such sum is published: how much a day's mean differs from year to year in the region. */
  spread: section({
    sigma: number().min(0.5, { error: 'degrees from 0.5 to 15' }).max(15, { error: 'degrees from 0.5 to 15' }),
    source: idOf('sources'),
  }).optional(),
  /** Published freeze dates of the place, the ones with an even chance. */
  freezes: section({
    last: dayOfYear(),
    first: dayOfYear(),
    /** In percent. */
    chance: z.literal(50, { error: '50: the date that half of all years pass' }),
    period: words('the years of the dates, such as 1991-2020'),
    source: idOf('sources'),
  }).optional(),
});

const each = <T extends z.ZodType>(field: () => T) => Object.fromEntries(anchorIds.map((id) => [id, field()])) as { [id in AnchorId]: T };

/** What members saw in one year: the year in which its spring lies, and a day for each thing they wrote down. */
export const observedYear = section({
  year: number().int({ error: 'a year such as 2024' }),
  ...each(() => day().optional()),
});

export const season = section({
  /** Where the dates below come from, and of what years. Shown to members. */
  basis: words('where these dates come from'),
  checked: day(),
  'next-check': day(),
  history: review.history,
  /** The year of a hive here, as days of the main district, guessed. Used for what neither members' dates nor normals give. */
  phases: section({ 'winter-rest': when(), 'build-up': when(), swarming: when(), 'main-flow': when(), dearth: when(), 'fall-preparation': when() }).optional(),
  /** A guess at other days of the year, as the days between which they fall. */
  guesses: section(each(() => words('a day, or two days such as 1 April to 20 April').optional())).optional(),
  /** The plant of forage/ whose bloom stands for a day of the year here. */
  'by-bloom': section(each(() => idOf('forage').optional())).optional(),
});

export type ClimateFields = z.infer<typeof climate>;
export type ObservedYear = z.infer<typeof observedYear>;
export type SeasonFields = z.infer<typeof season>;
