import { formatMonthDay, formatMonthDays } from '../../../shared/days/year-span.ts';
import { formatExact } from '../../../shared/numbers/show-number.ts';
import type { DayTemperatures } from '../../../shared/season/degree-day.ts';
import { three } from '../form/measures.ts';
import { countedAt, shownDays, sumText, type Sums } from './model.ts';
import type * as English from './text.en.ts';

export const methodNames: typeof English.methodNames = {
  simple: 'simple',
  floored: 'con mínima ajustada',
  sine: 'seno',
  modified: 'modificado',
  maximum: 'máxima',
  'not stated': 'método no indicado',
};

export const methodWords: typeof English.methodWords = {
  simple: 'el promedio de la mínima y la máxima, menos la base',
  floored: 'una mínima por debajo de la base cuenta como la base',
  sine: 'el día como una onda suave, la parte por encima de la base',
  modified: 'igual que con mínima ajustada, y una máxima por encima del tope cuenta como el tope',
  maximum: 'solo la máxima, menos la base',
};

export const sumName: typeof English.sumName = (sum, scale) => `${sumText(sum)} grados-día (°${scale})`;

export const headline: typeof English.headline = ({ scale, sum, days }, { of, total, reached, reachedOnDay, rule }, language) => {
  const by = `método ${methodNames[rule.method]}, base ${formatExact(rule.base)} °${scale}`;
  if (total === undefined) return 'No hay cifra para esta asociación: no tiene valores normales. Escriba días suyos.';
  if (of === 'given-days') {
    const went =
      reachedOnDay === undefined
        ? sum === undefined
          ? ''
          : ` Es menos de ${three(sum)}.`
        : ` Se llega a ${three(sum!)} el día ${reachedOnDay} de ${days.length}.`;
    return `${sumName(total, scale)}, ${by}.${went}`;
  }
  if (typeof reached === 'object') return `${sumName(sum!, scale)}: ${formatMonthDays(reached.earliest, reached.latest, language)}, ${by}.`;
  return `${sumName(total, scale)} en un año normal, ${by}.`;
};

export const questionWords: typeof English.questionWords = ({ days, scale, sum }, { rule }) => {
  const what = days.length > 0 ? `${days.length} ${days.length === 1 ? 'día suyo' : 'días suyos'}` : 'Un año normal';
  return `${what}, método ${methodNames[rule.method]}, base ${formatExact(rule.base)} °${scale}${sum === undefined ? '' : `, para llegar a ${three(sum)}`}`;
};

export const reachedWords: typeof English.reachedWords = {
  'no-figure': 'No hay cifra para esta asociación.',
  'no-sum': 'Escriba la suma a la que se quiere llegar.',
  'not-reached': 'No se llega en un año normal.',
  'no-cap': 'No se indica su tope; por eso no hay fecha.',
  'given-days': 'Los días escritos aquí no tienen fechas.',
};

export const sumWords: typeof English.sumWords = ({ days, scale }, { of, rule, eachDay = [], total, spread }) => {
  const first = `Método ${methodNames[rule.method]}: ${methodWords[rule.method]}. Base ${formatExact(rule.base)} °${scale}${rule.cap === undefined ? '' : `, tope ${formatExact(rule.cap)} °${scale}`}.`;
  if (of === 'normals')
    return `${first} Los grados-día de un día nunca son menos de 0. Los de un año se suman desde el inicio.${spread > 0 ? ` El promedio de un día cambia unos ${three(spread)} °${scale} de un año a otro, y eso se tiene en cuenta.` : ''}`;
  const at = countedAt(eachDay);
  return `${first} ${oneDayWords(days[at]!, eachDay[at]!, rule)}${eachDay.length > 1 ? ` Todos los días: ${shownDays(eachDay)} = ${sumText(total!)}.` : ''}`;
};

function oneDayWords({ max, min }: DayTemperatures, counted: number, { method, base, cap = Infinity }: Sums['rule']): string {
  const [low, high, from] = [formatExact(min), formatExact(max), formatExact(base)];
  const within = (value: number): string => formatExact(Math.min(cap, Math.max(base, value)));
  const day = `El día de ${low} a ${high}:`;
  switch (method) {
    case 'simple':
      return `${day} (${low} + ${high}) ÷ 2 − ${from} = ${sumText((max + min) / 2 - base)}${counted === 0 && (max + min) / 2 < base ? ', así que 0' : ''}.`;
    case 'maximum':
      return `${day} ${high} − ${from} = ${sumText(max - base)}${max < base ? ', así que 0' : ''}.`;
    case 'sine':
      return `${day} la parte de su onda por encima de ${from} es ${counted === 0 ? 'nada: 0' : sumText(counted)}.`;
    default:
      return `${day} (${within(min)} + ${within(max)}) ÷ 2 − ${from} = ${sumText(counted)}.`;
  }
}

export const plantWords: typeof English.plantWords = ({ sum, scale, base, cap, from, method, stage, place, fromMemory }, language) =>
  `${stage} con ${three(sum)}, base ${formatExact(base)} °${scale}${cap === undefined ? '' : `, tope ${formatExact(cap)} °${scale}`}, ${methodNames[method]}, desde el ${formatMonthDay(from, language)}; ${place}.${fromMemory ? ' De memoria.' : ''}`;

