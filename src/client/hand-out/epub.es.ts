import type * as English from './epub.en.ts';

export const contents = 'Contenido';
export const by: typeof English.by = (club, almanac, edition) => `${club}. ${almanac}, ${edition}.`;
export const asToday = 'Estas páginas, como están hoy';
export const doesNotChange = 'Esta copia no cambia. Busque una más nueva en {link}.';
export const whoToCall = 'A quién llamar:';
export const sources = 'Fuentes:';
export const inFull = 'Esta página, con sus fuentes completas';
