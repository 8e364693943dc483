import type * as English from './climate-words.en.ts';

export const normals: typeof English.normals = (period, from) => `valores normales mensuales de ${period} (${from}).`;
export const noSpread = 'Aquí no se sabe cuánto cambian los días de un año a otro; por eso ninguna fecha se calcula con grados-día.';
export const fromSum: typeof English.fromSum = (spread, sum, base, period, from) =>
  `El promedio de un día difiere de su valor normal en unos ${spread}, de modo que se llega a los ${sum} grados-día publicados sobre ${base} (${period}, ${from}).`;
export const fromRegion: typeof English.fromRegion = (spread, from) =>
  `El promedio de un día difiere de su valor normal en unos ${spread} en esta región${from === undefined ? '' : ` (${from})`}.`;
export const fromMembers: typeof English.fromMembers = (spread) =>
  `El promedio de un día difiere de su valor normal en unos ${spread}, de modo que las plantas florecen cuando los miembros las vieron.`;
