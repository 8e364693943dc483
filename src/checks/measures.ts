/*
 * Finds measures in a sentence that an authority may revise: a dose, a concentration, a temperature, a threshold, or a rate per hundred.
 * Years, days, hours, counts of gear and steps, and weights of boxes are not among them. It parses digits, fractions and plain number
 * words. It does not understand a sentence, so "5 C" is always a temperature.
 */
export type Measure = { kind: 'dose' | 'concentration' | 'temperature' | 'threshold'; words: string; index: number };

const DIGITS = String.raw`(?<![\w.,:/-])(?:\d+(?:[.,]\d+)?(?:\s*[½¼¾])?|[½¼¾])`;
const NUMBER_WORDS = String.raw`\b(?:half an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)\b`;
const RANGE = String.raw`(?:\s*(?:to|or|-|–|\+/-)\s*(?:\d+(?:[.,]\d+)?|[½¼¾]))?`;
/** One or more, as digits, or as a number word where the unit is spelt out too. */
const digits = (unit: string): RegExp => new RegExp(`${DIGITS}${RANGE}\\s*${unit}`, 'giu');
const worded = (unit: string): RegExp => new RegExp(`${NUMBER_WORDS}(?:\\s+(?:to|or)\\s+\\w+)?\\s+${unit}`, 'giu');

const DOSE = String.raw`(?:m[lL]|milli(?:liter|litre)s?|mg|milligrams?|g|grams?|oz|ounces?|teaspoon(?:ful)?s?|tablespoon(?:ful)?s?|drops?)(?![\p{L}\d-])`;
const CONCENTRATION = String.raw`(?:%|per ?cent\b|ppm\b|parts per million\b|mg\s?(?:per|to the|\/)\s?m(?:3|³))`;
const TEMPERATURE = String.raw`(?:°\s?[CF]?|degrees?\b(?!-days?|\s+days?)(?:\s+(?:[Ff]ahrenheit|[Cc]elsius|C|F)\b)?|[CF](?![\p{L}\d'’-]))`;
const THRESHOLD = String.raw`(?:mites?\s+)?(?:(?:per|in|out of|to|on) (?:every |each )?(?:100|a hundred|one hundred|300)\b|(?:mites?) (?:a|per|each) day\b|mites? in (?:a|an|the|each) (?:wash|roll|sample))`;

/** One-letter units are case-sensitive: "5 C" is a temperature, "5 c" is not. */
const KINDS: readonly [Measure['kind'], RegExp][] = [
  ['temperature', new RegExp(digits(TEMPERATURE).source, 'gu')],
  ['temperature', worded(String.raw`degrees?\b(?!-days?|\s+days?)`)],
  ['concentration', digits(CONCENTRATION)],
  ['concentration', worded(String.raw`per ?cent\b`)],
  ['dose', new RegExp(digits(DOSE).source, 'gu')],
  ['dose', worded(String.raw`(?:milli(?:liter|litre)s?|milligrams?|grams?|ounces?|teaspoon(?:ful)?s?|tablespoon(?:ful)?s?|drops?)\b`)],
  ['threshold', digits(THRESHOLD)],
  ['threshold', worded(String.raw`(?:mites?\s+)?(?:per|in|out of) (?:every |each )?(?:100|a hundred|one hundred)\b`)],
];

/** Most texts have no number. Trying all the patterns on them costs time. */
const NUMBERED = new RegExp(`[\\d½¼¾]|${NUMBER_WORDS}`, 'iu');

/** Returns measures in the order of the sentence. A number counts once. */
export function measuresIn(text: string): Measure[] {
  if (!NUMBERED.test(text)) return [];
  const found = KINDS.flatMap(([kind, pattern]) =>
    [...text.matchAll(pattern)].map((match): Measure => ({ kind, words: match[0].trim(), index: match.index })),
  );
  const ordered = found.sort((a, b) => a.index - b.index || b.words.length - a.words.length);
  return ordered.filter(({ index }, place) => ordered.slice(0, place).every((other) => index >= other.index + other.words.length));
}
