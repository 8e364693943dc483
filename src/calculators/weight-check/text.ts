/* Sentences of the weight check. Numbers are rounded only here, and never across the limit. */
import { formatAgainst, formatNumber } from '../../../shared/numbers/show-number.ts';
import type { WeightReason, WeightTest } from '../../../shared/packages/weight-check.ts';
import { three, type System } from '../form/measures.ts';
import { shownIn, smallWeight } from '../form/units.ts';
import { farOff, type HeldRule, type Judgement, type RuleName, type Weighed } from './model.ts';

export const ruleTitles: Readonly<Record<RuleName, string>> = { eu: 'EU and UK', ca: 'Canada', us: 'US' };
export const verdictNames: Readonly<Record<WeightTest, string>> = { passes: 'Passes', fails: 'Fails', 'too-few': 'Too few weights' };
/** The level of gravity of each verdict. */
export const verdictSteps: Readonly<Record<WeightTest, string>> = { passes: 'settled', fails: 'act', 'too-few': 'watch' };

export const noFigure = 'No figure for this club.';
const byRule: Readonly<Record<RuleName, string>> = { eu: 'the EU and UK rule', ca: 'the Canadian rule', us: 'the US rule' };
const fromMemory = ', from memory, not opened';
const whole = (value: number): string => formatNumber(value, { places: 0 });
const inOunces = smallWeight.boxes.us.fromFixed;
const ounces = (grams: number): string => `${three(inOunces(grams))} oz`;
const tenths = (grams: number): string => formatNumber(grams, { places: 1 }).replace('.0', '');

/** A small weight, the form's own unit first. */
export function weightWords(grams: number, units: System): string {
  const metric = `${tenths(grams)} g`;
  return units === 'us' ? `${ounces(grams)} (${metric})` : `${metric} (${ounces(grams)})`;
}

/** A label or a weight as a box shows it, with its unit. */
export function plain(grams: number, units: System): string {
  return `${shownIn(smallWeight, grams, units)} ${units === 'us' ? 'oz' : 'g'}`;
}

export function headline({ rule }: Weighed, { check, held }: Judgement, units: System): string {
  const mean = `the mean is ${meanWords({ check }, units).replace(/ \(.*\)/, '')}`;
  if (!held) return `Not judged: no figures for ${byRule[rule]}. ${capital(mean)}.`;
  if (check.verdict === 'too-few') return `Too few weights for ${byRule[rule]}. So far ${mean}.`;
  return `${verdictNames[check.verdict]} by ${byRule[rule]}: ${mean}.`;
}

/** What was asked, in one line. */
export function questionWords({ rule, lot, 'label-g': labelG, 'weights-g': weights }: Weighed, units: System): string {
  return `${whole(weights.length)} of ${whole(lot)} packages labelled ${plain(labelG, units)}, by ${byRule[rule]}`;
}

/** The next step in a sentence. */
export function nextStep(verdict: WeightTest | 'not-judged'): string {
  return {
    passes: 'Keep the list of weights with the invoice.',
    fails: 'Send the supplier the weights and the rule on the same day, and ask for an answer in writing.',
    'too-few': 'Weigh the packages that are missing before you say anything about the delivery.',
    'not-judged': 'Choose a rule that this page has figures for, or ask which rule holds where you are.',
  }[verdict];
}

/** The distance of the mean from the label. Next to its limit, rounding never carries it across. */
export function meanWords({ check: { meanErrorG, limitG } }: Pick<Judgement, 'check'>, units: System): string {
  const away = Math.abs(meanErrorG);
  if (away < 1e-9) return 'on the label';
  const side = `${meanErrorG < 0 ? 'under' : 'over'} the label`;
  const grams = `${(meanErrorG < 0 && limitG ? formatAgainst(away, limitG, 1) : tenths(away)).replace(/\.0$/, '')} g`;
  if (units === 'metric') return `${grams} ${side} (${ounces(away)})`;
  return `${meanErrorG < 0 && limitG ? formatAgainst(inOunces(away), inOunces(limitG), 3) : three(inOunces(away))} oz ${side} (${grams})`;
}

export function sampleWords({ lot }: Weighed, { check: { sampleNeeded, shortSampleNeeded }, held }: Judgement): string {
  const count =
    shortSampleNeeded === undefined || shortSampleNeeded === sampleNeeded
      ? ''
      : `, and ${whole(shortSampleNeeded)} for the count of short ones`;
  return `${whole(sampleNeeded)} of ${whole(lot)}${count}${held!.sampleFromMemory ? fromMemory : ''}`;
}

export function limitWords({ check: { limitG, spreadG } }: Judgement, { 'weights-g': weights }: Weighed, units: System): string {
  if (limitG === undefined) return weights.length < 2 ? 'One weight gives none.' : noFigure;
  if (limitG > 0) return weightWords(limitG, units);
  return `${plain(0, units)}: ${spreadG === 0 ? 'all weigh the same' : 'all are weighed, so chance has no part'}`;
}

