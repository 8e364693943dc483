/* Words of the syrup calculator. */
import type { MixReason, Syrup } from '../../../shared/feeding/mix.ts';
import type { Graining } from '../../../shared/feeding/solubility.ts';
import { kitchenCups, kitchenVolume, kitchenWeight } from '../../../shared/units/kitchen.ts';
import {
  densityAlone, temperatureRange, temperatureWords, three, volumeAlone, weightAlone, type System,
} from '../form/measures.ts'; // prettier-ignore
import { smallWeight } from '../form/units.ts';
import type { AmountUnit, Mixed } from './model.ts';

export const fields = {
  sugarParts: 'Parts of sugar',
  waterParts: 'Parts of water',
  by: 'Parts by',
  weight: 'Weight',
  volume: 'Volume',
  know: 'There is so much',
  sugar: 'Sugar',
  water: 'Water',
  syrup: 'Syrup wanted',
  amount: 'Amount',
  unit: 'Unit',
  temperature: 'How warm the syrup is',
  youCanType: { us: 'You can type 20 C.', metric: 'You can type 68 F.' },
  cup: 'Sugar in a US cup',
  cupCounts: 'Counts where sugar is measured by volume.',
};
export const unitChoices: Readonly<Record<AmountUnit, string>> = {
  kg: 'kg', g: 'g', lb: 'lb', oz: 'oz (weight)', L: 'L', mL: 'mL', 'us-gal': 'US gallons', 'us-qt': 'US quarts', 'us-cup': 'US cups', 'imp-gal': 'imperial gallons', 'imp-pt': 'imperial pints',
}; // prettier-ignore

/** What to write or to choose, as in "Write the parts of sugar, such as 2." */
export const what = {
  sugarParts: 'the parts of sugar, such as 2',
  waterParts: 'the parts of water, such as 1',
  by: 'whether parts are by weight or by volume',
  know: 'what the amount is of',
  amount: 'how much there is, such as 5',
  unit: 'a unit',
  temperature: { us: 'the temperature, such as 68', metric: 'the temperature, such as 20' },
  cup: { us: 'the ounces of sugar in a US cup, such as 7', metric: 'the grams of sugar in a US cup, such as 200' },
};
export const whichUnit = (found: string): string => `Which “${found}”: US or imperial? Choose it in the list of units.`;

export const faultWords = (reason: MixReason, units: System): string =>
  ({
    'no-sugar': 'The parts of sugar must be more than 0.',
    'no-water': 'The parts of water must be more than 0.',
    'no-amount': 'The amount must be more than 0.',
    'too-much': 'That is more than a million: too much to work with.',
    'temperature-out-of-range': units === 'us' ? 'The temperature must be from 32 to 140 °F.' : 'The temperature must be from 0 to 60 °C.',
    'impossible-cup': `A US cup of sugar weighs more than 0 ${units === 'us' ? 'oz and at most 13.2 oz' : 'g and at most 376 g'}.`,
    'too-thick': 'With so much sugar to so little water there is no syrup: it would be over 85 % sugar.',
  })[reason];

export function headline({ sugarKg, waterKg, syrupLitres, graining }: Syrup, units: System): string {
  const made = `${weightAlone(sugarKg, units)} of sugar and ${weightAlone(waterKg, units)} of water make ${volumeAlone(syrupLitres, units)} of syrup.`;
  return graining.state === 'cannot-all-dissolve' ? `So much sugar cannot all dissolve. If it did: ${made}` : made;
}

const unitNames: Readonly<Record<AmountUnit, string>> = { ...unitChoices, oz: 'oz' };

/** What was asked, in one line: "2:1 by weight, for 25 lb of sugar". */
export function questionWords(mixed: Mixed): string {
  const by = mixed.by === 'kilograms-to-litres' ? 'kg to L' : `by ${mixed.by}`;
  return `${three(mixed['sugar-parts'])}:${three(mixed['water-parts'])} ${by}, for ${three(mixed.amount)} ${unitNames[mixed.unit]} of ${mixed.know}`;
}

/** The mix as a person measures it. Sugar by volume is measured by the cup. */
export function kitchenWords(mixed: Mixed, { sugarKg, waterLitres, syrupLitres }: Syrup, units: System): string {
  const cups = mixed.by === 'volume' ? kitchenCups((sugarKg * 1000) / mixed['sugar-per-cup']) : undefined;
  const [sugar, water, syrup] = [
    cups ?? kitchenWeight(sugarKg, units),
    kitchenVolume(waterLitres, units),
    kitchenVolume(syrupLitres, units),
  ];
  if (!sugar || !water || !syrup) return '';
  return `To measure: ${sugar} of sugar in ${water} of water. That makes ${syrup}.`;
}

