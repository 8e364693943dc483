/** Units in words, for one and for several. */
export const units = {
  'us-gal': ['US gal', 'US gal'],
  'us-qt': ['US qt', 'US qt'],
  'us-cup': ['US cup', 'US cup'],
  in: ['in', 'in'],
  ft: ['ft', 'ft'],
  days: ['day', 'days'],
  weeks: ['week', 'weeks'],
  months: ['month', 'months'],
  years: ['year', 'years'],
  hours: ['hour', 'hours'],
  minutes: ['minute', 'minutes'],
  'per-day': ['a day', 'a day'],
  'per-100-bees': ['per 100 bees', 'per 100 bees'],
  'mites-per-day': ['mite a day', 'mites a day'],
  bees: ['bee', 'bees'],
  'bees-per-lb': ['bees a pound', 'bees a pound'],
  mites: ['mite', 'mites'],
  'degree-days-F': ['degree-days (°F)', 'degree-days (°F)'],
  'degree-days-C': ['degree-days (°C)', 'degree-days (°C)'],
  'mg-per-m3': ['mg per m³', 'mg per m³'],
  parts: ['part', 'parts'],
  'g-per-cup': ['g a cup', 'g a cup'],
  'lb-per-us-gal': ['lb a US gallon', 'lb a US gallon'],
  'mL-per-kg': ['mL to 1 kg', 'mL to 1 kg'],
} as const;

export const range = (ends: readonly string[]): string => ends.join(' to ');
