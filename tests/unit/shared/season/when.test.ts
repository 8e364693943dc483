import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { err, ok, unwrap, type Correction, type Refused } from '../../../../shared/result.ts';
import { addMonthDays, type MonthDay } from '../../../../shared/days/month-day.ts';
import { anchorIds, anchorsOf } from '../../../../shared/season/anchors.ts';
import {
  anchorName,
  anchors,
  anchorsIn,
  daysInWindow,
  phases,
  readWhen,
  resolveWhen,
  type Window,
} from '../../../../shared/season/when.ts';
import { guessesFrom, seasonFrom } from '../../../../shared/season/year.ts';
import { SPANISH_FORMS, spanishName } from '../../../../shared/season/spanish.ts';
import { rows } from '../../../rows.ts';
import { aMonthDay } from '../../../days.ts';

/** 16 November to 28 February, to 20 April, to 19 May, to 5 July, to 20 August, to 15 November. */
const STARTS = {
  'winter-rest': '11-16',
  'build-up': '03-01',
  swarming: '04-21',
  'main-flow': '05-20',
  dearth: '07-06',
  'fall-preparation': '08-21',
};

function seasonOf(later = 0) {
  const starts = Object.fromEntries(Object.entries(STARTS).map(([phase, day]) => [phase, addMonthDays(aMonthDay(day), later)])) as Record<
    keyof typeof STARTS,
    MonthDay
  >;
  const figures = { freezeC: null, clusterC: null, syrupC: null, doubt: null, crossingDays: null };
  const made = seasonFrom(anchorsOf({ climate: null, observed: [], signs: {}, guesses: guessesFrom(starts), figures }));
  assert.ok(made.ok);
  return made.value;
}
const season = seasonOf();

const windowOf = (text: string, later = 0): Window | null => {
  return resolveWhen(unwrap(readWhen(text)), seasonOf(later));
};

rows('a when and its days', [
  { case: 'a span', given: '1 October to 15 November', expect: { from: '10-01', to: '11-15' }, from: 'calendar' },
  { case: 'one day', given: '1 October', expect: { from: '10-01', to: '10-01' }, from: 'calendar' },
  { case: 'over New Year', given: '20 December to 6 January', expect: { from: '12-20', to: '01-06' }, from: 'calendar' },
  { case: 'a part of the year', given: 'in main flow', expect: { from: '05-20', to: '07-05' }, from: 'the season above' },
  { case: 'winter, over New Year', given: 'in winter rest', expect: { from: '11-16', to: '02-28' }, from: 'the season above' },
  { case: 'before an anchor', given: '6 weeks before main flow to 2 weeks before main flow', expect: { from: '04-08', to: '05-06' }, from: '20 May less 42 and 14 days' },
  { case: 'from an anchor', given: 'main flow to 2 weeks after main flow', expect: { from: '05-20', to: '06-03' }, from: '20 May and 14 days' },
  { case: 'days from an anchor', given: '1 day before build-up to 1 day after build-up', expect: { from: '02-28', to: '03-02' }, from: 'a year of 365 days' },
  { case: 'an anchor and a day', given: '1 week before swarming to 1 May', expect: { from: '04-14', to: '05-01' }, from: '21 April less 7 days' },
  { case: 'a day of the year', given: '2 weeks before end of main flow to end of main flow', expect: { from: '06-21', to: '07-05' }, from: 'dearth begins the day after the flow' },
  { case: 'a first swarm', given: '10 days before first swarm to first swarm', expect: { from: '04-21', to: '05-01' }, from: 'swarming begins ten days before it' },
  { case: 'any time', given: 'any time', expect: null, from: 'bound to no date' },
  { case: 'the reader\'s own days', given: 'day 3 to day 5 after installing', expect: null, from: 'bound to no date' },
], (given, expect) => assert.deepEqual(windowOf(given), expect)); // prettier-ignore

