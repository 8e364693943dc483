import type { Row } from '../rows.ts';

const sp811 = 'NIST Special Publication 811 (2008), appendix B';
const handbook44 = 'NIST Handbook 44, appendix C';
const uk = 'UK Units of Measurement Regulations 1995, schedule';

/** Name of the function in shared/units: what goes in, what comes out. */
export const conversions: Row<{ convert: string; from: number }, { to: number }>[] = [
  { case: 'pound', given: { convert: 'poundsToKilograms', from: 1 }, expect: { to: 0.45359237 }, from: sp811 },
  { case: '3 lb package', given: { convert: 'poundsToKilograms', from: 3 }, expect: { to: 1.36077711 }, from: sp811 },
  { case: 'ounce', given: { convert: 'ouncesToKilograms', from: 1 }, expect: { to: 0.028349523125 }, from: sp811 },
  { case: 'gram', given: { convert: 'gramsToKilograms', from: 454 }, expect: { to: 0.454 }, from: sp811 },
  { case: 'US gallon', given: { convert: 'usGallonsToLitres', from: 1 }, expect: { to: 3.785411784 }, from: sp811 },
  { case: 'US quart', given: { convert: 'usQuartsToLitres', from: 1 }, expect: { to: 0.946352946 }, from: handbook44 },
  { case: 'US cup', given: { convert: 'usCupsToLitres', from: 1 }, expect: { to: 0.2365882365 }, from: handbook44 },
  { case: 'half a US cup', given: { convert: 'usCupsToLitres', from: 0.5 }, expect: { to: 0.11829411825 }, from: handbook44 },
  { case: 'imperial gallon', given: { convert: 'imperialGallonsToLitres', from: 1 }, expect: { to: 4.54609 }, from: uk },
  { case: 'imperial pint', given: { convert: 'imperialPintsToLitres', from: 1 }, expect: { to: 0.56826125 }, from: uk },
  { case: 'millilitre', given: { convert: 'millilitresToLitres', from: 630 }, expect: { to: 0.63 }, from: sp811 },
  { case: 'freezing', given: { convert: 'fahrenheitToCelsius', from: 32 }, expect: { to: 0 }, from: sp811 },
  { case: 'boiling', given: { convert: 'celsiusToFahrenheit', from: 100 }, expect: { to: 212 }, from: sp811 },
  { case: 'the same in both', given: { convert: 'celsiusToFahrenheit', from: -40 }, expect: { to: -40 }, from: sp811 },
  { case: '57 F', given: { convert: 'fahrenheitToCelsius', from: 57 }, expect: { to: 13.888888888889 }, from: sp811 },
  { case: '10 C warmer', given: { convert: 'celsiusDifferenceToFahrenheit', from: 10 }, expect: { to: 18 }, from: sp811 },
  { case: '9 F warmer', given: { convert: 'fahrenheitDifferenceToCelsius', from: 9 }, expect: { to: 5 }, from: sp811 },
];
