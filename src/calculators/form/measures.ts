/* Formats weights, volumes and temperatures in both systems, the club's own first, with three significant digits where a unit was converted. */
import { formatNumber, withoutZeros } from '../../../shared/numbers/show-number.ts';
import { celsiusToFahrenheit } from '../../../shared/units/temperature.ts';
import { litresToImperialGallons, litresToUsGallons } from '../../../shared/units/volume.ts';
import { kilogramsToPounds } from '../../../shared/units/weight.ts';
import * as text from './measures.en.ts';

export type System = 'us' | 'metric';

export function weightWords(kg: number, first: System): string {
  return inOrder([`${converted(kilogramsToPounds(kg))} lb`, `${converted(kg)} kg`], first);
}

/** The imperial gallon comes last, because it is the least common here. */
export function volumeWords(litres: number, first: System): string {
  return inOrder(
    [text.usGallons(converted(litresToUsGallons(litres))), `${converted(litres)} L`],
    first,
    text.imperialGallons(converted(litresToImperialGallons(litres))),
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

/** Weight in a US gallon or in a litre, without the volume. */
export const weightInVolume = (kgPerLitre: number, system: System): string =>
  system === 'us' ? `${converted(kilogramsToPounds(kgPerLitre) / litresToUsGallons(1))} lb` : `${converted(kgPerLitre)} kg`;

/** Weight per volume. */
export function strengthWords(kgPerLitre: number, first: System): string {
  return inOrder(
    [text.poundsInGallon(converted(kilogramsToPounds(kgPerLitre) / litresToUsGallons(1))), text.kilogramsInLitre(converted(kgPerLitre))],
    first,
  );
}

/** Weight of a volume. */
export function densityWords(kgPerLitre: number, first: System): string {
  return inOrder(
    [
      text.poundsAGallon(formatNumber(kilogramsToPounds(kgPerLitre) / litresToUsGallons(1), { digits: 3 })),
      text.kilogramsALitre(formatNumber(kgPerLitre, { digits: 3 })),
    ],
    first,
  );
}

export function densityAlone(kgPerLitre: number, system: System): string {
  return densityWords(kgPerLitre, system).replace(/ \(.*/, '');
}

export function strengthAlone(kgPerLitre: number, system: System): string {
  return strengthWords(kgPerLitre, system).replace(/ \(.*/, '');
}

/** "1.1 to 1.4 US gal": `words` writes a value with its unit. */
export function spanWords(least: number, most: number, words: (value: number) => string): string {
  return text.fromTo(/^[\d.,]+/.exec(words(least))![0], words(most));
}

/** The two temperatures at the ends of one answer. */
export function temperatureRange(least: number, most: number, first: System): string {
  const span = (of: (celsius: number) => number) => text.fromTo(degrees(of(least)), degrees(of(most)));
  return inOrder([`${span(celsiusToFahrenheit)} °F`, `${span((celsius) => celsius)} °C`], first);
}

/** Three significant digits without trailing zeros, and whole numbers from a thousand. */
export function three(value: number): string {
  return withoutZeros(formatNumber(value, Math.abs(value) >= 1000 ? { places: 0 } : { digits: 3 }));
}

/** The same for a number whose unit may have been converted. Above a thousand it has more digits only as somebody typed them. */
export function converted(value: number): string {
  const isTyped = Math.abs(Number(value.toPrecision(5)) - value) <= Math.abs(value) * 1e-9;
  return three(isTyped ? value : Number(value.toPrecision(3)));
}

function degrees(value: number): string {
  return withoutZeros(formatNumber(value, { places: 1 }));
}

function inOrder([us, metric]: readonly [string, string], first: System, also?: string): string {
  const [one, other] = first === 'us' ? [us, metric] : [metric, us];
  return `${one} (${[other, ...(also ? [also] : [])].join(', ')})`;
}
