/* Formats weights, volumes and temperatures in both systems, the club's own first, with three significant digits. */
import { formatNumber } from '../../../shared/numbers/show-number.ts';
import { celsiusToFahrenheit } from '../../../shared/units/temperature.ts';
import { litresToImperialGallons, litresToUsGallons } from '../../../shared/units/volume.ts';
import { kilogramsToPounds } from '../../../shared/units/weight.ts';

export type System = 'us' | 'metric';

export function weightWords(kg: number, first: System): string {
  return inOrder([`${three(kilogramsToPounds(kg))} lb`, `${three(kg)} kg`], first);
}

/** The imperial gallon comes last, because it is the least common here. */
export function volumeWords(litres: number, first: System): string {
  return inOrder(
    [`${three(litresToUsGallons(litres))} US gal`, `${three(litres)} L`],
    first,
    `${three(litresToImperialGallons(litres))} imperial gal`,
  );
}

export function temperatureWords(celsius: number, first: System): string {
  return inOrder([`${degrees(celsiusToFahrenheit(celsius))} °F`, `${degrees(celsius)} °C`], first);
}

/** In the club's own system alone, for a headline. */
export function weightAlone(kg: number, system: System): string {
  return weightWords(kg, system).replace(/ \(.*/, '');
}

export function volumeAlone(litres: number, system: System): string {
  return volumeWords(litres, system).replace(/ \(.*/, '');
}

/** Weight per volume. */
export function strengthWords(kgPerLitre: number, first: System): string {
  return inOrder(
    [`${three(kilogramsToPounds(kgPerLitre) / litresToUsGallons(1))} lb in a US gallon`, `${three(kgPerLitre)} kg in a litre`],
    first,
  );
}

/** Weight of a volume. */
export function densityWords(kgPerLitre: number, first: System): string {
  return inOrder(
    [`${(kilogramsToPounds(kgPerLitre) / litresToUsGallons(1)).toFixed(2)} lb a US gallon`, `${kgPerLitre.toFixed(3)} kg a litre`],
    first,
  );
}

/** The two temperatures at the ends of one answer. */
export function temperatureRange(least: number, most: number, first: System): string {
  const span = (of: (celsius: number) => number) => `${degrees(of(least))} to ${degrees(of(most))}`;
  return inOrder([`${span(celsiusToFahrenheit)} °F`, `${span((celsius) => celsius)} °C`], first);
}

/** Three significant digits without trailing zeros, and whole numbers from a thousand. */
export function three(value: number): string {
  const shown = formatNumber(value, Math.abs(value) >= 1000 ? { places: 0 } : { digits: 3 });
  return shown.includes('.') ? shown.replace(/\.?0+$/, '') : shown;
}

function degrees(value: number): string {
  return formatNumber(value, { places: 1 }).replace('.0', '');
}

function inOrder([us, metric]: readonly [string, string], first: System, also?: string): string {
  const [one, other] = first === 'us' ? [us, metric] : [metric, us];
  return `${one} (${[other, ...(also ? [also] : [])].join(', ')})`;
}
