/*
 * Fields that several collections share. The error message of each is what a webmaster reads after "write": the value to write instead.
 * Schemas are strict, so an unlisted field is refused.
 */
import { z } from 'astro/zod';
import { isDay } from '../../shared/days/day.ts';
import { isMonthDay } from '../../shared/days/month-day.ts';

/** Marks a field as the id of an entry in another collection, so that checks can follow it. */
export const references = z.registry<{ collection: string }>();

const ID = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;
const DAY = /^(19|20|21)\d\d-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;

/** The example that a hint shows after "such as". */
const shownIn = (hint: string): string | undefined =>
  /\bsuch as (?:"([^"]+)"|(.+?)(?:, (?:or|in) .*)?$)/.exec(hint)?.slice(1).find(Boolean);

/** Examples go with the field into the templates of new entries and into editors. */
const shows = <T extends z.ZodType>(field: T, example: unknown): T =>
  example === undefined ? field : (field.meta({ examples: [example] }) as T);

/** Words on one line, not blank, without space at either end. */
export const words = (hint: string, example = shownIn(hint)) =>
  shows(
    z.string({ error: hint }).refine((text) => text.trim().length > 0, { error: hint }),
    example,
  );

/** A day as `2026-04-18`, which must exist in the calendar. */
export const day = (hint = 'a day such as 2026-04-18') =>
  shows(
    z.string({ error: hint }).regex(DAY, { error: hint, abort: true }).refine(isDay, { error: 'a day that exists, such as 2026-02-28' }),
    '2026-04-18',
  );

/** A day of every year as `05-03`. */
export const monthDay = (hint: string, example: string) =>
  shows(
    z
      .string({ error: hint })
      .regex(/^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, { error: hint, abort: true })
      .refine(isMonthDay, { error: 'a day of the year such as "01-01"' }),
    example,
  );

/** A local time of day, `18:30`. */
export const clock = () =>
  shows(
    z
      .string({ error: 'a time in quotes or plain, such as 18:30' })
      .regex(/^([01]\d|2[0-3]):[0-5]\d$/, { error: 'a time of 24 hours such as 18:30' }),
    '18:30',
  );

/** The address of a public document, `https://example.org/bees.pdf`. Only https: a link must not send a reader to an open line. */
export const webAddress = () =>
  shows(
    z.url({ protocol: /^https$/, error: 'a whole address that begins with https://, such as https://example.org/bees.pdf' }),
    'https://example.org/bees.pdf',
  );

/** Slug: lower-case words joined by single hyphens, for addresses and references. */
export const id = (hint = 'lower-case words joined by hyphens, such as mite-count-day', example = shownIn(hint)) =>
  shows(z.string({ error: hint }).regex(ID, { error: hint }), example);

/** The id of an entry in the named collection: the file name without its ending. */
export function idOf(collection: string, hint = `the name of a file in ${collection}/, without its ending`) {
  const field = z.string({ error: hint }).regex(ID, { error: hint });
  references.add(field, { collection });
  return field;
}

export const yesNo = (hint = 'true or false, without quotes') => z.boolean({ error: hint });
export const number = (hint = 'a number, without quotes or a unit', example?: number) => shows(z.number({ error: hint }), example);
export const list = <T extends z.ZodType>(item: T, hint = 'a list: one line each, beginning with "- "') => z.array(item, { error: hint });
export const oneOf = <const T extends readonly [string, ...string[]]>(choices: T) =>
  z.enum(choices, { error: `one of: ${choices.join(', ')}` });

/** A section of named fields. Other fields in it are refused. */
export const section = <T extends z.ZodRawShape>(shape: T) => z.strictObject(shape, { error: 'indented lines, each "name: value"' });

export const CERTAINTIES = ['settled', 'likely', 'contested', 'habit', 'memory'] as const;

/** The work of a page's reader, the main one first. schemas/hazards maps it to hazards. */
export const WORK = [
  'open-hive',
  'smoke',
  'lift',
  'acid',
  'vapour',
  'alcohol',
  'carbon-dioxide',
  'fire',
  'drive-bees',
  'climb',
  'diseased-comb',
  'honey-as-food',
  'feed-honey',
  'hot-wax',
] as const;

/** The time in which an entry applies, in words. shared/season parses it. */
export const when = () =>
  words(
    'when it applies, such as "1 October to 15 November", "in swarming", "2 weeks before main flow to main flow", "day 3 to day 5 after installing" or "any time"',
  );

/** One line of an entry's history, shown to members. */
const change = section({
  changed: day().describe('The day of the change.'),
  what: words('what was changed, in one sentence', 'The first look is now seven days after the queen is out.'),
});

const DUTY = 'the reviewer\'s duty, such as "disease officer"';
/** Words that all begin with a capital: a name. */
const PERSON = /^\p{Lu}[\p{L}.'’-]*(?: \p{Lu}[\p{L}.'’-]*)+$/u;

/** Who checked the page, when, and when the next check is due. Every page prints it. */
export const review = {
  checked: day('the day on which you compared this with its sources, such as 2026-04-18'),
  'next-check': day().describe('The day by which it is to be compared again.'),
  by: words(DUTY)
    .refine((text) => !PERSON.test(text), { error: DUTY })
    .describe("Never a person's name."),
  history: list(change).optional().describe('What changed and when, newest last.'),
};

/** The same for an entry that may do without a review: its day is soon over. */
export const reviewIfAny = {
  checked: review.checked.optional(),
  'next-check': review['next-check'].optional(),
  by: review.by.optional(),
  history: review.history,
};

const DAY_AND_REASON = /^\S{10}, *\S/;

/** `2026-05-14, the test on this page can mislead`: day and reason on one line. */
export const dayAndReason = (hint: string) =>
  shows(
    z
      .string({ error: hint })
      .regex(DAY_AND_REASON, { error: hint })
      .refine((text) => !DAY_AND_REASON.test(text) || isDay(text.slice(0, 10)), { error: hint }),
    shownIn(hint),
  );

export const withdrawn = (hint = 'the day and the reason, such as "2026-05-14, the test on this page can mislead"') => dayAndReason(hint);

/** Fields that any entry may have. */
export const shelf = {
  withdrawn: withdrawn().optional().describe('Taken down: gone from everything the almanac makes; a page leaves a notice at its address.'),
  draft: yesNo().optional().describe('Not ready: the entry appears nowhere.'),
  formerly: list(words('an old address such as /lists/package-day/')).optional(),
};

/** Sources of the facts of a page: names of files in sources/. */
export const sources = () => list(idOf('sources')).describe('Where its facts come from.');

/** Who to ask next: the name of a duty in club.yaml. */
export const duty = () => id('a duty listed under contacts in club.yaml, such as inspector');
