import type * as English from './figure-words.en.ts';

export const alone: Record<keyof typeof English.alone, readonly [one: string, many: string]> = {
  days: ['día', 'días'],
  weeks: ['semana', 'semanas'],
  months: ['mes', 'meses'],
  years: ['año', 'años'],
  hours: ['hora', 'horas'],
  minutes: ['minuto', 'minutos'],
  'per-day': ['por día', 'por día'],
  percent: ['%', '%'],
  'per-100-bees': ['por cada 100 abejas', 'por cada 100 abejas'],
  'mites-per-day': ['ácaro por día', 'ácaros por día'],
  bees: ['abeja', 'abejas'],
  'bees-per-lb': ['abejas por libra', 'abejas por libra'],
  mites: ['ácaro', 'ácaros'],
  'degree-days-F': ['grados-día (°F)', 'grados-día (°F)'],
  'degree-days-C': ['grados-día (°C)', 'grados-día (°C)'],
  'mg-per-m3': ['mg por m³', 'mg por m³'],
  ppm: ['ppm', 'ppm'],
  parts: ['parte', 'partes'],
  'g-per-cup': ['g por taza', 'g por taza'],
  'lb-per-us-gal': ['lb por galón de EE. UU.', 'lb por galón de EE. UU.'],
  'mL-per-kg': ['mL por 1 kg', 'mL por 1 kg'],
  ratio: ['', ''],
  count: ['', ''],
};

export const volumes = { gallon: 'gal de EE. UU.', quart: 'qt de EE. UU.', cup: 'tazas de EE. UU.' };
export const inches = 'pulgadas';
export const feet = 'pies';

export const range: typeof English.range = (ends) => ends.join(' a ');