rows('a when in Spanish means the same', [
  { case: 'a span', given: 'del 1 de octubre al 15 de noviembre', expect: '1 October to 15 November', from: 'calendar' },
  { case: 'without its article', given: '1 de octubre a 15 de noviembre', expect: '1 October to 15 November', from: 'calendar' },
  { case: 'one month said once', given: 'del 1 al 15 de octubre', expect: '1 October to 15 October', from: 'calendar' },
  { case: 'one day', given: '1 de octubre', expect: '1 October', from: 'calendar' },
  { case: 'a part of the year', given: 'en la enjambrazón', expect: 'in swarming', from: 'glossary-es' },
  { case: 'a part without its accent', given: 'en la preparacion de otoño', expect: 'in fall preparation', from: 'glossary-es' },
  { case: 'before an anchor', given: 'de 6 semanas antes del flujo principal al flujo principal', expect: '6 weeks before main flow to main flow', from: 'glossary-es' },
  { case: 'two days of the year', given: 'desde la última helada hasta una semana después del fin de la cría', expect: 'last freeze to 1 week after end of brood', from: 'glossary-es' },
  { case: 'any time', given: 'en cualquier momento', expect: 'any time', from: 'glossary-es' },
  { case: 'own days', given: 'del día 3 al día 5 después de instalar', expect: 'day 3 to day 5 after installing', from: 'glossary-es' },
  { case: 'an own day', given: 'día 4 después de pasar a la colmena', expect: 'day 4 after hiving', from: 'glossary-es' },
], (given, expect) => assert.deepEqual(readWhen(given), ok(unwrap(readWhen(expect))))); // prettier-ignore

test('every part and day of the year has a Spanish name of its own, which a when may use', () => {
  for (const anchor of anchors) assert.ok(readWhen(`de 1 día antes del ${spanishName(anchor)} al ${spanishName(anchor)}`).ok, anchor);
  assert.equal(new Set(anchors.map(spanishName)).size, anchors.length);
  assert.deepEqual(readWhen('en enero'), err({ found: '"en enero"', write: SPANISH_FORMS }));
});

rows('own days', [
  { case: 'two days', given: 'day 3 to day 5 after installing', expect: { kind: 'own-days', from: 3, to: 5, event: 'installing' }, from: 'the form' },
  { case: 'one day', given: 'day 4 after hiving', expect: { kind: 'own-days', from: 4, to: 4, event: 'hiving' }, from: 'the form' },
  { case: 'the day itself', given: 'day 0 after caging', expect: { kind: 'own-days', from: 0, to: 0, event: 'caging' }, from: 'the form' },
], (given, expect) => assert.deepEqual(readWhen(given), ok(expect))); // prettier-ignore

const FORMS =
  '"1 October to 15 November", "in swarming", "2 weeks before main flow to main flow", "day 3 to day 5 after installing" or "any time"';
const PHASES = 'winter rest, build-up, swarming, main flow, dearth, fall preparation';
const DAYS =
  'first pollen, first drone, last freeze, first swarm, end of main flow, fall flow, first freeze, last syrup, cluster, end of brood';

rows('a when that is refused, and what to write', [
  { case: 'months first', given: 'Oct 1 to Nov 15', expect: '"1 October to 15 November"', from: 'means one thing' },
  { case: 'a dash', given: 'October 1st – November 15th', expect: '"1 October to 15 November"', from: 'means one thing' },
  { case: 'one month said once', given: '1 to 15 October', expect: '"1 October to 15 October"', from: 'means one thing' },
  { case: 'between', given: 'between May 1 and June 3', expect: '"1 May to 3 June"', from: 'means one thing' },
  { case: 'a month', given: 'in May', expect: '"1 May to 31 May"', from: 'means one thing' },
  { case: 'two months', given: 'May to June', expect: '"1 May to 30 June"', from: 'means one thing' },
  { case: 'a nought', given: '01 October to 15 November', expect: '"1 October to 15 November"', from: 'means one thing' },
  { case: 'two spaces', given: '1 October  to 15 November', expect: '"1 October to 15 November"', from: 'means one thing' },
  { case: 'weeks in words', given: 'two weeks before the main flow to main flow', expect: '"2 weeks before main flow to main flow"', from: 'means one thing' },
  { case: 'one weeks', given: '1 weeks before main flow to main flow', expect: '"1 week before main flow to main flow"', from: 'means one thing' },
  { case: 'one end', given: '2 weeks before main flow', expect: '"2 weeks before main flow to main flow"', from: 'means one thing' },
  { case: 'a part without in', given: 'swarming', expect: '"in swarming"', from: 'means one thing' },
  { case: 'a capital', given: 'In swarming', expect: '"in swarming"', from: 'means one thing' },
  { case: 'a slip', given: 'in swarmin', expect: '"in swarming"', from: 'one letter' },
  { case: 'hyphens', given: 'in main-flow', expect: '"in main flow"', from: 'means one thing' },
  { case: 'days with a hyphen', given: 'days 3-5 after installing', expect: '"day 3 to day 5 after installing"', from: 'means one thing' },
  { case: 'always', given: 'always', expect: '"any time"', from: 'means one thing' },
  { case: 'no such day', given: '1 October to 31 November', expect: 'a day from 1 to 30 November', from: 'calendar' },
  { case: 'the leap day', given: '29 February to 3 March', expect: '28 February or 1 March', from: 'calendar' },
  { case: 'a season', given: 'early spring', expect: `the days, such as "1 April to 15 May", or a part of the hive's year, such as "in build-up": ${PHASES}`, from: 'not guessed' },
  { case: 'numbers', given: '10/1 to 11/15', expect: 'days in words, such as "1 October to 15 November"', from: 'two readings' },
  { case: 'month days', given: '10-01 to 11-15', expect: 'days in words, such as "1 October to 15 November"', from: 'not a form' },
  { case: 'backwards', given: 'day 5 to day 3 after installing', expect: 'the earlier day first', from: 'order' },
  { case: 'an event of nobody', given: 'day 3 after hatching', expect: 'a day after one of: installing, caging, treating, hiving, splitting, requeening; such as "day 3 to day 5 after installing"', from: 'the form' },
  { case: 'another word for a day', given: 'two weeks before the first frost to the first frost', expect: '"2 weeks before first freeze to first freeze"', from: 'means one thing' },
  { case: 'an end', given: 'main flow to 1 week after the end of the main flow', expect: '"main flow to 1 week after end of main flow"', from: 'means one thing' },
  { case: 'in a day', given: 'in first freeze', expect: `"in" and one of: ${PHASES}`, from: 'a day is no part of the year' },
  { case: 'too far', given: '40 weeks before main flow to main flow', expect: `1 to 26 weeks, or days, before or after one of: ${PHASES}, ${DAYS}; the earlier end first`, from: 'half a year' },
  { case: 'nothing', given: '', expect: FORMS, from: 'the form' },
], (given, expect) => assert.equal((readWhen(given) as Refused<Correction>).reason.write, expect)); // prettier-ignore

