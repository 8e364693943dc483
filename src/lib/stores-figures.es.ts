import type * as English from './stores-figures.en.ts';

export const beforeCold: typeof English.beforeCold = (day, place, basis) =>
  `algunas semanas antes del ${day}, en ${place}: cerca de esa fecha los días se vuelven demasiado fríos (${basis}), y las noches antes.`;
export const byDay: typeof English.byDay = (day, place, basis) =>
  `${day} en ${place} (${basis}). Para secarlo, las abejas necesitan noches templadas además de días templados.`;
