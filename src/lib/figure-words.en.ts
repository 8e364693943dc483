/** Units that are words, for one and for several. */
export const alone = {
  days: ['day', 'days'],
  weeks: ['week', 'weeks'],
  months: ['month', 'months'],
  years: ['year', 'years'],
  hours: ['hour', 'hours'],
  minutes: ['minute', 'minutes'],
  'per-day': ['a day', 'a day'],
  percent: ['%', '%'],
  'per-100-bees': ['per 100 bees', 'per 100 bees'],
  'mites-per-day': ['mite a day', 'mites a day'],
  bees: ['bee', 'bees'],
  'bees-per-lb': ['bees a pound', 'bees a pound'],
  mites: ['mite', 'mites'],
  'degree-days-F': ['degree-days (°F)', 'degree-days (°F)'],
  'degree-days-C': ['degree-days (°C)', 'degree-days (°C)'],
  'mg-per-m3': ['mg per m³', 'mg per m³'],
  ppm: ['ppm', 'ppm'],
  parts: ['part', 'parts'],
  'g-per-cup': ['g a cup', 'g a cup'],
  'lb-per-us-gal': ['lb a US gallon', 'lb a US gallon'],
  'mL-per-kg': ['mL to 1 kg', 'mL to 1 kg'],
  ratio: ['', ''],
  count: ['', ''],
} as const;

export const volumes = { gallon: 'US gal', quart: 'US qt', cup: 'US cup' };
export const inches = 'in';
export const feet = 'ft';

export const range = (ends: readonly string[]): string => ends.join(' to ');
