/**
 * Units that a form offers, spelt as in an address, and the words that people type for each. A bare "gallon" or "pint" is not accepted,
 * because the American and British ones differ by a fifth. A bare "oz" is a weight.
 */
export const unitNames = ['kg', 'g', 'lb', 'oz', 'L', 'mL', 'us-gal', 'us-qt', 'us-cup', 'imp-gal', 'imp-pt', 'C', 'F'] as const;
export type UnitName = (typeof unitNames)[number];

/** In lower case, without full stops, as `readTypedNumber` takes its allowed units. */
export const unitWords: Readonly<Record<UnitName, readonly string[]>> = {
  kg: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramme', 'kilogrammes'],
  g: ['g', 'gram', 'grams', 'gramme', 'grammes'],
  lb: ['lb', 'lbs', 'pound', 'pounds'],
  oz: ['oz', 'ounce', 'ounces'],
  L: ['l', 'litre', 'litres', 'liter', 'liters'],
  mL: ['ml', 'millilitre', 'millilitres', 'milliliter', 'milliliters'],
  'us-gal': ['us gal', 'us-gal', 'us gallon', 'us gallons'],
  'us-qt': ['us qt', 'us-qt', 'us quart', 'us quarts'],
  'us-cup': ['us cup', 'us-cup', 'us cups'],
  'imp-gal': ['imp gal', 'imp-gal', 'imperial gallon', 'imperial gallons'],
  'imp-pt': ['imp pt', 'imp-pt', 'imperial pint', 'imperial pints'],
  C: ['c', '°c', '℃', 'celsius'],
  F: ['f', '°f', '℉', 'fahrenheit'],
};

/** The unit that a typed word means, or undefined. */
export function unitNamed(word: string): UnitName | undefined {
  const plain = word.toLowerCase().replaceAll('.', '').trim();
  return unitNames.find((name) => name.toLowerCase() === plain || unitWords[name].includes(plain));
}
