import type * as English from './figure-words.en.ts';

export const units: Record<keyof typeof English.units, readonly [one: string, many: string]> = {
  'us-gal': ['gal de EE. UU.', 'gal de EE. UU.'],
  'us-qt': ['qt de EE. UU.', 'qt de EE. UU.'],
  'us-cup': ['taza de EE. UU.', 'tazas de EE. UU.'],
  in: ['pulgada', 'pulgadas'],
  ft: ['pie', 'pies'],
  days: ['día', 'días'],
  weeks: ['semana', 'semanas'],
  months: ['mes', 'meses'],
  years: ['año', 'años'],
  hours: ['hora', 'horas'],
  minutes: ['minuto', 'minutos'],
  'per-day': ['por día', 'por día'],
  'per-100-bees': ['por cada 100 abejas', 'por cada 100 abejas'],
  'mites-per-day': ['ácaro por día', 'ácaros por día'],
  bees: ['abeja', 'abejas'],
  'bees-per-lb': ['abejas por libra', 'abejas por libra'],
  mites: ['ácaro', 'ácaros'],
  'degree-days-F': ['grados-día (°F)', 'grados-día (°F)'],
  'degree-days-C': ['grados-día (°C)', 'grados-día (°C)'],
  'mg-per-m3': ['mg por m³', 'mg por m³'],
  parts: ['parte', 'partes'],
  'g-per-cup': ['g por taza', 'g por taza'],
  'lb-per-us-gal': ['lb por galón de EE. UU.', 'lb por galón de EE. UU.'],
  'mL-per-kg': ['mL por 1 kg', 'mL por 1 kg'],
};

export const range: typeof English.range = (ends) => ends.join(' a ');
