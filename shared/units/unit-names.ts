/**
 * Units that a form offers, spelt as in an address, and the words that people type for each, in English and in Spanish. A bare "gallon" or "pint" is not accepted,
 * because the American and British ones differ by a fifth. A bare "oz" is a weight.
 */
export const unitNames = ['kg', 'g', 'lb', 'oz', 'L', 'mL', 'us-gal', 'us-qt', 'us-cup', 'imp-gal', 'imp-pt', 'C', 'F'] as const;
export type UnitName = (typeof unitNames)[number];

const ofTheStates = (...words: string[]): string[] =>
  words.flatMap((word) => [`${word} ee uu`, `${word} de ee uu`, ...(word === 'gal' ? [] : [`${word} us`])]);

/** In lower case, without full stops, as `readTypedNumber` takes its allowed units. */
export const unitWords: Readonly<Record<UnitName, readonly string[]>> = {
  kg: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramme', 'kilogrammes', 'kilogramo', 'kilogramos'],
  g: ['g', 'gram', 'grams', 'gramme', 'grammes', 'gramo', 'gramos'],
  lb: ['lb', 'lbs', 'pound', 'pounds', 'libra', 'libras'],
  oz: ['oz', 'ounce', 'ounces', 'onza', 'onzas'],
  L: ['l', 'litre', 'litres', 'liter', 'liters', 'litro', 'litros'],
  mL: ['ml', 'millilitre', 'millilitres', 'milliliter', 'milliliters', 'mililitro', 'mililitros'],
  'us-gal': ['us gal', 'us-gal', 'us gallon', 'us gallons', ...ofTheStates('gal', 'galón', 'galones')],
  'us-qt': ['us qt', 'us-qt', 'us quart', 'us quarts', ...ofTheStates('cuarto', 'cuartos')],
  'us-cup': ['us cup', 'us-cup', 'us cups', ...ofTheStates('taza', 'tazas')],
  'imp-gal': ['imp gal', 'imp-gal', 'imperial gallon', 'imperial gallons', 'galón imperial', 'galones imperiales', 'gal imperiales'],
  'imp-pt': ['imp pt', 'imp-pt', 'imperial pint', 'imperial pints', 'pinta imperial', 'pintas imperiales'],
  C: ['c', '°c', '℃', 'celsius', 'grados celsius'],
  F: ['f', '°f', '℉', 'fahrenheit', 'grados fahrenheit'],
};

/** The unit that a typed word means, or undefined. */
export function unitNamed(word: string): UnitName | undefined {
  const plain = word.toLowerCase().replaceAll('.', '').trim();
  return unitNames.find((name) => name.toLowerCase() === plain || unitWords[name].includes(plain));
}
