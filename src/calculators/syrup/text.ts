/* Sentences of the syrup calculator. */
import type { Syrup } from '../../../shared/feeding/mix.ts';
import type { Graining } from '../../../shared/feeding/solubility.ts';
import { densityWords, temperatureRange, temperatureWords, three, volumeAlone, weightAlone, type System } from '../form/measures.ts';
import { smallWeight } from '../form/units.ts';
import type { Mixed } from './model.ts';

export function headline({ sugarKg, waterKg, syrupLitres, graining }: Syrup, units: System): string {
  const made = `${weightAlone(sugarKg, units)} of sugar and ${weightAlone(waterKg, units)} of water make ${volumeAlone(syrupLitres, units)} of syrup.`;
  return graining.state === 'cannot-all-dissolve' ? `So much sugar cannot all dissolve. If it did: ${made}` : made;
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
