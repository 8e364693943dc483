/* Words of the package calendar. */
import type { Language } from '../../../shared/country/language.ts';
import type { Day } from '../../../shared/days/day.ts';
import { formatDay, formatDayRange, formatDayWithWeekday } from '../../../shared/days/show-day.ts';
import type { DayPair, ShakenReason } from '../../../shared/packages/calendar.ts';
import type { StartReason } from '../../../shared/packages/start-bees.ts';
import { converted, type System } from '../form/measures.ts';
import { packageWeight, perWeight, shownIn } from '../form/units.ts';
import { whole } from './bees.ts';
import type { Package, PackageFigures, Plan } from './model.ts';

export const fields = {
  installed: 'Day the package goes in',
  such: (day: string): string => `Such as ${day}`,
  shaken: 'Day the bees were shaken, if you know it',
  leftEmpty: (days: number): string => `Left empty, it is taken as ${days} days before.`,
  weight: 'Weight',
  beesPer: { us: 'Bees in a pound', metric: 'Bees in a kilogram' },
  queen: 'The queen',
  candy: 'Behind candy',
  released: 'Let out at install',
  comb: 'Put on',
  drawn: 'Drawn comb',
  foundation: 'Foundation',
};

/** What to write or to choose, as in "Write the day the package goes in." */
export const what = {
  installed: 'the day the package goes in',
  shaken: 'the day the bees were shaken',
  pounds: { us: 'the weight on the label, such as 3', metric: 'the weight on the label, such as 1.36' },
  queen: 'how the queen gets out',
  comb: 'what the bees are put on',
  beesPer: { us: 'how many bees a pound holds, such as 3500', metric: 'how many bees a kilogram holds, such as 7700' },
};

export const faultWords = (reason: ShakenReason | StartReason, units: System): string =>
  ({
    'shaken-after-install': 'The bees cannot have been shaken after they went in.',
    'shaken-too-long-ago': 'More than 21 days lie between the shaking and the install. Check both days.',
    'no-weight': 'The weight must be more than 0.',
    'no-bees-per-pound': `The bees in a ${units === 'us' ? 'pound' : 'kilogram'} must be more than 0.`,
    'too-much':
      units === 'us'
        ? 'A package weighs at most 20 lb, with at most 10,000 bees a pound.'
        : 'A package weighs at most 9 kg, with at most 22,000 bees a kilogram.',
  })[reason];

export const noFigure = 'No figure for this club.';
export const notNeeded = 'Not needed: she was let out at the install.';
export const notInEightWeeks = 'Not within eight weeks.';

export function headline(given: Package, plan: Plan, language: Language): string {
  const young = plan.firstBees ? ` The first young bees come ${rangeWords(plan.firstBees, language)}.` : '';
  return `A package put in on ${formatDay(given.installed, language)}.${young}`;
}

/** What was asked, in one line. */
export function questionWords(given: Package, { units }: PackageFigures, language: Language): string {
  const weight = `${shownIn(packageWeight, given.pounds, units)} ${units === 'us' ? 'lb' : 'kg'}`;
  return `A package of ${weight}, in on ${formatDay(given.installed, language)}, ${given.queen === 'candy' ? 'queen behind candy' : 'queen let out'}, on ${given.comb === 'drawn' ? 'drawn comb' : 'foundation'}`;
}

const rangeWords = ({ earliest, latest }: DayPair, language: Language): string =>
  earliest === latest ? `on ${formatDay(earliest, language)}` : `from ${formatDayRange(earliest, latest, language)}`;

export function noEggsWords({ lookAgain, requeen }: Plan, language: Language): string {
  const by = ({ earliest, latest }: DayPair): string => `by ${formatDayRange(earliest, latest, language)}`;
  return [
    ...(lookAgain ? [`No eggs ${by(lookAgain)}: look again and ask.`] : []),
    ...(requeen ? [`Still none ${by(requeen)}: give a queen, or join the bees to others.`] : []),
  ].join(' ');
}

export function noCurveWords({ noCurve }: Plan, { trialBees }: PackageFigures): string {
  if (noCurve !== 'beyond-trials' || !trialBees) return noFigure;
  return `The trials had ${whole(trialBees.least)} to ${whole(trialBees.most)} bees, so nothing is said for this number.`;
}

