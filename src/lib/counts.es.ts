import { formatNumber } from '../../shared/numbers/show-number.ts';
import type * as English from './counts.en.ts';

export const rateText: typeof English.rateText = (rate) => formatNumber(rate, { places: 1 });
export const range: typeof English.range = (low, high) => `${rateText(low)} a ${rateText(high)}`;
export const noRange = 'muy pocas colonias para un rango';
export const noLevel = 'no hay nivel para esta fase del año';
export const over: typeof English.over = (colonies, all) => `${colonies} de ${all}`;
export const titleOf: typeof English.titleOf = (year) => `Conteos de ${year}`;
const METHODS = { wash: 'lavado', roll: 'azúcar en polvo', gas: 'dióxido de carbono' };
export const methods: typeof English.methods = (all) => new Intl.ListFormat('es').format(all.map((each) => METHODS[each]));

export const table: typeof English.table = {
  half: 'Mitad de mes',
  colonies: 'Colonias',
  spread: 'La más baja, la del medio, la más alta',
  together: 'En conjunto',
  over: 'En el nivel o por encima',
};

export const page: typeof English.page = {
  title: 'Conteos de ácaros de la zona',
  lead: 'Ácaros que contaron miembros de esta asociación, por mitad de mes, junto al nivel que sigue la asociación.',
  season: (colonies, days, rate, likely) =>
    `${colonies} conteos, ${days}. En conjunto ${rate} ácaros por cada 100 abejas; rango probable: ${likely}.`,
  chart:
    'De izquierda a derecha: ácaros por cada 100 abejas. Cada colonia es un punto, la mitad del medio una barra con la del medio marcada, el nivel una línea de trazos.',
  numbers: (halves) => `Los números del gráfico (${halves} mitades de mes)`,
  level: 'El nivel',
  allYear: 'todo el año',
  how: 'Cómo se calcula',
  each: 'Cada colonia: ácaros, divididos entre abejas, por 100.',
  together:
    'En conjunto: todos los ácaros entre todas las abejas, por 100. El rango probable tiene en cuenta que las colonias son distintas, y hay uno desde cuatro colonias.',
  arithmetic: 'Es el cálculo de [Conteo de ácaros](calculator) para varias colonias.',
  evening: 'Juntar los conteos de un día',
  limits: 'Lo que estos conteos no dicen',
  members: 'Los miembros que cuentan no son todos los miembros. Sus colmenas pueden estar mejor cuidadas, o peor.',
  middle: 'La colonia del medio oculta la peor. Cuente en las suyas: {fewest} colonias o más.',
  middleSeveral: 'La colonia del medio oculta la peor. Cuente en las suyas: varias colonias.',
  elsewhere: 'Otros lugares, otros años, otros métodos: no los compare con estos como si fueran lo mismo.',
  noNames: 'No nombra ningún tratamiento ni ningún apiario.',
};
