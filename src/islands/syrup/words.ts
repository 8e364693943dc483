/* The sentences of the syrup page. */
import type { Syrup } from '../../../shared/feeding/mix.ts';
import type { Graining } from '../../../shared/feeding/solubility.ts';
import { formatNumber } from '../../../shared/numbers/show-number.ts';
import { temperatureRange, temperatureWords, three, volumeAlone, weightAlone, type System } from '../parts/measures.ts';
import type { Mixed } from './recipe.ts';

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

/** The sum with its numbers put in. */
export function sumWords(mixed: Mixed, { brix, syrupKg, syrupLitres, kgPerLitre }: Syrup): string {
  const [sugar, water, cup] = [three(mixed['sugar-parts']), three(mixed['water-parts']), three(mixed['sugar-per-cup'])];
  const share = three(brix);
  const byParts = {
    weight: `100 × ${sugar} ÷ (${sugar} + ${water}) = ${share} % sugar by weight.`,
    volume: `A US cup holds ${cup} g of sugar or about 236 g of water: 100 × ${sugar} × ${cup} ÷ (${sugar} × ${cup} + ${water} × 236) = ${share} % sugar by weight.`,
    'kilograms-to-litres': `${sugar} kg to ${water} L is ${share} % sugar by weight.`,
  }[mixed.by];
  return `${byParts} Weights add, volumes do not: ${three(syrupKg)} kg of syrup ÷ ${formatNumber(kgPerLitre, { places: 3 })} kg a litre = ${three(syrupLitres)} L.`;
}