/** The calculation with its numbers. */
export function sumWords(given: Package, plan: Plan, { units }: PackageFigures, language: Language): string {
  const weight = shownIn(packageWeight, given.pounds, units);
  const each = converted(perWeight.boxes[units].fromFixed(given['bees-per-pound']));
  const [short, long] = units === 'us' ? ['lb', 'pound'] : ['kg', 'kilogram'];
  const begun = `${weight} ${short} × ${each} bees a ${long} = ${whole(plan.beesAtStart)} bees when they were shaken.`;
  if (!plan.firstEggs || !plan.release) return begun;
  const out = given.queen === 'candy' ? `The queen is out ${rangeWords(plan.release, language)}.` : 'The queen was let out at the install.';
  return `${begun} ${out} First eggs ${rangeWords(plan.firstEggs, language)}. Sealed 8 to 9 days after the egg; the bee comes out on day 21.`;
}

/** `event` is one of `events`. */
export const next = (event: string, earliest: Day, latest: Day, today: Day, language: Language): string =>
  `Next: ${event.toLowerCase()}, ${earliest > today ? `from ${formatDayWithWeekday(earliest, language)}` : `by ${formatDayWithWeekday(latest, language)}`}.`;
export const nextCount = (day: string): string => `Next mite count: by ${day}.`;
/** After the earliest day, in the next line of the table. */
export const toDay = (day: string): string => `to ${day}`;
export const earliestOnly = (day: string): string => `${day} at the earliest`;

export const beesBetween = (least: string, most: string): string => `${least} to ${most}`;
/** After the least number. */
export const toMost = (most: string): string => `to ${most}`;
export const fewest = (least: string, most: string, start: string): string =>
  `${least} to ${most} bees at the fewest, of ${start} that were shaken.`;

export const atStart = (bees: string): string => `start: ${bees}`;
export const chartLabel =
  'Bees in the hive, day by day from the install, as a band from a poor run to a good one. The dashed line is the number at the start. The table beneath has it week by week.';

export const events = {
  'queen-look': { what: 'Look whether the queen is out', why: 'A short look. Take the cage out if it is empty.' },
  'egg-look': { what: 'Look for eggs', why: 'Eggs say that she lays. Counted from her release.' },
  capped: { what: 'First cells sealed', why: 'Flat caps over worker brood: all is well.' },
  'first-bees': { what: 'First young bees', why: 'Until then there are fewer bees every day.' },
  'low-point': { what: 'Fewest bees', why: 'Expected. Keep the entrance small and feed on.' },
  'back-to-start': { what: 'As many as at the start', why: 'From here it needs room.' },
  'first-mite-count': { what: 'First mite count', why: 'Packages can bring mites with them.' },
};
export type EventName = keyof typeof events;

export const stepByStep = 'The example step by step, and a table';
export const dates = 'The dates';
export const table = { what: 'What', when: 'When', why: 'Why', day: 'Day', date: 'Date', bees: 'Bees' };
export const weekByWeek = 'Bees in the hive, week by week';
export const beesShaken = 'Bees when shaken';
export const beesFewest = 'Bees at the fewest';
export const calendarFile = 'Calendar file';
/** The name of the calendar file, and of an event in it. */
export const calendarName = (installed: string): string => `Package of ${installed}`;
export const eventName = (event: string, installed: string): string => `${event} (package of ${installed})`;

export const theWork = 'The work itself: {lists}.';
export const restOn = 'What the dates rest on';
export const basis = [
  'Bees free a queen through candy in {release}.',
  'First eggs come {eggs} after release on drawn comb. Foundation adds {foundation}.',
  'A worker cell is sealed on day {sealed}, and she comes out on day {emerged}.',
  'Without young bees, {survival} were alive 22 days after they were shaken.',
  'Bees in a pound: {pound} here. Others print {others} and {more}.',
  'The laying in the curve is fitted to those trials: {laying} at most. The comb is from memory: {cells} cells built.',
];
export const limits = [
  'It is the band of a model, not a forecast. It knows no weather, hunger, robbing or sickness.',
  'No study gives the day a package is back to its start. That window is the band’s alone.',
  'A queen that fails changes every date after her.',
  'The trials were in Louisiana in April. A cold spring is slower.',
  'Packages came with {mites} mites when sampled.',
];
