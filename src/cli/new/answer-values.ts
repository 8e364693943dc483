/* Checks of one typed answer of `new -- club`: the answer in its plain form, or what was found and what to write instead. */
import type { z } from 'astro/zod';
import { addDays, parseDay, type Day } from '../../../shared/days/day.ts';
import { monthName } from '../../../shared/days/month-names.ts';
import { languages } from '../../../shared/country/language.ts';
import { readTypedDay } from '../../../shared/days/typed-day.ts';
import { err, ok, type Correction, type Result } from '../../../shared/result.ts';
import { nearName } from '../../../shared/words/near-name.ts';
import { isPlaceholder } from '../../checks/contacts.ts';
import { club, phone } from '../../schemas/club.ts';
import { duty } from '../../schemas/fields.ts';
import { quoted } from '../../source/diagnostic.ts';
import { timeMeant } from './cells.ts';
import { nameFor } from './file-name.ts';
import type { Context, Given } from './questions.ts';

export type Read = Result<string, Correction>;

const wrong = (typed: string, write: string, found = quoted(typed)): Read => err({ found, write });

/** A field of club.yaml checks it, with its own hint. */
export const schema =
  (field: z.ZodType) =>
  (typed: string): Read => {
    const result = field.safeParse(typed);
    return result.success ? ok(typed) : wrong(typed, result.error.issues[0]!.message);
  };

export const words =
  (hint: string) =>
  (typed: string): Read => {
    if (!/[\p{L}\p{N}]/u.test(typed)) return wrong(typed, hint);
    if (/\b(?:invented|made[ -]up)\b/i.test(typed)) return wrong(typed, 'what is true: a real club publishes nothing invented');
    return ok(typed);
  };

/** Small letters are accepted. */
export const land = (typed: string): Read => {
  const read = schema(club.shape.land)(typed.toUpperCase());
  return read.ok ? read : wrong(typed, read.reason.write);
};

/** The club's id is made of its name. */
export const name = (typed: string): Read =>
  nameFor(typed) === null ? wrong(typed, 'the name of the club, with some of a to z or 0 to 9') : words('the name of the club')(typed);

export const oneWord = (typed: string): Read => {
  if (typed === 'inspector' || typed === 'doctor') return wrong(typed, 'another duty, such as mentor: the club has that one already');
  return schema(duty())(typed).ok ? ok(typed) : wrong(typed, 'one word for the duty, or more joined by hyphens, such as swarm-line');
};

export const lineChoice =
  (choices: readonly string[]) =>
  (typed: string): Read => {
    const said = typed.toLowerCase();
    if (choices.includes(said)) return ok(said);
    const near = nearName(said, choices);
    return wrong(typed, near ?? `one of: ${choices.join(', ')}`);
  };

const NOT_REAL = 'a real one: this is reserved for examples';
const EXAMPLE_MAIL = 'a mail address, such as almanac@our-club.org';

export const mail = (typed: string): Read => {
  if (!club.shape.mistakes.safeParse(typed).success) return wrong(typed, EXAMPLE_MAIL);
  return isPlaceholder(typed) ? wrong(typed, NOT_REAL) : ok(typed);
};

export const phoneNumber =
  (digits: number) =>
  (typed: string): Read => {
    if (!phone().safeParse(typed).success || typed.replace(/\D/g, '').length < digits)
      return wrong(typed, `a telephone number: at least ${digits} digits, with spaces, hyphens and brackets between them if you like`);
    return isPlaceholder(typed) ? wrong(typed, NOT_REAL) : ok(typed);
  };

export const webAddress = (typed: string): Read => {
  if (typed === '') return ok('');
  if (!club.shape.site.safeParse(typed).success) return wrong(typed, 'a whole address, such as https://bees.our-club.org/');
  return ok(typed);
};

/** A number, a mail address or a web address: the field of a contact that it belongs to. */
export const fieldOfReach = (text: string): 'phone' | 'email' | 'web' =>
  text.includes('@') ? 'email' : /^https?:/.test(text) ? 'web' : 'phone';

/** Shorter numbers than this are those of emergency lines. */
const LEAST_DIGITS = 5;

export const reach = (typed: string): Read => {
  const field = fieldOfReach(typed);
  if (field === 'email') return mail(typed);
  if (field === 'web') return isPlaceholder(typed) ? wrong(typed, NOT_REAL) : webAddress(typed);
  return /\p{L}/u.test(typed)
    ? wrong(typed, `a telephone number, ${EXAMPLE_MAIL}, or a whole web address`)
    : phoneNumber(LEAST_DIGITS)(typed);
};

