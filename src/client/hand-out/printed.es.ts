import type * as English from './printed.en.ts';

export const by: typeof English.by = (club, almanac, edition) => `${club}. ${almanac}, ${edition}.`;
export const whoDecides = 'Deciden la etiqueta, el inspector apícola, el servicio de extensión y su médico, no estas hojas.';
export const onPhone = 'Este juego, en un teléfono';
export const missing: typeof English.missing = (page) => `No está en este juego: ${page}. `;
export const whoToCall = 'A quién llamar: ';
export const sources = 'Fuentes: ';
export const sourcesInFull: typeof English.sourcesInFull = (short, address) =>
  `${short.join('; ')}. Completas, con sus números: ${address}`;
