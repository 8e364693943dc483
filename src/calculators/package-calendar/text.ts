/* Sentences and chart of the package calendar. */
import type { Language } from '../../../shared/country/language.ts';
import { formatDay, formatDayRange } from '../../../shared/days/show-day.ts';
import { formatNumber } from '../../../shared/numbers/show-number.ts';
import type { DayPair } from '../../../shared/packages/calendar.ts';
import type { PopulationCurve } from '../../../shared/packages/curve.ts';
import { band } from '../form/band.ts';
import type { Drawing } from '../form/drawing.ts';
import { converted } from '../form/measures.ts';
import { packageWeight, perWeight, shownIn } from '../form/units.ts';
import type { Package, PackageFigures, Plan } from './model.ts';

export const noFigure = 'No figure for this club.';

/** Rounds to the nearest hundred, because the band is not more precise. */
export const beesWords = (bees: number): string => formatNumber(Math.round(bees / 100) * 100, { places: 0 });
export const whole = (value: number): string => formatNumber(value, { places: 0 });

export function headline(given: Package, plan: Plan, language: Language): string {
  const young = plan.firstBees ? ` The first young bees come ${rangeWords(plan.firstBees, language)}.` : '';
  return `A package put in on ${formatDay(given.installed, language)}.${young}`;
}

/** What was asked, in one line. */
export function questionWords(given: Package, { units }: PackageFigures, language: Language): string {
  const weight = `${shownIn(packageWeight, given.pounds, units)} ${units === 'us' ? 'lb' : 'kg'}`;
  return `A package of ${weight}, in on ${formatDay(given.installed, language)}, ${given.queen === 'candy' ? 'queen behind candy' : 'queen let out'}, on ${given.comb === 'drawn' ? 'drawn comb' : 'foundation'}`;
}

export function rangeWords({ earliest, latest }: DayPair, language: Language): string {
  return earliest === latest ? `on ${formatDay(earliest, language)}` : `from ${formatDayRange(earliest, latest, language)}`;
}

export function noEggsWords({ lookAgain, requeen }: Plan, language: Language): string {
  return [
    ...(lookAgain ? [`No eggs ${rangeWords(lookAgain, language).replace(/^(on|from)/, 'by')}: look again and ask.`] : []),
    ...(requeen
      ? [`Still none ${rangeWords(requeen, language).replace(/^(on|from)/, 'by')}: give a queen, or join the bees to others.`]
      : []),
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

export function drawCurve({ days }: PopulationCurve, beesAtStart: number): Drawing {
  return band(
    days.map(({ beesLeast, beesMost }) => ({ least: beesLeast, most: beesMost })),
    { at: beesAtStart, words: `start: ${beesWords(beesAtStart)}` },
    whole,
    'Bees in the hive, day by day from the install, as a band from a poor run to a good one. The dashed line is the number at the start. The table beneath has it week by week.',
  );
}

type Marks = Record<'cage' | 'look' | 'seal' | 'worker' | 'survival' | 'mites', number | undefined>;
export type PackageEvent = { name: string; what: string; why: string; note: number | undefined; days: Partial<DayPair> | undefined };

/** The rows of the table of dates, each with the number of its source. */
export const packageEvents = (plan: Plan, { cage, look, seal, worker, survival, mites }: Marks): PackageEvent[] => [
  {
    name: 'queen-look',
    what: 'Look whether the queen is out',
    why: 'A short look. Take the cage out if it is empty.',
    note: cage,
    days: plan.queenLook,
  },
  { name: 'egg-look', what: 'Look for eggs', why: 'Eggs say that she lays. Counted from her release.', note: look, days: plan.eggLook },
  { name: 'capped', what: 'First cells sealed', why: 'Flat caps over worker brood: all is well.', note: seal, days: plan.capped },
  { name: 'first-bees', what: 'First young bees', why: 'Until then there are fewer bees every day.', note: worker, days: plan.firstBees },
  {
    name: 'low-point',
    what: 'Fewest bees',
    why: 'Expected. Keep the entrance small and feed on.',
    note: survival,
    days: plan.curve?.lowPoint,
  },
  {
    name: 'back-to-start',
    what: 'As many as at the start',
    why: 'From here it needs room.',
    note: undefined,
    days: plan.curve?.backToStart,
  },
  {
    name: 'first-mite-count',
    what: 'First mite count',
    why: 'Packages can bring mites with them.',
    note: mites,
    days: plan.firstMiteCount,
  },
];
