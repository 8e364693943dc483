import type * as English from './BaseLayout.en.ts';

export const parts: typeof English.parts = {
  now: 'Hoy',
  lists: 'Listas',
  pests: 'Problemas',
  'work-out': 'Calculadoras',
  club: 'Más',
};
export const furtherPages = ' páginas';
export const about: typeof English.about = (club, place) =>
  `Abejas en ${place}: lo que toca hacer, listas, problemas y calculadoras, revisados y con fecha, por ${club}.`;
export const partsOfAlmanac = 'Partes del almanaque';
export const skip = 'Ir al contenido principal';
export const demo = 'Demostración';
export const search = 'Buscar';
export const searchAlmanac = 'Buscar en el almanaque';
export const whatIsNew = 'Lo nuevo';
export const emergency = 'Emergencia';
export const emergencyNumber = 'Emergencia:';
export const stingFirstAid = 'Primeros auxilios por picadura';
export const allNotices = 'Los anuncios y los días en que valen';
export const draft = 'Borrador: no publicado';
export const onPaper: typeof English.onPaper = (almanac, isDemo, address, edition) =>
  `${almanac}${isDemo ? ' (demostración)' : ''} · ${address} · Edición del ${edition}`;
