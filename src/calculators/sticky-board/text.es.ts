import { formatExact, formatNumber } from '../../../shared/numbers/show-number.ts';
import { three } from '../form/measures.ts';
import type * as English from './text.en.ts';

const mitesWords = (mites: number): string => `${formatNumber(mites, { places: 0 })} ${mites === 1 ? 'ácaro' : 'ácaros'}`;
export const daysWords: typeof English.daysWords = (days) => `${formatExact(Number(days.toPrecision(4)))} ${days === 1 ? 'día' : 'días'}`;

export const perDayWords: typeof English.perDayWords = (perDay) => {
  const shown = three(perDay);
  return `${shown} ${shown === '1' ? 'ácaro' : 'ácaros'} al día`;
};

export const headline: typeof English.headline = (perDay) => `En la lámina cayeron ${perDayWords(perDay)}.`;

export const questionWords: typeof English.questionWords = ({ mites, days }) => `${mitesWords(mites)} en ${daysWords(days)}`;

export const sumWords: typeof English.sumWords = ({ mites, days }, perDay) =>
  `${mitesWords(mites)} ÷ ${daysWords(days)} = ${perDayWords(perDay)}.`;

export const says = 'Una lámina solo muestra una tendencia. Cuente los ácaros por cada 100 abejas antes de decidir.';
export const again: typeof English.again = (day) => `Próxima lámina: póngala hoy, por el mismo tiempo, y léala el ${day}.`;

export const asked: typeof English.asked = {
  mites: 'cuántos ácaros había en la lámina',
  days: 'cuántos días estuvo puesta, como 3',
};

export const faults: typeof English.faults = {
  'no-days': 'Los días deben ser más de 0.',
  'mites-not-whole': 'Escriba un número entero de ácaros.',
  'mites-negative': 'Los ácaros no pueden ser menos de 0.',
  'too-many': 'Una lámina está puesta como máximo 366 días, y un millón de ácaros al día no es un conteo.',
};

export const fields: typeof English.fields = {
  mites: 'Ácaros en la lámina',
  mitesHint: 'Todos, a la luz del día.',
  days: 'Días que estuvo puesta',
  daysHint: 'Por ejemplo 3, o 72 horas.',
};

export const result: typeof English.result = {
  fell: 'Ácaros que cayeron',
  noColony: 'No se calcula cuántos ácaros tiene la colonia. Los factores publicados para eso difieren en diez veces.',
  compare:
    '**No lo compare con un nivel por cada 100 abejas.** Compárelo con sus propias láminas, de la misma colmena y del mismo tiempo. Los niveles para láminas están abajo.',
};

export const example: typeof English.example = {
  more: 'No se calcula más: los factores publicados, de la caída diaria a los ácaros de una colonia, difieren en diez veces.',
  table: 'Ácaros al día',
  mites: 'Ácaros',
};

export const levels: typeof English.levels = {
  heading: 'Niveles para láminas que usan otros grupos',
  differ: 'Cada uno vale para su propio lugar, sus semanas y su lámina. No coinciden.',
  perDay: 'Ácaros al día',
  phase: 'Fase del año',
  whose: 'De quién',
  allYear: 'todo el año',
};
