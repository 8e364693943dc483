import type * as English from './bloom.en.ts';

export const stages: typeof English.stages = { inBloom: 'en flor', full: 'plena floración', first: 'primeras flores' };
export const about: typeof English.about = (day, basis) => `hacia el ${day}, ${basis}`;

const METHODS = {
  simple: 'con la media del día (simple)',
  floored: 'con la mínima del día subida hasta la base (mínima limitada)',
  sine: 'con el día en forma de onda (seno)',
  modified: 'con la máxima y la mínima llevadas entre la base y el tope (modificado)',
  maximum: 'solo con la máxima del día (máxima)',
  'not stated': 'con un método que la lista no nombra',
};

export const sum: typeof English.sum = ({ isFull, degreeDays, base, cap, from, method }) =>
  `${isFull ? 'Plena floración' : 'Primera floración'} a los ${degreeDays} grados-día sobre ${base}${cap === null ? '' : `, hasta ${cap},`} desde el ${from}, ${METHODS[method]}`;