export function grainingWords(graining: Graining, units: System): string {
  switch (graining.state) {
    case 'never':
      return 'Too thin to grain above freezing.';
    case 'cannot-all-dissolve':
      return 'It cannot all dissolve.';
    case 'below':
      return `May begin to grain somewhere from ${temperatureRange(graining.leastC, graining.mostC, units)} down.`;
    case 'below-modern-only':
      return `May begin to grain under ${temperatureWords(graining.mostC, units)}. Only the newer of two lines reaches so far.`;
  }
}

/** The calculation with its numbers. */
export function sumWords(mixed: Mixed, { brix, syrupKg, syrupLitres, kgPerLitre }: Syrup, units: System): string {
  const inCup = (grams: number): string => three(smallWeight.boxes[units].fromFixed(grams));
  const [sugar, water, cup, waterCup] = [
    three(mixed['sugar-parts']),
    three(mixed['water-parts']),
    inCup(mixed['sugar-per-cup']),
    inCup(236),
  ];
  const small = units === 'us' ? 'oz' : 'g';
  const share = three(brix);
  const byParts = {
    weight: `100 × ${sugar} ÷ (${sugar} + ${water}) = ${share} % sugar by weight.`,
    volume: `A US cup holds ${cup} ${small} of sugar or about ${waterCup} ${small} of water: 100 × ${sugar} × ${cup} ÷ (${sugar} × ${cup} + ${water} × ${waterCup}) = ${share} % sugar by weight.`,
    'kilograms-to-litres': `${sugar} kg to ${water} L is ${share} % sugar by weight.`,
  }[mixed.by];
  return `${byParts} Weights add, volumes do not: ${weightAlone(syrupKg, units)} of syrup ÷ ${densityAlone(kgPerLitre, units)} = ${volumeAlone(syrupLitres, units)}.`;
}

export const useMoreWater = 'Use more water. Two parts of sugar to one of water, by weight, is the thickest that people usually feed.';
export const feedInside = 'Feed inside the hive, in the evening. Never while boxes for harvest are on.';
export const nextLook = (day: string): string => `Next look at the feeder: ${day}.`;

export const sugarByWeight = (percent: string): string => `${percent} % sugar by weight`;
export const sugarStrength = (strength: string): string => `Sugar: ${strength}`;
/** After the least temperature. */
export const toMost = (most: string): string => `to ${most}`;
export const between = 'It may begin to grain somewhere between, and below.';

export const chartLabel = 'A scale of warmth: the darker block is where the syrup may grain, the dashed line how warm it is.';
export const now = 'the syrup now';

export const stepByStep = 'The example step by step, and a table';
export const asMixed = (warm: string): string => `2 parts of sugar to 1 of water, by weight, at ${warm}.`;
export const usualMixesAt = (warm: string): string => `Usual mixes at ${warm}, sugar first`;
export const usualMixes = 'Usual mixes';
export const mixNames = {
  '1:1-weight': '1 to 1 by weight',
  '1:1-volume': '1 to 1 by volume',
  '1kg-630ml': '1 kg to 630 mL, as in Britain',
  '2:1-volume': '2 to 1 by volume',
  '2:1-weight': '2 to 1 by weight',
};
export const table = {
  mix: 'Mix',
  byWeight: 'Sugar by weight',
  inVolume: { us: 'Sugar in a US gallon', metric: 'Sugar in a litre' },
  grainsBelow: 'May grain below',
  doesNotGrain: 'does not grain',
};
export const outputs = { heading: 'The amounts', sugar: 'Sugar', water: 'Water', syrup: 'Syrup', strength: 'Strength' };

export const basis = [
  'Weights are added. Volumes come from the density of sugar in water at the temperature you give. Two published lines say when sugar comes out of a syrup. They differ by some degrees, so both ends are shown.',
  'By volume the sugar is weighed by the cup: {cup} here, {span} in print. So by volume the strength is good to about 5 %.',
];
export const limits = [
  'It holds for white granulated sugar and plain water only.',
  'A syrup at the edge may wait long to grain, or begin at a seed of sugar. Use it soon.',
  'Take the water off the heat before sugar goes in. From {hmf} a sugar breaks down into HMF, which harms bees. Put no vinegar or cream of tartar in.',
  'Give no syrup while boxes for harvest are on.',
  'Feed inside the hive, in the evening, with a small entrance: syrup brings robbers.',
  'Near {cold} bees leave liquid feed alone.',
  'It does not say how much a hive needs.',
];