test('another district moves the parts of the year, and what hangs on them, not days that are written', () => {
  assert.deepEqual(windowOf('in main flow', 9), { from: '05-29', to: '07-14' });
  assert.deepEqual(windowOf('2 weeks before main flow to main flow', 9), { from: '05-15', to: '05-29' });
  assert.deepEqual(windowOf('1 October to 15 November', 9), { from: '10-01', to: '11-15' });
});

test('the parts of the year fill it once, and moving them keeps their lengths', () => {
  const lengths = (later: number) => phases.map((phase) => daysInWindow(seasonOf(later).phases[phase]));
  assert.equal(
    lengths(0).reduce((sum, days) => sum + days, 0),
    365,
  );
  assert.deepEqual(lengths(37), lengths(0));
});

test('every name that a when is counted from is read, and means itself', () => {
  assert.ok(anchors.length >= 16);
  for (const anchor of anchors)
    assert.deepEqual(
      readWhen(`1 day before ${anchorName(anchor)} to ${anchorName(anchor)}`),
      ok({ kind: 'span', from: { kind: 'anchor', anchor, offsetDays: -1 }, to: { kind: 'anchor', anchor, offsetDays: 0 } }),
    );
  assert.equal(new Set(anchors.map(anchorName)).size, anchors.length);
  assert.deepEqual(
    anchorIds.filter((id) => !anchors.includes(id)),
    ['main-flow-start'],
  );
});

test('an anchor that the season lacks is our mistake', () => {
  const when = unwrap(readWhen('main flow to 2 weeks after main flow'));
  assert.throws(() => resolveWhen(when, { ...season, anchors: {} }), RangeError);
});

test('any text at all is read or refused with something to write', () => {
  const word = fc.constantFrom(
    '1',
    '31',
    'to',
    'in',
    'day',
    'weeks',
    'before',
    'after',
    'main flow',
    'October',
    'Feb',
    'spring',
    'installing',
    '-',
    'any time',
    '\n',
    '😀',
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.array(word, { maxLength: 9 }).map((words) => words.join(' ')),
      ),
      (text) => {
        const read = readWhen(text);
        if (!read.ok) assert.ok(read.reason.write.length > 5 && read.reason.found.length > 1);
        else if (!anchorsIn(read.value).some((anchor) => !(anchor in season.anchors))) resolveWhen(read.value, season);
        const form = read.ok ? null : /^"(.*)"$/.exec(read.reason.write)?.[1];
        if (form && !form.includes('"')) assert.ok(readWhen(form).ok, `${text} -> ${form}`);
      },
    ),
    { numRuns: 2000 },
  );
});