export const chart: typeof English.chart = {
  inAll: (total) => `${sumText(total)} en total`,
  toReach: (sum) => `llegar a ${three(sum)}`,
  label:
    'La suma a medida que crece, una columna por cada día escrito. La línea de trazos es la suma total, o la suma a la que se quiere llegar.',
};

export const asked: typeof English.asked = {
  base: 'la base, como 50',
  cap: 'el tope, como 86',
  scale: 'una escala',
  spread: 'la variación, como 9',
  sum: 'la suma a la que se quiere llegar, como 86',
  temperature: 'una temperatura, como 54',
};

export const says = 'Compárelo con las plantas de su asociación, y anote lo que ve en flor.';
export const nextLook: typeof English.nextLook = (day) => `Vuelva a mirar la planta: desde el ${day}.`;
export const nextSum: typeof English.nextSum = (day) => `Próxima suma: ${day}, con los días que se agreguen hasta entonces.`;
export const to: typeof English.to = (day) => `al ${day}`;
export const source: typeof English.source = (note) => `Fuente ${note}`;

export const faults: typeof English.faults = {
  'no-method': 'Elija un método: cada uno da otra suma.',
  'cap-without-use': 'Solo los métodos seno y modificado tienen tope. Déjelo vacío, o elija uno de ellos.',
  'no-sum': 'La suma a la que se quiere llegar debe ser más de 0.',
  'impossible-base': 'La base está entre −150 y 150 grados.',
  'no-cap': 'El método modificado necesita un tope, como 86.',
  'cap-not-over-base': 'El tope debe ser mayor que la base.',
  'impossible-spread': 'La variación está entre 0 y 50 grados.',
  'no-days': 'Escriba la mínima y la máxima de cada día.',
};
export const inLine: typeof English.inLine = (line, sentence) => `Línea ${line}: ${sentence}`;
export const maxUnderMin = 'la máxima es menor que la mínima. La mínima va primero.';
export const noWeather = 'ningún tiempo pasa de 150 grados.';
export const tooManyDays: typeof English.tooManyDays = (most, found) => `La lista acepta como máximo ${most} días, y estos son ${found}.`;
export const wrongLine: typeof English.wrongLine = (found) =>
  `dice “${found}”. Escriba la mínima y después la máxima de un día, como 40 54.`;
export const daysInAddress: typeof English.daysInAddress = (written) =>
  `En una dirección estos días se escriben ${written}. Presione “Calcular” para usarlos.`;
export const noDayOfYear: typeof English.noDayOfYear = (typed, such) => `“${typed}” no es un día del año. Escríbalo como ${such}.`;

export const fields: typeof English.fields = {
  days: 'Días suyos: mínima, máxima',
  daysHint: 'Una línea por día, como 40 54. Puede pegar dos columnas. Una fecha antes de ellas se pasa por alto.',
  normals: 'Si lo deja vacío, cuentan los valores normales de la asociación.',
  noNormals: 'La asociación no tiene valores normales propios.',
  scale: 'Todas las temperaturas en',
  method: 'Método',
  methodHint: 'Cada uno da otra suma. Use el método con que se hizo su lista de plantas.',
  methodChoice: (method) => `${methodNames[method]}: ${methodWords[method]}`,
  notChosen: 'Sin elegir',
  base: 'Base, grados',
  cap: 'Tope, grados',
  sum: 'Suma a la que se quiere llegar',
  sumHint: 'Puede dejarlo vacío.',
  forNormals: 'Para valores normales: inicio y variación',
  from: 'La suma empieza el',
  fromHint: (day) => `Si lo deja vacío: ${day}.`,
  spread: 'Variación del promedio de un día, grados',
  spreadHint: 'Si lo deja vacío: la de la asociación, y 0 para días escritos.',
};

export const result: typeof English.result = {
  sum: 'Suma',
  day: 'Día en que se llega a la suma',
  plants: 'Plantas',
  plant: 'Planta',
  here: 'Aquí, en un año normal',
};

export const example: typeof English.example = {
  days: (days, scale) =>
    `Tres días, mínima y máxima: ${days.map(({ min, max }) => `${sumSign(min)} y ${sumSign(max)}`).join('; ')} °${scale}.`,
  byMethod: ({ min, max, base }, scale) =>
    `Un día de ${sumSign(min)} a ${sumSign(max)} °${scale}, base ${formatExact(base)} °${scale}, con cada método`,
  method: 'Método',
  how: 'Cómo se cuenta un día',
  sum: 'Grados-día',
  cap: (cap) => ` (aquí ${formatExact(cap)})`,
};
const sumSign = (value: number): string => formatExact(value).replace('-', '−');

export const background: typeof English.background = {
  sums: 'Sumas de las plantas',
  own: 'Cada suma vale para su propia base, su inicio, su método y su lugar. Nunca mezcle dos listas.',
  how: 'Cómo salen las fechas de los valores normales',
  normals: (normals) => `Los valores normales son: ${normals}{source}.`,
  noNormals:
    'Esta asociación no tiene valores normales. Por eso la suma es solo de los días que usted escribe, y ninguna planta tiene aquí una fecha.',
  spread: (known) =>
    `Los valores normales suaves suman demasiado poco al principio del año, porque un día cálido en una semana fría cuenta. Por eso se tiene en cuenta la variación del promedio de un día${known ? ': {spread}' : ''}.`,
  off: 'Una fecha puede fallar en {days} antes o después, y una suma pequeña y temprana en {early}.',
};
