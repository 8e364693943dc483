import type * as English from './season-words.en.ts';

const days = (count: number): string => (count === 1 ? '1 día' : `${count} días`);

export const basis: typeof English.basis = {
  observed: (years) => `según ${years} años de fechas de los socios`,
  bloomSeen: (years, plant) => `según ${years} años de notas de los socios sobre ${plant}`,
  published: 'según la fecha publicada que pasa la mitad de los años',
  printed: 'según una fecha publicada',
  'degree-days': 'según las normales mensuales, por grados-día',
  temperature: 'según las normales mensuales',
  guess: 'una suposición',
  later: (count, main, there) => `${days(count)} después que en ${main}, y allí ${there}`,
  earlier: (count, main, there) => `${days(count)} antes que en ${main}, y allí ${there}`,
};

export const bases: typeof English.bases = (each) => new Intl.ListFormat('es', { type: 'conjunction' }).format(each);
export const withDoubt: typeof English.withDoubt = (basis, count) => `${basis}, unos ${days(count)} antes o después`;

export const noBloom: typeof English.noBloom = {
  'no-sum': 'No se encontró ninguna suma, y nadie aquí tiene tres años de notas.',
  'no-method': 'Sin fecha: la lista no dice cómo cuenta.',
  'no-normals': 'Sin fecha: esta asociación no ha dado sus normales mensuales.',
  'no-spread': 'Sin fecha: no se sabe cuánto difieren aquí los días de un año a otro.',
  'no-doubt': 'Sin fecha: esta asociación no tiene una cifra de cuánto puede fallar una fecha así.',
  'not-reached': 'Su suma no se alcanza aquí en un año normal.',
};
