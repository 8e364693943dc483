import type * as English from './results.en.ts';

export const groups: typeof English.groups = {
  problems: 'Problemas',
  checklists: 'Listas',
  calculators: 'Calculadoras',
  words: 'Palabras',
  meetings: 'Reuniones',
  sheets: 'Hojas para llenar',
  reading: 'Libros para leer',
  club: 'La asociación',
  articles: 'Artículos',
};
export const allKinds = 'Todos los tipos';
export const bestAnswer = 'La mejor respuesta';
export const nextMeeting: typeof English.nextMeeting = (title) => `Próxima reunión: ${title}`;
export const alsoLookedFor: typeof English.alsoLookedFor = (words) => `También se buscó: ${words.join(', ')}.`;
export const found: typeof English.found = (results) =>
  results === 0 ? 'No se encontró ninguna página' : results === 1 ? '1 resultado' : `${results} resultados`;
export const foundIn: typeof English.foundIn = (results, filters) => `${found(results)}: ${filters.join(', ').toLowerCase()}`;
export const showAll: typeof English.showAll = (results) => (results === 1 ? 'Ver 1' : `Ver los ${results}`);
