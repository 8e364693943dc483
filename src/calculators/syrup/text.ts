/* Sentences of the syrup calculator. */
import type { Syrup } from '../../../shared/feeding/mix.ts';
import type { Graining } from '../../../shared/feeding/solubility.ts';
import { densityWords, temperatureRange, temperatureWords, three, volumeAlone, weightAlone, type System } from '../form/measures.ts';
import { smallWeight } from '../form/units.ts';
import { kitchenCups, kitchenVolume, kitchenWeight } from '../../../shared/units/kitchen.ts';
import type { Mixed } from './model.ts';

export function headline({ sugarKg, waterKg, syrupLitres, graining }: Syrup, units: System): string {
  const made = `${weightAlone(sugarKg, units)} of sugar and ${weightAlone(waterKg, units)} of water make ${volumeAlone(syrupLitres, units)} of syrup.`;
  return graining.state === 'cannot-all-dissolve' ? `So much sugar cannot all dissolve. If it did: ${made}` : made;
}

const unitNames: Readonly<Record<Mixed['unit'], string>> = {
  kg: 'kg', g: 'g', lb: 'lb', oz: 'oz', L: 'L', mL: 'mL', 'us-gal': 'US gallons', 'us-qt': 'US quarts', 'us-cup': 'US cups', 'imp-gal': 'imperial gallons', 'imp-pt': 'imperial pints',
}; // prettier-ignore

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
  return `${byParts} Weights add, volumes do not: ${weightAlone(syrupKg, units)} of syrup ÷ ${densityWords(kgPerLitre, units).replace(/ \(.*/, '')} = ${volumeAlone(syrupLitres, units)}.`;
}
