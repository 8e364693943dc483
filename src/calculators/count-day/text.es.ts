import { formatDay } from '../../../shared/days/show-day.ts';
import { formatExact, formatNumber } from '../../../shared/numbers/show-number.ts';
import { rateWords } from './model.ts';
import type * as English from './text.en.ts';

const colonies = (count: number): string => `${count} ${count === 1 ? 'colonia' : 'colonias'}`;
const whole = (value: number): string => formatNumber(value, { places: 0 });

export const headline: typeof English.headline = (together) => {
  const { level, over } = together;
  const many = together.colonies.length;
  if (!level) return `${colonies(many)}: la del medio tiene ${rateWords(together.spread.middle, together)} ácaros por cada 100 abejas.`;
  if (over === 0) return `De ${colonies(many)}, ninguna está en ${formatExact(level.levelPer100)} por cada 100 abejas o por encima.`;
  return `De ${colonies(many)}, ${over} ${over === 1 ? 'está' : 'están'} en ${formatExact(level.levelPer100)} por cada 100 abejas o por encima.`;
};

export const moreWords: typeof English.moreWords = ({ over, level }) =>
  over > 0
    ? 'Cada una necesita su propia decisión. La colonia del medio de una asociación no dice nada de una sola colmena.'
    : level
      ? 'Una muestra pequeña puede fallar. El rango probable de cada colonia está en la página del conteo de ácaros.'
      : 'La asociación no sigue un nivel en esta fase del año; por eso aquí no se juzga a nadie.';

export const askedWords: typeof English.askedWords = ({ counts, date, method }, language) =>
  `${colonies(counts.length)}, ${formatDay(date, language)}, ${{ wash: 'lavado', roll: 'prueba del azúcar en polvo', gas: 'dióxido de carbono' }[method]}`;

export const allWords: typeof English.allWords = (together) => {
  const { per100, range, lowPer100, highPer100 } = together.all;
  const likely =
    range === 'too-few-colonies'
      ? 'sin rango con menos de cuatro colonias'
      : `probable de ${rateWords(lowPer100!, together)} a ${rateWords(highPer100!, together)}`;
  return `${rateWords(per100, together)} (${likely})`;
};

export const sumWords: typeof English.sumWords = (mites, bees, together) =>
  `En conjunto: ${whole(mites)} ácaros, divididos entre ${whole(bees)} abejas, por 100 = ${rateWords(together.all.per100, together)}.`;

export const overWords: typeof English.overWords = ({ colonies: all, level }) => {
  if (!level) return 'No hay nivel para esta fase del año.';
  const over = all.filter(({ isOver }) => isOver).map(({ label }) => label);
  return over.join(', ') || 'Ninguna';
};

export const levelWords: typeof English.levelWords = ({ levelPer100, words }) =>
  `${formatExact(levelPer100)} por cada 100 abejas. ${words}`;

export const says: typeof English.says = {
  over: 'Mire cada colonia en el nivel o por encima con su dueño, en el conteo de ácaros. Después dé el archivo al encargado del sitio.',
  under: 'Dé el archivo al encargado del sitio, que lo pone con los conteos de la asociación.',
};
export const again: typeof English.again = (day) => `Próxima ronda de conteos: a más tardar el ${day}.`;
export const asked: typeof English.asked = { date: 'el día del conteo', district: 'la zona' };

export const chart: typeof English.chart = {
  level: (per100) => `nivel de la asociación, ${formatExact(per100)}`,
  label:
    'Ácaros por cada 100 abejas: cada colonia es un punto, la mitad del medio una barra, el nivel una línea de trazos. Los números de abajo dicen lo mismo.',
};

export const fields: typeof English.fields = {
  rows: 'Una línea por colonia. Un nombre se queda en esta página: el archivo no tiene nombres.',
  date: 'Día del conteo',
  dateHint: (such) => `Por ejemplo ${such}`,
  district: 'Zona',
};

export const result: typeof English.result = {
  heading: 'Las colonias de este día',
  chart:
    'De izquierda a derecha: ácaros por cada 100 abejas. Cada colonia es un punto. La barra es la mitad del medio, con la del medio marcada.',
  spread: 'La más baja, la del medio, la más alta',
  all: 'En conjunto',
  over: 'En el nivel o por encima',
  level: 'El nivel: {level}',
};

export const example: typeof English.example = {
  numbers: (spread, all, over) =>
    `La más baja, la del medio, la más alta: ${spread}. En conjunto: ${all}. En el nivel o por encima: ${over}.`,
  table: 'Las colonias del ejemplo',
  colony: 'Colonia',
  mites: 'Ácaros',
  bees: 'Abejas',
  per100: 'Por cada 100',
  file: 'El archivo tiene una línea por colonia con el día, la zona, los ácaros, las abejas y el método, y ningún nombre.',
};
