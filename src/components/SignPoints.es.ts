import type * as English from './SignPoints.en.ts';

export const title = 'Cómo se ponen en orden';
export const there = 'Una señal que está da puntos: la fuerza con que indica, por la frecuencia con que aparece.';
export const never = 'Una señal que nunca aparece en un problema quita lo mismo.';
export const notThere: typeof English.notThere = ({ always, often, sometimes }) =>
  `Una señal que se buscó y no está quita ${always} donde aparece siempre, ${often} donde aparece a menudo y ${sometimes} donde aparece a veces.`;
export const unlisted: typeof English.unlisted = (points, outOfSeason) =>
  `Una señal que un problema no explica quita ${points}; otra parte del año quita ${outOfSeason}.`;
export const reportFirst = 'Lo que se debe reportar va primero, si coincide por lo menos una señal.';
export const table = 'Puntos de una señal que está';
export const ownRule = 'Los puntos son una regla propia de este almanaque. Dicen qué mirar primero, nunca qué tiene una colonia.';
