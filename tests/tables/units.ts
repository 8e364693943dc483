import type { SourcedRow } from '../rows.ts';

const sp811 = { from: 'NIST Special Publication 811 (2008), appendix B', basis: 'published' } as const;
const handbook44 = { from: 'NIST Handbook 44, appendix C', basis: 'published' } as const;
const uk = { from: 'UK Units of Measurement Regulations 1995, schedule', basis: 'published' } as const;

/** Name of the function in shared/units, its input and its output. */
export const conversions: SourcedRow<{ convert: string; from: number }, { to: number }>[] = [
  { case: 'pound', given: { convert: 'poundsToKilograms', from: 1 }, expect: { to: 0.45359237 }, ...sp811 },
  { case: '3 lb package', given: { convert: 'poundsToKilograms', from: 3 }, expect: { to: 1.36077711 }, ...sp811, basis: 'derived' },
  { case: 'ounce', given: { convert: 'ouncesToKilograms', from: 1 }, expect: { to: 0.028349523125 }, ...sp811 },
  { case: 'gram', given: { convert: 'gramsToKilograms', from: 454 }, expect: { to: 0.454 }, ...sp811, basis: 'derived' },
  { case: 'US gallon', given: { convert: 'usGallonsToLitres', from: 1 }, expect: { to: 3.785411784 }, ...sp811 },
  { case: 'US quart', given: { convert: 'usQuartsToLitres', from: 1 }, expect: { to: 0.946352946 }, ...handbook44 },
  { case: 'US cup', given: { convert: 'usCupsToLitres', from: 1 }, expect: { to: 0.2365882365 }, ...handbook44 },
  { case: 'half a US cup', given: { convert: 'usCupsToLitres', from: 0.5 }, expect: { to: 0.11829411825 }, ...handbook44, basis: 'derived' },
  { case: 'imperial gallon', given: { convert: 'imperialGallonsToLitres', from: 1 }, expect: { to: 4.54609 }, ...uk },
  { case: 'imperial pint', given: { convert: 'imperialPintsToLitres', from: 1 }, expect: { to: 0.56826125 }, ...uk },
  { case: 'millilitre', given: { convert: 'millilitresToLitres', from: 630 }, expect: { to: 0.63 }, ...sp811, basis: 'derived' },
  { case: 'freezing', given: { convert: 'fahrenheitToCelsius', from: 32 }, expect: { to: 0 }, ...sp811, basis: 'derived' },
  { case: 'boiling', given: { convert: 'celsiusToFahrenheit', from: 100 }, expect: { to: 212 }, ...sp811, basis: 'derived' },
  { case: 'the same in both', given: { convert: 'celsiusToFahrenheit', from: -40 }, expect: { to: -40 }, ...sp811, basis: 'derived' },
  { case: '57 F', given: { convert: 'fahrenheitToCelsius', from: 57 }, expect: { to: 13.888888888889 }, ...sp811, basis: 'derived' },
  { case: '10 C warmer', given: { convert: 'celsiusDifferenceToFahrenheit', from: 10 }, expect: { to: 18 }, ...sp811, basis: 'derived' },
  { case: '9 F warmer', given: { convert: 'fahrenheitDifferenceToCelsius', from: 9 }, expect: { to: 5 }, ...sp811, basis: 'derived' },
];
