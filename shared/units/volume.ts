/**
 * Volumes to litres and back, one function per pair. Exact: the US gallon is 231 cubic inches, 3.785411784 L, of 4 quarts or 16 cups
 * (NIST Handbook 44, appendix C). The imperial gallon is 4.54609 L, of 8 pints (UK Units of Measurement Regulations 1995, schedule). The
 * cup is the customary US one, 236.6 mL, not the metric 250 mL.
 */
const litresInUsGallon = 3.785411784;
const litresInImperialGallon = 4.54609;

export function millilitresToLitres(millilitres: number): number {
  return millilitres / 1000;
}
export function litresToMillilitres(litres: number): number {
  return litres * 1000;
}
export function usGallonsToLitres(gallons: number): number {
  return gallons * litresInUsGallon;
}
export function litresToUsGallons(litres: number): number {
  return litres / litresInUsGallon;
}
export function usQuartsToLitres(quarts: number): number {
  return (quarts / 4) * litresInUsGallon;
}
export function litresToUsQuarts(litres: number): number {
  return (litres / litresInUsGallon) * 4;
}
export function usCupsToLitres(cups: number): number {
  return (cups / 16) * litresInUsGallon;
}
export function litresToUsCups(litres: number): number {
  return (litres / litresInUsGallon) * 16;
}
export function imperialGallonsToLitres(gallons: number): number {
  return gallons * litresInImperialGallon;
}
export function litresToImperialGallons(litres: number): number {
  return litres / litresInImperialGallon;
}
export function imperialPintsToLitres(pints: number): number {
  return (pints / 8) * litresInImperialGallon;
}
export function litresToImperialPints(litres: number): number {
  return (litres / litresInImperialGallon) * 8;
}
