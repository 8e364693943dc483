import type * as English from './figure-shelf.en.ts';

export const subjects: typeof English.subjects = {
  mites: 'Ácaros y conteos',
  treatments: 'Tratamientos',
  diseases: 'Enfermedades y plagas',
  packages: 'Paquetes de abejas',
  bees: 'Abejas, cría y reinas',
  feeding: 'Alimentación y reservas',
  season: 'El año y el clima',
  people: 'Personas, ley y seguridad',
  weights: 'Comprobar pesos',
  other: 'Otras cifras',
};
export const inPhases: typeof English.inPhases = (phases) => `en: ${new Intl.ListFormat('es', { type: 'conjunction' }).format(phases)}`;
export const from: typeof English.from = (day) => `desde el ${day}`;
export const fromTo: typeof English.fromTo = (first, last) => `del ${first} al ${last}`;
