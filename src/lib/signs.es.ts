import type * as English from './signs.en.ts';

export const places: typeof English.places = {
  entrance: 'En la entrada',
  smell: 'Olor',
  brood: 'En la cría',
  adults: 'En las abejas',
  comb: 'En los panales, las reservas y las cajas',
  season: 'Cuándo, y en cuántas colmenas',
};
export const shows: typeof English.shows = {
  always: 'siempre',
  often: 'a menudo',
  sometimes: 'a veces',
  seldom: 'rara vez',
  never: 'nunca',
};
export const strengths: typeof English.strengths = { strong: 'fuerte', fair: 'regular', weak: 'débil' };

const points = { strong: 'Indica con fuerza', fair: 'Indica en parte', weak: 'Indica poco' };
export const pointsTo: typeof English.pointsTo = (strength) => `${points[strength]}: {troubles}.`;
