/* Words of the weight check. */
import type { WeightReason, WeightTest } from '../../../shared/packages/weight-check.ts';
import type { System } from '../form/measures.ts';
import { farOff, type HeldRule, type Judgement, type RuleName, type Weighed } from './model.ts';
import { meanAway, places, plain, trimmed, weightWords, whole } from './shown.ts';

export const fields = {
  rule: 'By which rule',
  canDisagree: 'They can disagree on the same weights. Choose the one for your country.',
  label: 'Net weight on the label',
  youCanType: 'You can type 3 lb.',
  lot: 'Packages in the delivery',
  allOfIt: 'All that came with it.',
  weights: 'Net weights',
  weightsHint: 'One line each, or a pasted list. Use a point for decimals; a comma separates two weights. [How to weigh](how)',
};
/** What to write or to choose, as in "Choose a rule." */
export const what = {
  rule: 'a rule',
  label: { us: 'the net weight on the label, such as 48 or 3 lb', metric: 'the net weight on the label, such as 1361' },
  lot: 'how many packages the delivery had',
  weights: 'the weights, a line each',
  oneWeight: { us: 'a weight in ounces', metric: 'a weight in grams' },
};
/** As in "Weight 3". */
export const weight = 'Weight';
export const weightsRead = (count: number): string => `${count} ${count === 1 ? 'weight' : 'weights'}`;

export const ruleTitles: Readonly<Record<RuleName, string>> = { eu: 'EU and UK', ca: 'Canada', us: 'US' };
export const verdictNames: Readonly<Record<WeightTest, string>> = { passes: 'Passes', fails: 'Fails', 'too-few': 'Too few weights' };
export const noVerdict = 'No verdict';

export const noFigure = 'No figure for this club.';
const byRule: Readonly<Record<RuleName, string>> = { eu: 'the EU and UK rule', ca: 'the Canadian rule', us: 'the US rule' };
const fromMemory = ', from memory, not opened';

export function headline({ rule }: Weighed, { check, held }: Judgement, units: System): string {
  const away = meanAway(check, units);
  const mean = `the mean is ${away ? `${away.first} ${away.isUnder ? 'under' : 'over'} the label` : 'on the label'}`;
  if (!held) return `Not judged: no figures for ${byRule[rule]}. ${mean.replace(/^t/, 'T')}.`;
  if (check.verdict === 'too-few') return `Too few weights for ${byRule[rule]}. So far ${mean}.`;
  return `${verdictNames[check.verdict]} by ${byRule[rule]}: ${mean}.`;
}

/** What was asked, in one line. */
export function questionWords({ rule, lot, 'label-g': labelG, 'weights-g': weights }: Weighed, units: System): string {
  return `${whole(weights.length)} of ${whole(lot)} packages labelled ${plain(labelG, units)}, by ${byRule[rule]}`;
}

/** The next step in a sentence. */
export const nextStep = (verdict: WeightTest | 'not-judged'): string =>
  ({
    passes: 'Keep the list of weights with the invoice.',
    fails: 'Send the supplier the weights and the rule on the same day, and ask for an answer in writing.',
    'too-few': 'Weigh the packages that are missing before you say anything about the delivery.',
    'not-judged': 'Choose a rule that this page has figures for, or ask which rule holds where you are.',
  })[verdict];
export const weighRest = 'Next: weigh the rest today, since the bees eat and die.';
export const nextDelivery = 'Next check: the next delivery, by the same rule and on the same scale.';

/** The distance of the mean from the label. Next to its limit, rounding never carries it across. */
export function meanWords({ check }: Pick<Judgement, 'check'>, units: System): string {
  const away = meanAway(check, units);
  return away ? `${away.first} ${away.isUnder ? 'under' : 'over'} the label (${away.other})` : 'on the label';
}

export function sampleWords({ lot }: Weighed, { check: { sampleNeeded, shortSampleNeeded }, held }: Judgement): string {
  const count =
    shortSampleNeeded === undefined || shortSampleNeeded === sampleNeeded
      ? ''
      : `, and ${whole(shortSampleNeeded)} for the count of short ones`;
  return `${whole(sampleNeeded)} of ${whole(lot)}${count}${held!.sampleFromMemory ? fromMemory : ''}`;
}

export const noSpread = 'One weight has no spread.';

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

