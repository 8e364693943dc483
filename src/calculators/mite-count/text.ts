/* Sentences of the mite count. Numbers are rounded only here, and never across the level. */
import { phaseName } from '../../../shared/season/phases.ts';
import type { MiteCount } from '../../../shared/mites/mite-count.ts';
import type { MiteSample } from '../../../shared/mites/rate.ts';
import type { Verdict } from '../../../shared/mites/verdict.ts';
import { formatAgainst, formatNumber, plainDecimal, toDataValue } from '../../../shared/numbers/show-number.ts';
import type { Counted, Judgement, Level, Method, MiteFigures } from './model.ts';
import type { NextKind } from './next.ts';

export const verdictNames: Readonly<Record<Verdict, string>> = { below: 'Below', unsure: 'Unsure', act: 'Act' };
/** The level of gravity of each verdict. */
export const verdictSteps: Readonly<Record<Verdict, string>> = { below: 'settled', unsure: 'watch', act: 'act' };

/** The levels that a rate is compared with. Rounding never carries it across one of them. */
type Lines = Pick<Judgement, 'level' | 'atOnce'>;

export function rateWords(per100: number, { level, atOnce }: Lines): string {
  if (!level) return formatNumber(per100, { places: 1 });
  const nearer = atOnce && Math.abs(per100 - atOnce.levelPer100) < Math.abs(per100 - level.levelPer100) ? atOnce : level;
  return formatAgainst(per100, nearer.levelPer100, 1);
}

export function rangeWords(low: number, high: number, lines: Lines): string {
  return `${rateWords(low, lines)} to ${rateWords(high, lines)}`;
}

export const verdictWords = (verdict: Verdict | undefined, atOnce: boolean): string =>
  verdict === undefined ? '' : atOnce ? 'Act at once' : verdictNames[verdict];

export function headline(judgement: Judgement): string {
  const { count, atOnce } = judgement;
  const [first] = count.colonies;
  const rate = (per100: number) => `${rateWords(per100, judgement)} mites per hundred bees`;
  if (!count.verdict) return `${rate((count.apiary ?? first!).per100)}.`;
  const hurry = count.coloniesAtOnce.length > 0;
  if (!count.apiary)
    return `${rate(first!.per100)}: ${verdictWords(count.verdict, hurry).toLowerCase()}${count.verdict === 'below' ? ' the level' : ''}.`;
  if (hurry) return `Act at once: ${list(count.coloniesAtOnce)} at or over ${toDataValue(atOnce!.levelPer100)} mites per hundred bees.`;
  const named = count.colonies.filter(({ verdict }) => verdict === count.verdict).map(({ label }) => label);
  if (count.verdict === 'act') return `Act: ${list(named)} at or over the level.`;
  if (count.verdict === 'below') return 'Every colony is below the level, and so are all together.';
  return named.length > 0
    ? `Unsure: ${list(named).replace(/ (?:is|are)$/, '')} may be over the level.`
    : 'Unsure: all together may be over the level.';
}

function list(names: readonly string[]): string {
  const one = names.length === 1;
  const shown =
    names.length > 6
      ? `${names.length} colonies`
      : `${one ? 'colony' : 'colonies'} ${names.slice(0, -1).join(', ')}${one ? '' : ' and '}${names.at(-1)}`;
  return `${shown} ${one ? 'is' : 'are'}`;
}

/** The reason for a missing level. */
export function noLevel({ levels }: MiteFigures, phase: Counted['phase']): string {
  return levels.length === 0 || !phase ? 'No level here.' : `No level for this part of the year, ${phaseName(phase)}.`;
}

export function verdictReason({ count, level, atOnce }: Judgement): string {
  if (!level) return 'Without a level there is no verdict.';
  if (count.coloniesAtOnce.length > 0)
    return `The count is at or over ${toDataValue(atOnce!.levelPer100)} per hundred bees, where no time is left to lose.`;
  if (count.verdict === 'act') return 'The count is at or over the level.';
  if (count.verdict === 'below') return 'The whole likely range is under the level.';
  const onlyCorrected = [...count.colonies, ...(count.apiary ? [count.apiary] : [])].every(
    (one) => one.verdict !== 'unsure' || one.onlyCorrected,
  );
  if (count.colonies.every(({ mites }) => mites === 0)) return 'No mite was found, but so few bees cannot rule the level out.';
  return onlyCorrected
    ? 'As counted it is under the level. Corrected for missed mites, it is not.'
    : 'The count is under the level, but its likely range reaches the level.';
}

/** What a reader must know about the level itself. */
export function levelRemarks(level: Level | undefined, { method, phase }: Counted): string {
  if (!level) return '';
  const part = phase ? '' : 'No part of the year was chosen, so this is the strictest of the levels. ';
  if (level.method === method) return part;
  return `${part}${level.method ? `It was set with another method (${level.method}).` : 'It does not say that it was set with this method.'}`;
}

export function settleWords(settle: MiteCount['toSettle'], counted: readonly MiteSample[], { mostBees }: MiteFigures): string {
  if (!settle) return 'Not needed.';
  const where = counted.length > 1 ? ` from colony ${settle.label}` : '';
  if (settle.bees === 'too-many')
    return `It would take over ${formatNumber(mostBees, { places: 0 })} bees${where}: more than a colony should give.`;
  return `About ${formatNumber(settle.bees, { places: 0 })} bees${where} in all, at this rate, would settle it.`;
}

