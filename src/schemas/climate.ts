/* Fields for a club's climate, its members' observations, and the days of its year. */
import { z } from 'astro/zod';
import { anchorIds, type AnchorId } from '../../shared/season/anchors.ts';
import { degreeDayMethods } from '../../shared/season/degree-day.ts';
import { day, idOf, list, number, oneOf, review, section, words } from './fields.ts';

const twelve = (examples: number[]) =>
  list(number(), 'twelve numbers in brackets, from January to December')
    .length(12, { error: 'twelve numbers, from January to December' })
    .meta({ examples: [examples] });
const span = () => words('its days, such as "1 October to 15 November"');
const dayOfYear = () => words('a day such as 10 May');

export const SCALES = ['F', 'C'] as const;

export const climate = section({
  scale: oneOf(SCALES).describe('Of every temperature and degree-day below.'),
  minima: twelve([18, 20, 28, 38, 48, 57, 61, 59, 51, 40, 32, 23]).describe('Normals of the daily low, twelve months.'),
  maxima: twelve([35, 39, 49, 61, 72, 80, 84, 82, 75, 63, 51, 39]).describe('Normals of the daily high, twelve months.'),
  latitude: number('degrees from -66 to 66', 40.8)
    .min(-66, { error: 'degrees from -66 to 66' })
    .max(66, { error: 'degrees from -66 to 66' })
    .describe('Degrees, south of the equator with a minus.'),
  period: words('the years of the normals, such as 1991-2020'),
  source: idOf('sources'),
  'degree-days': section({
    sum: number('a sum over 0', 3200).positive({ error: 'a sum over 0' }),
    base: number(undefined, 50),
    method: oneOf(degreeDayMethods),
    cap: number(undefined, 86).optional().describe('For modified; allowed for sine.'),
    period: words('the years of the sum, such as 1991-2020'),
    source: idOf('sources'),
  })
    .optional()
    .describe('One published sum of a whole year for this place: from it follows how much days differ from year to year.'),
  spread: section({
    sigma: number('degrees from 0.5 to 15', 7).min(0.5, { error: 'degrees from 0.5 to 15' }).max(15, { error: 'degrees from 0.5 to 15' }),
    source: idOf('sources'),
  })
    .optional()
    .describe("Where no such sum is published: how much a day's mean differs from year to year in the region."),
  freezes: section({
    last: dayOfYear(),
    first: dayOfYear(),
    chance: z.literal(50, { error: '50: the date that half of all years pass' }).describe('In percent.'),
    period: words('the years of the dates, such as 1991-2020'),
    source: idOf('sources'),
  })
    .optional()
    .describe('Published freeze dates of the place, the ones with an even chance.'),
});

const each = <T extends z.ZodType>(field: () => T) => Object.fromEntries(anchorIds.map((id) => [id, field()])) as { [id in AnchorId]: T };

/** Observations of one year: the year of its spring, and a day for each event. */
export const observedYear = section({
  year: number('a year such as 2024', 2024).int({ error: 'a year such as 2024' }),
  ...each(() => day().optional()),
});

/** A guess at the days of each part of the year. */
export const phaseSpans = section({
  'winter-rest': span(),
  'build-up': span(),
  swarming: span(),
  'main-flow': span(),
  dearth: span(),
  'fall-preparation': span(),
});

export const season = section({
  basis: words('where these dates come from', 'Six years of notes by members in the valley').describe(
    'Where the dates below come from, and of what years. Shown to members.',
  ),
  checked: day('the day on which you compared these dates with their sources, such as 2026-04-18'),
  'next-check': day().describe('The day by which they are to be compared again.'),
  history: review.history,
  phases: phaseSpans
    .optional()
    .describe("The year of a hive here, as days of the main district, guessed. Used for what neither members' dates nor normals give."),
  guesses: section(each(() => words('a day, or two days such as 1 April to 20 April').optional()))
    .optional()
    .describe('A guess at other days of the year, as the days between which they fall.'),
  published: section(
    each(() =>
      section({
        days: words('a day, or two days such as 1 October to 15 October', '15 October'),
        source: idOf('sources').describe('The publication that prints it.'),
      }).optional(),
    ),
  )
    .optional()
    .describe('A day of the year that the club takes from a publication, with its source; it goes before what normals give.'),
  'by-bloom': section(each(() => idOf('forage').optional()))
    .optional()
    .describe('The plant of forage/ whose bloom stands for a day of the year here.'),
});

export type ClimateFields = z.infer<typeof climate>;
export type ObservedYear = z.infer<typeof observedYear>;
