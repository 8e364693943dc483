import type * as English from './colony-rows.en.ts';

export const colony = 'Colonia';
export const mitesCounted = 'cuántos ácaros contó';
export const beesInSample = 'cuántas abejas había en la muestra';

export const noMites = 'Escriba cuántos ácaros contó.';
export const noBees = 'Una muestra de 0 abejas no da una tasa. Escriba cuántas abejas había en ella.';
export const wholeBees = 'Escriba un número entero de abejas.';
export const wholeMites = 'Escriba un número entero de ácaros.';
export const mitesUnderZero = 'Los ácaros no pueden ser menos de 0.';
export const tooMany: typeof English.tooMany = (mites, bees) => `Más de ${mites} ácaros o ${bees} abejas no es una sola muestra.`;

export const methodAsked = 'cómo se contaron los ácaros';
export const fields: typeof English.fields = {
  method: 'Cómo se contaron los ácaros',
  phase: 'Fase del año',
  phaseHint: 'Se elige según la fecha de hoy. Puede cambiarla.',
  notChosen: 'Sin elegir',
};
export const methodChoices: typeof English.methodChoices = { wash: 'Lavado', roll: 'Azúcar en polvo', gas: 'Dióxido de carbono' };