const DAY = 'a day such as 2027-01-12 or 12 January 2027';

function day(typed: string, given: Given, today: Day): Day | null {
  const result = typedDay(typed, given, today);
  return result.ok ? result.value : null;
}

export const dayToCome = (typed: string, given: Given, { today }: Context): Read => {
  const read = day(typed, given, today);
  if (!read) return wrong(typed, whyNoDay(typed, given, today));
  return read < today ? wrong(typed, 'a day to come', `"${typed}", which is past`) : ok(read);
};

/** One year after the day, as days are counted; 29 February has no other. */
export function yearAfter(from: Day): Day {
  const result = parseDay(`${Number(from.slice(0, 4)) + 1}${from.slice(4)}`);
  return result.ok ? result.value : addDays(from, 365);
}

export const agreedDay = (typed: string, given: Given, { today }: Context): Read => {
  const read = day(typed, given, today);
  if (!read) return wrong(typed, whyNoDay(typed, given, today));
  if (read > today) return wrong(typed, 'the day on which they agreed', `"${typed}", which is to come`);
  return yearAfter(read) <= today
    ? wrong(typed, 'a day of the last twelve months: ask them again', `"${typed}", and consent for a year from then is over`)
    : ok(read);
};

/** In numbers alone the club's country decides, as in the almanac's own date boxes. */
const typedDay = (typed: string, { language }: Given, today: Day): ReturnType<typeof readTypedDay> =>
  readTypedDay(typed, languages.find((each) => each === language) ?? 'en-US', today);

function whyNoDay(typed: string, given: Given, today: Day): string {
  const result = typedDay(typed, given, today);
  if (!result.ok && result.reason === 'impossible-date') return 'a day that exists, such as 2027-02-28';
  return DAY;
}

export const hours = (typed: string): Read => {
  if (typed === '') return ok('');
  const [from, to, ...more] = typed.split(/\s*(?:\bto\b|-|–)\s*/i);
  const [start, finish] = [timeMeant(from ?? ''), timeMeant(to ?? '')];
  if (!start || !finish || more.length > 0) return wrong(typed, 'both times, such as 19:00 to 21:00, or nothing for a whole day');
  return finish <= start ? wrong(typed, 'a later time to finish', `"${typed}", which ends before it begins`) : ok(`${start} to ${finish}`);
};

const LATITUDE = 'a latitude from -66 to 66';

export const degrees = (typed: string, { hemisphere }: Given): Read => {
  const value = Number(typed);
  if (typed === '' || !Number.isFinite(value) || Math.abs(value) > 66) return wrong(typed, LATITUDE);
  if (value < 0 === (hemisphere === 'south')) return ok(String(value));
  return wrong(typed, hemisphere === 'south' ? 'it with a minus, since the club lies south of the equator' : 'it without a minus');
};

export const position = (typed: string, given: Given): Read => {
  if (typed === '') return ok('');
  const [latitude, longitude, ...more] = typed.split(/\s*[,;]\s*|\s+/);
  const read = degrees(latitude ?? '', given);
  if (more.length > 0 || !longitude || !(Math.abs(Number(longitude)) <= 180))
    return wrong(typed, 'latitude and longitude, such as 38.2, -85.7');
  return read.ok ? ok(`${latitude}, ${longitude}`) : wrong(typed, read.reason.write);
};

export const twelve = (typed: string): Read => {
  const values = numbersIn(typed);
  return values.length === 12 && values.every((value) => Number.isFinite(Number(value)))
    ? ok(values.join(', '))
    : wrong(typed, 'twelve numbers, from January to December', `${values.length} of them: ${quoted(typed)}`);
};

/** Twelve numbers of which none is under its low. */
export const twelveHighs = (typed: string, given: Given): Read => {
  const read = twelve(typed);
  const highs = read.ok ? numbersIn(read.value) : [];
  const lows = numbersIn(given['climate-lows'] ?? '');
  const month = highs.findIndex((high, index) => Number(high) < Number(lows[index]));
  if (month < 0) return read;
  return wrong(
    typed,
    'a daily high that is over the daily low',
    `${highs[month]} for ${monthName(month + 1)}, under its low of ${lows[month]}`,
  );
};

const numbersIn = (typed: string): string[] => typed.split(/\s*[,;]\s*|\s+/).filter(Boolean);