/** The advice that follows from each verdict. */
export function nextStep({ count, level }: Judgement, { phase }: Counted): string {
  if (!level) return 'Write the count down. The club has no level here, so ask before you treat.';
  if (count.coloniesAtOnce.length > 0)
    return 'Treat within days, as your label, the weather and the honey boxes allow. Count every other hive in the yard.';
  if (count.verdict === 'act')
    return 'Choose a treatment now that your label, the weather and the honey boxes allow. Count the other hives too.';
  if (count.verdict === 'unsure') {
    const settles = count.toSettle?.bees;
    if (typeof settles === 'number')
      return 'Take a second sample from the same colony today and add the two together, or count again in two weeks.';
    return settles === 'too-many'
      ? 'Treat it as “act”, or count again in two weeks: by then mites that grow will show.'
      : 'Count again in two weeks.';
  }
  const late = phase === 'dearth' || phase === 'fall-preparation' ? ' At this time of year mites also come in from other hives.' : '';
  return `This count does not call for a treatment.${late}`;
}

export function nextKind({ count, level }: Judgement, { phase }: Counted): NextKind {
  if (!level) return 'no-level';
  if (count.verdict !== 'act') return count.verdict!;
  if (phase === 'winter-rest') return 'act-winter';
  return phase === 'build-up' || phase === 'swarming' || phase === 'main-flow' ? 'act-early' : 'act';
}

/** Days until the next count. Undefined where the label of a treatment decides. */
export function daysToNextCount({ count, level }: Judgement, { growth }: MiteFigures): number | undefined {
  // Within a month, as the checklist of a count says.
  if (!level) return 28;
  if (count.verdict === 'act') return undefined;
  if (count.verdict === 'unsure') return 14;
  const soonest = growth && 'soonestWeeks' in count.weeks ? count.weeks.soonestWeeks : 4;
  return 7 * Math.min(4, Math.max(2, soonest));
}

const methodNames: Readonly<Record<Method, string>> = { wash: 'alcohol wash', roll: 'sugar roll', gas: 'carbon dioxide' };

/** What was asked, in one line. */
export function askedWords({ samples, method, phase, recovery }: Counted): string {
  const [first] = samples;
  const counted =
    samples.length > 1
      ? `${samples.length} colonies`
      : `${first!.label ? `${first!.label}: ` : ''}${formatNumber(first!.mites, { places: 0 })} ${first!.mites === 1 ? 'mite' : 'mites'} in ${formatNumber(first!.bees, { places: 0 })} bees`;
  const adjusted = recovery === 100 ? '' : `, adjusted for ${plainDecimal(recovery)} % found`;
  return `${counted}, ${methodNames[method]}, ${phase ? phaseName(phase) : 'part of the year not chosen'}${adjusted}`;
}

export function weeksReason(state: MiteCount['weeks']['state']): string {
  return {
    'already-there': 'Already there.',
    'no-brood': 'Without brood mites do not grow, so there is no date.',
    'no-level': 'Without a level there is no date.',
    'no-mites': 'No mites were found, so no latest can be said.',
    weeks: '',
  }[state];
}

/** `reached`: the likely range of a colony already includes the level. */
export function soonestWords(weeks: number, reached: boolean): string {
  if (weeks > 0) return `In ${inWeeks(weeks)} at the soonest.`;
  return reached ? 'It may be there now.' : 'Within a week at the soonest.';
}

export function latestWords(weeks: number): string {
  return weeks === 0 ? 'Within a week at the latest.' : `In ${inWeeks(weeks)} at the latest.`;
}

const inWeeks = (weeks: number): string => `${formatNumber(weeks, { places: 0 })} ${weeks === 1 ? 'week' : 'weeks'}`;

/** The calculation with its numbers. */
export function sumWords(judgement: Judgement, recovery: number): string {
  const { colonies, apiary } = judgement.count;
  const whole = (number: number) => formatNumber(number, { places: 0 });
  const [first] = colonies;
  if (!apiary) {
    const corrected =
      first!.per100Corrected === undefined
        ? ''
        : ` If only ${plainDecimal(recovery)} % of the mites were found: ${rateWords(first!.per100, judgement)} ÷ ${toDataValue(recovery / 100)} = ${rateWords(first!.per100Corrected, judgement)}.`;
    return `100 × ${whole(first!.mites)} ÷ ${whole(first!.bees)} = ${rateWords(first!.per100, judgement)}. A count of ${whole(first!.mites)} can stand for a true rate from ${rangeWords(first!.lowPer100, first!.highPer100, judgement)}.${corrected}`;
  }
  const all = (of: 'mites' | 'bees') =>
    colonies.length > 6 ? whole(colonies.reduce((sum, one) => sum + one[of], 0)) : `(${colonies.map((one) => whole(one[of])).join(' + ')})`;
  return `All together: 100 × ${all('mites')} ÷ ${all('bees')} = ${rateWords(apiary.per100, judgement)}. Each colony in the same way: 100 × mites ÷ bees.`;
}

export function apiaryRemarks(apiary: MiteCount['apiary'], colonies: number, fewest: number | null): string {
  if (!apiary) return '';
  const range = {
    'log-limits': '',
    'all-zero': 'The range of no mites at all is the least careful one. ',
    'too-few-colonies': 'A range for all together needs four colonies or more. ',
  }[apiary.range];
  return range + (fewest !== null && colonies < fewest ? `${colonies} colonies show an apiary poorly: ${fewest} or more are better.` : '');
}