export const ruleWords = ({ rule }: Weighed, held: HeldRule | null): string => `${ruleTitles[rule]}. ${held ? `${held.from}.` : noFigure}`;

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
  const shown = (grams: number): string => trimmed(grams, units);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = `${shown(total)} ${unit} ÷ ${whole(weights.length)} − ${shown(labelG)} ${unit} = ${shown(meanErrorG).replace('-', '−')} ${unit}.`;
  if (!held || spreadG === undefined || limitG === undefined) return mean;
  const reached = `Mean and room together: ${shown(labelG + meanErrorG)} + ${shown(limitG)} = ${shown(labelG + meanErrorG + limitG)} ${unit}, against ${shown(labelG)} ${unit}.`;
  if (limitG === 0) return `${mean} ${reached}`;
  return `${mean} Room for chance: ${places(limitG / spreadG, 3)} (t ÷ √${whole(weights.length)}) × ${shown(spreadG)} ${unit} = ${shown(limitG)} ${unit}. ${reached}`;
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

export const chartLabel = (units: System): string =>
  `A dot for each package, by the ${units === 'us' ? 'ounces' : 'grams'} it is over or under the label. The bar reaches from the mean as far as chance may have carried it. The dashed line is the label.`;
export const label = (weight: string): string => `label ${weight}`;

export const spotCheck = '**This is a club’s own spot check of what it bought. It is not a legal inspection.**';
export const notLegal = 'A club’s own spot check, not a legal inspection.';
export const outputs = {
  mean: 'Mean',
  room: 'Room for chance',
  rule: 'Rule used',
  asksFor: 'Weights it asks for',
  spread: 'Spread',
  shortOnce: 'Short by more than the tolerance',
  shortTwice: 'By more than twice it',
};

export const stepByStep = 'The example step by step, and a table';
export const delivery = (lot: number, label: string): string =>
  `${lot === 12 ? 'All twelve packages of a delivery' : `Twelve packages of a delivery of ${lot}`}, labelled ${label}.`;
export const byEach = 'The same twelve by each rule';
export const table = {
  rule: 'Rule',
  asksFor: 'Asks for',
  room: 'Room for chance',
  asWeighed: 'As weighed',
  less: (weight: string): string => `Each ${weight} less`,
};
export const sayWhich = (weight: string): string =>
  `With each weight ${weight} less, the US rule fails what Canada’s passes. So say which rule you used.`;

export const net = {
  title: 'How to get net weights',
  steps: [
    'Choose the packages by lot, before you look. Number them.',
    'Put the scale level, out of the wind, and the same one for all. Fine steps are better.',
    'Weigh the full package: bees, box, queen cage and can. Write it down.',
    'Put the bees in their hive. Keep the can upright and lose no syrup.',
    'Weigh the same box again, with its can and its queen cage. Leave dead bees in it.',
    'Take the second from the first. That is the net weight of the living.',
  ],
  queenCage: 'Does the queen cage stay in the hive? Weigh it when you draw it out, and add it to the second weight.',
  madeUp: 'Made up, for a 3 lb label',
  full: 'Full package',
  empty: 'Empty box with can and dead bees',
  cage: 'Queen cage, hung in the hive',
  net: 'Net',
};

export const rules = {
  title: 'What the three rules say',
  says: [
    '**All three:** the mean of the sample may be under the label only as far as chance can carry it. Room for chance is the spread × t ÷ √ of the number weighed, with t at {certainty-us} in the US and {certainty} elsewhere.',
    '**EU and UK:** of fewer than 100 packages all are weighed, and the mean has no room. At most {share} may be short by more than the tolerance, none by twice it.',
    '**Canada:** a quarter of the delivery, at least {least}, all of ten or fewer. It fails when {twice} are short by more than twice the tolerance.',
    '**US:** {sample} of 12 to 250, all of fewer. That table is from memory, not opened.',
  ],
  short: 'How much one package may be short',
  label: 'Label',
  noFigure: 'no figure',
  fromMemory: 'from memory',
  fineScale: 'The US ones decide nothing here. The handbook wants a scale whose steps are at most a sixth of them{mark}.',
};

export const limits = [
  'Whether a law was broken. Only the office for weights and measures can say that.',
  'What was shaken in. Bees die on the way, and the living eat from the can.',
  'Full bees weigh more than hungry ones, and wet ones more than dry.',
  'These rules were written for packed goods. Whether they bind a seller of live bees, ask.',
  'A scale that is wrong is wrong for all. Try it with a known weight first.',
];
export const lookFirst = (title: string): string => `Before you weigh, look: [${title}](list).`;
