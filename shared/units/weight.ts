/**
 * Weights to kilograms and back, one function per pair. Exact by agreement: the pound is 0.45359237 kg (international yard and pound
 * agreement, 1959; NIST Special Publication 811, 2008, appendix B.8). An ounce is a sixteenth of it.
 */
const kilogramsInPound = 0.45359237;
const ouncesInPound = 16;
const gramsInKilogram = 1000;

export function poundsToKilograms(pounds: number): number {
  return pounds * kilogramsInPound;
}
export function kilogramsToPounds(kilograms: number): number {
  return kilograms / kilogramsInPound;
}
export function ouncesToKilograms(ounces: number): number {
  return (ounces / ouncesInPound) * kilogramsInPound;
}
export function kilogramsToOunces(kilograms: number): number {
  return (kilograms / kilogramsInPound) * ouncesInPound;
}
export function gramsToKilograms(grams: number): number {
  return grams / gramsInKilogram;
}
export function kilogramsToGrams(kilograms: number): number {
  return kilograms * gramsInKilogram;
}