export function shortWords(
  count: number | undefined,
  times: 1 | 2,
  { check: { toleranceG }, toleranceFromMemory }: Judgement,
  units: System,
): string {
  if (count === undefined || toleranceG === undefined) return 'No tolerance held for this label.';
  return `${whole(count)}, by more than ${weightWords(times * toleranceG, units)}${toleranceFromMemory ? fromMemory : ''}`;
}

export const notCounted = 'This rule does not count them.';

/** The deciding test. */
export function verdictReason(
  { check: { tests, verdict, sampleNeeded, shortSampleNeeded }, held }: Judgement,
  { 'weights-g': weights }: Weighed,
): string {
  if (!held) return 'Without its figures there is no verdict.';
  if (verdict === 'too-few')
    return `It asks for ${whole(Math.max(sampleNeeded, shortSampleNeeded ?? 0))} weights; here are ${whole(weights.length)}.`;
  if (verdict === 'passes')
    return `The mean is near enough to the label.${tests.short || tests.shortTwice ? ' No more are short than the rule allows.' : ''}`;
  return [
    ...(tests.mean === 'fails' ? ['The mean is further under the label than chance allows.'] : []),
    ...(tests.short === 'fails' ? ['Too many are short by more than the tolerance.'] : []),
    ...(tests.shortTwice === 'fails' ? ['Too many are short by more than twice the tolerance.'] : []),
  ].join(' ');
}

export function ruleWords({ rule }: Weighed, held: HeldRule | null): string {
  return held ? `${ruleTitles[rule]}. ${held.from}.` : `${ruleTitles[rule]}. ${noFigure}`;
}

/** Weights that may come from another column of the paste. */
export function farOffWords(weighed: Weighed): string {
  const far = farOff(weighed);
  if (far.length === 0) return '';
  const named =
    far.length > 6
      ? `${far.length} weights are`
      : far.length === 1
        ? `Weight ${far[0]} is`
        : `Weights ${far.slice(0, -1).join(', ')} and ${far.at(-1)} are`;
  return `Look again: ${named} under half the label or over twice it. Was another column pasted along?`;
}

/** The calculation with its numbers. */
export function sumWords(
  { 'label-g': labelG, 'weights-g': weights }: Weighed,
  { check: { meanErrorG, spreadG, limitG }, held }: Judgement,
  units: System,
): string {
  const unit = units === 'us' ? 'oz' : 'g';
  const places = (value: number, decimals: number): string =>
    formatNumber(value, { places: decimals }).replace(/(?:(\.\d*?[1-9])|\.)0+$/, '$1');
  const trimmed = (grams: number): string => places(smallWeight.boxes[units].fromFixed(grams), units === 'us' ? 4 : 3);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = `${trimmed(total)} ${unit} ÷ ${whole(weights.length)} − ${trimmed(labelG)} ${unit} = ${trimmed(meanErrorG).replace('-', '−')} ${unit}.`;
  if (!held || spreadG === undefined || limitG === undefined) return mean;
  const reached = `Mean and room together: ${trimmed(labelG + meanErrorG)} + ${trimmed(limitG)} = ${trimmed(labelG + meanErrorG + limitG)} ${unit}, against ${trimmed(labelG)} ${unit}.`;
  if (limitG === 0) return `${mean} ${reached}`;
  return `${mean} Room for chance: ${places(limitG / spreadG, 3)} (t ÷ √${whole(weights.length)}) × ${trimmed(spreadG)} ${unit} = ${trimmed(limitG)} ${unit}. ${reached}`;
}

/** The box to correct, and what to write in it. */
export function faultWords(
  reason: WeightReason,
  row: number | undefined,
  { rule, lot, 'weights-g': weights }: Weighed,
  units: System,
): readonly [box: string, words: string] {
  const most = units === 'us' ? '0 oz and at most 3,500 oz' : '0 g and at most 100,000 g';
  switch (reason) {
    case 'no-label':
      return ['label-g', `The label must be more than ${most}.`];
    case 'no-lot':
    case 'lot-not-whole':
      return ['lot', 'Write how many packages the delivery had, 1 or more.'];
    case 'lot-not-in-rule':
      return ['lot', lot < 2 ? `A delivery of 1 cannot be judged by ${byRule[rule]}.` : `So many packages are beyond ${byRule[rule]}.`];
    case 'no-weights':
      return ['weights-g', 'Write the weights, a line each.'];
    case 'impossible-weight':
      return ['weights-g', `Weight ${row}: it must be more than ${most}.`];
    case 'more-weights-than-lot':
      return ['lot', `There are ${whole(weights.length)} weights, but only ${whole(lot)} packages.`];
  }
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
