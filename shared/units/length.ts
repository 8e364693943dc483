/** Lengths between feet or inches and metric units. Exact: the foot is 0.3048 m (NIST Special Publication 811, 2008, appendix B.8). */
const metresInFoot = 0.3048;
const inchesInFoot = 12;

export function feetToMetres(feet: number): number {
  return feet * metresInFoot;
}
export function metresToFeet(metres: number): number {
  return metres / metresInFoot;
}
export function inchesToMillimetres(inches: number): number {
  return feetToMetres(inches / inchesInFoot) * 1000;
}
export function millimetresToInches(millimetres: number): number {
  return metresToFeet(millimetres / 1000) * inchesInFoot;
}
