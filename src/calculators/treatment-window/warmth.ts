/* Temperatures as labels print them: whole degrees Fahrenheit, and tenths of a degree Celsius. */
import { formatNumber, withoutZeros } from '../../../shared/numbers/show-number.ts';
import { celsiusToFahrenheit } from '../../../shared/units/temperature.ts';
import type { System } from '../form/measures.ts';

/** The number without its unit. */
export const degrees = (celsius: number, units: System): string =>
  units === 'us' ? formatNumber(celsiusToFahrenheit(celsius), { places: 0 }) : withoutZeros(formatNumber(celsius, { places: 1 }));

export const warmthAlone = (celsius: number, units: System): string => `${degrees(celsius, units)} ${units === 'us' ? '°F' : '°C'}`;

/** In both scales, the club's own first. */
export const warmthWords = (celsius: number, first: System): string =>
  `${warmthAlone(celsius, first)} (${warmthAlone(celsius, first === 'us' ? 'metric' : 'us')})`;
