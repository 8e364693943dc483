import type * as English from './now.en.ts';

const count = (number: number, one: string): string => `${number} ${one}${number === 1 ? '' : 's'}`;
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

export const steps: typeof English.steps = (all) => count(all, 'paso');
export const allDone = 'Todo hecho';
export const left: typeof English.left = (number, all) => (number === 1 ? `falta 1 de ${all} pasos` : `faltan ${number} de ${all} pasos`);
export const until: typeof English.until = (day) => `hasta el ${day}`;
export const from: typeof English.from = (day) => `desde el ${day}`;

export const inBloom: typeof English.inBloom = (plants) =>
  plants.length > 0 ? `${plants.join(', ')}.` : 'Nada de lo que está en la lista.';
export const blooms: typeof English.blooms = (plant, day) => `Sigue: ${plant}, hacia el ${day}.`;

export const today: typeof English.today = (weekday, day, _isMonthFirst, district) =>
  `${capital(weekday)}, ${day}${district ? ` · fechas para ${district}` : ''}`;
export const inDays: typeof English.inDays = (days) => `en ${count(days, 'día')}`;
export const onDay: typeof English.onDay = (day) => `el ${day}`;
export const season: typeof English.season = (part, next, begins) => `Ahora: ${part}. Sigue: ${next}, ${begins}.`;
