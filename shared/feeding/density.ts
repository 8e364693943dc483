/**
 * Density of water and of sugar syrup. Brix is per cent of sugar by weight. The polynomial has the form that the International Commission
 * for Uniform Methods of Sugar Analysis published (specification SPS-4, densimetry). Its coefficients come from two independent public
 * programs, and the attribution is from memory. It lies within 0.3 kg/m3 of the sucrose table of the CRC Handbook of Chemistry and
 * Physics at 20 C up to 70 Brix, and within 0.5 at 80. Does not hold outside 0 to 60 C and 0 to 85 Brix, nor for honey, invert sugar or
 * brown sugar. Units: Brix, C, kg per litre (= g per mL).
 */
const powersOfSugar = [
  [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289],
  [-46.272, -7.172, 1.1597, 5.1126, 17.5254],
  [59.7712, 7.2491, 12.363, -35.4791],
  [-47.2207, -21.6977, 27.6301],
  [18.3184, 12.3081],
];

export const coldestC = 0;
export const warmestC = 60;
export const thickestBrix = 85;

export function syrupKgPerLitre(brix: number, temperatureC: number): number {
  if (!(brix >= 0 && brix <= thickestBrix)) throw new RangeError(`syrupKgPerLitre: needs 0 to 85 Brix, got ${brix}`);
  const share = brix / 100;
  const warmth = (temperatureC - 20) / 100;
  const added = powersOfSugar.map((factors) => share * valueAt(factors, share));
  return waterKgPerLitre(temperatureC) + valueAt(added, warmth) / 1000;
}

/** Pure water, in the form of Kell 1975 (J. Chem. Eng. Data 20:97-105; from memory), with coefficients from the same programs. */
export function waterKgPerLitre(temperatureC: number): number {
  if (!(temperatureC >= coldestC && temperatureC <= warmestC)) {
    throw new RangeError(`waterKgPerLitre: needs 0 to 60 C, got ${temperatureC}`);
  }
  const above = valueAt([999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12], temperatureC);
  return above / (1 + 16.887236e-3 * temperatureC) / 1000;
}

/** factors[0] + factors[1] x + factors[2] x^2 ... */
function valueAt(factors: readonly number[], x: number): number {
  return factors.reduceRight((sum, factor) => sum * x + factor, 0);
}
